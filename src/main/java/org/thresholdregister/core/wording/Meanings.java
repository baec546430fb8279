package org.thresholdregister.core.wording;

import java.util.List;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.meaning.referral.ReferralFinding;

/** Puts into sentences what an audiogram means beyond the shift. */
public final class Meanings {

    private Meanings() {}

    /** @param referral the criteria that were asked of this test and its baselines */
    public static List<MeaningChapter> of(Audiogram test, List<ReferralFinding> referral) {
        return Stream.of(
                        ImpairmentWords.chapters(test),
                        ShapeWords.chapters(test),
                        Stream.of(ReferralWords.referral(referral)))
                .flatMap(chapters -> chapters)
                .toList();
    }

    /** That an ear of the test counts as not tested here. */
    public static String earLeftOut(Ear ear) {
        return Words.capitalised(Words.ear(ear)) + ": this test is not judged, so its thresholds are left out here.";
    }
}
