package org.thresholdregister.core.meaning.referral;

import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.meaning.Meaning;
import org.thresholdregister.core.regulation.Answer;

/**
 * Whether one ear meets one audiometric referral criterion on one test.
 *
 * @param baseline the ear's baseline; on criteria that are asked of a baseline, the test itself
 * @param value what the criterion compares, in dB: a level, or by how much this ear is worse
 */
public record ReferralFinding(
        ReferralCriterion criterion, Ear ear, Audiogram baseline, Audiogram test, DecibelMean value, Answer met)
        implements Meaning {

    private static final Basis BASIS = Basis.unverified(
            "AAO-HNS otologic referral criteria for hearing conservation programs, 1983, revised 1997");

    /** The criteria that are asked of an ear's baseline. */
    public static List<ReferralFinding> atBaseline(Audiogram baseline, Ear ear) {
        List<ReferralFinding> findings = new ArrayList<>();
        findings.add(of(
                ReferralCriterion.BASELINE_LEVEL,
                ear,
                baseline,
                baseline,
                level(baseline, ear, ReferralCriterion.BASELINE_LEVEL)));
        for (ReferralCriterion criterion :
                List.of(ReferralCriterion.BASELINE_DIFFERENCE_LOW, ReferralCriterion.BASELINE_DIFFERENCE_HIGH)) {
            DecibelMean difference = level(baseline, ear, criterion).minus(level(baseline, ear.other(), criterion));
            findings.add(of(criterion, ear, baseline, baseline, difference));
        }
        return List.copyOf(findings);
    }

    /** The criteria that are asked of an ear on a test after its baseline. */
    public static List<ReferralFinding> atLaterTest(Audiogram baseline, Audiogram test, Ear ear) {
        List<ReferralFinding> findings = new ArrayList<>();
        for (ReferralCriterion criterion : List.of(ReferralCriterion.WORSENING_LOW, ReferralCriterion.WORSENING_HIGH)) {
            DecibelMean worsening = level(test, ear, criterion).minus(level(baseline, ear, criterion));
            findings.add(of(criterion, ear, baseline, test, worsening));
        }
        return List.copyOf(findings);
    }

    private static DecibelMean level(Audiogram test, Ear ear, ReferralCriterion criterion) {
        return DecibelMean.level(test, ear, criterion.frequencies());
    }

    private static ReferralFinding of(
            ReferralCriterion criterion, Ear ear, Audiogram baseline, Audiogram test, DecibelMean value) {
        return new ReferralFinding(criterion, ear, baseline, test, value, value.isAbove(criterion.moreThanDecibels()));
    }

    @Override
    public Basis basis() {
        return BASIS;
    }

    @Override
    public List<Caveat> isNot() {
        return List.of(Caveat.NO_DIAGNOSIS, Caveat.NO_REFERRAL_DECISION);
    }
}
