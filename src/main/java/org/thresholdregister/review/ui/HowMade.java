package org.thresholdregister.review.ui;

import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.drawing.AudiogramComparison;

/** How a test was made, in words. */
public final class HowMade {

    private HowMade() {}

    /** {@code 16 h away from noise, by P. Marrowdale, on A-1. Asked to come back}; empty where nothing is known. */
    public static String inWords(RecordedTest test) {
        TestFacts facts = test.facts();
        List<String> parts = new ArrayList<>();
        facts.hoursSinceNoise().ifPresent(hours -> parts.add(hours.toPlainString() + " h away from noise"));
        facts.protectorsWorn().filter(worn -> worn).ifPresent(worn -> parts.add("protectors worn instead"));
        addIfGiven(parts, "by ", facts.tester());
        addIfGiven(parts, "on ", facts.instrument());
        addIfGiven(parts, "with ", facts.transducer());
        addIfGiven(parts, "in ", facts.room());
        for (Ear ear : AudiogramComparison.EARS) {
            Threshold second = facts.repeatAt1000Hz().of(ear);
            if (!second.equals(Threshold.notGiven())) {
                parts.add("second reading at 1000 Hz, " + Words.ear(ear) + ": " + Words.threshold(second));
            }
        }
        test.signature().ifPresent(signature -> parts.add("signed by " + signature.name()));
        String made = parts.isEmpty() ? "" : Words.capitalised(String.join(", ", parts)) + ".";
        return facts.remark().isEmpty() ? made : (made + " " + Words.capitalised(facts.remark())).strip();
    }

    private static void addIfGiven(List<String> parts, String preposition, String text) {
        if (!text.isEmpty()) {
            parts.add(preposition + text);
        }
    }
}
