package org.thresholdregister.core.attenuation;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.attenuation.MustWear.Facts;
import org.thresholdregister.core.attenuation.MustWear.Why;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.wording.ProtectionWords;

/** What each rule set asks to be reached, and who has to wear protectors. */
class TargetAndWearingTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 9);
    private static final RuleSet MSHA = RuleSets.find("msha").orElseThrow();
    private static final RuleSet FRA = RuleSets.find("fra").orElseThrow();
    private static final RuleSet NIOSH = RuleSets.find("niosh").orElseThrow();

    private static Estimate at(String dba) {
        return Attenuation.estimate(
                new AttenuationMethod.AppendixB(AppendixBCase.II),
                new Worn.One(new Protector("muff", ProtectorKind.MUFF, LabelValues.ofNrr(25))),
                Noise.ofDba(new BigDecimal(dba)),
                Optional.empty());
    }

    /** 29 CFR 1910.95(j)(2) and (3): at least down to 90, and to 85 or below after a shift. */
    @Test
    void ninetyIsAskedForAndEightyFiveAfterAShift() {
        var plain = ProtectionTarget.of(RuleSets.OSHA, Optional.empty());
        var after = ProtectionTarget.of(RuleSets.OSHA, Optional.of(TODAY));

        assertThat(plain.isReachedBy(at("108"))).as("exactly 90").isEqualTo(Answer.YES);
        assertThat(plain.isReachedBy(at("108.1"))).isEqualTo(Answer.NO);
        assertThat(after.isReachedBy(at("103"))).as("exactly 85").isEqualTo(Answer.YES);
        assertThat(after.isReachedBy(at("103.1"))).isEqualTo(Answer.NO);
        assertThat(ProtectionWords.target(after).withBasis())
                .isEqualTo(
                        "The protector has to bring the exposure down to 85 dBA or less, after the shift of 9 Mar 2026."
                                + " [29 CFR 1910.95(j)(3)]");
        assertThat(ProtectionTarget.of(FRA, Optional.empty()).isReachedBy(at("108")))
                .isEqualTo(Answer.YES);
    }

    @Test
    void whereTheRuleSetNamesNoLevelNothingIsDecided() {
        for (RuleSet rules : List.of(MSHA, NIOSH)) {
            assertThat(ProtectionTarget.of(rules, Optional.of(TODAY)).isReachedBy(at("97")))
                    .isEqualTo(Answer.UNDECIDED);
        }
    }

    @Test
    void theStandingIsOneSentence() {
        assertThat(ProtectionWords.standing(
                        ProtectorKind.MUFF, at("97"), ProtectionTarget.of(RuleSets.OSHA, Optional.of(TODAY))))
                .isEqualTo(
                        "By the label and Appendix B (ii), 79 dBA under the muff; the target is 85 dBA after the shift"
                                + " of 9 Mar 2026: reached.");
    }

    private static Facts facts(String twa, String enrolled, boolean baseline, boolean shift) {
        return new Facts(
                Optional.of(twa).filter(text -> !text.isEmpty()).map(BigDecimal::new),
                Optional.of(enrolled).filter(text -> !text.isEmpty()).map(LocalDate::parse),
                baseline,
                shift ? Optional.of(TODAY) : Optional.empty());
    }

    private static List<Why> why(RuleSet rules, Facts facts) {
        return MustWear.of(rules, facts, TODAY).reasons().stream()
                .map(MustWear.Reason::why)
                .toList();
    }

    /** 29 CFR 1910.95(i)(2)(i) is about more than the limit, 49 CFR 227.115(d) about the limit itself too. */
    @Test
    void overTheLimitProtectorsAreWorn() {
        assertThat(why(RuleSets.OSHA, facts("90", "2020-01-01", true, false))).isEmpty();
        assertThat(why(RuleSets.OSHA, facts("90.1", "2020-01-01", true, false))).containsExactly(Why.OVER_LIMIT);
        assertThat(why(FRA, facts("90", "2020-01-01", true, false))).containsExactly(Why.OVER_LIMIT);
        assertThat(why(FRA, facts("89.9", "2020-01-01", true, false))).isEmpty();
    }

    /** 30 CFR 62.140: over the dual level. */
    @Test
    void minersOver105WearAPlugAndAMuff() {
        assertThat(why(MSHA, facts("105", "2020-01-01", true, false))).containsExactly(Why.OVER_LIMIT);
        assertThat(why(MSHA, facts("105.1", "2020-01-01", true, false)))
                .containsExactly(Why.OVER_LIMIT, Why.PLUG_AND_MUFF);
    }

    /** 29 CFR 1910.95(i)(2)(ii)(A): six months after the first exposure, and no baseline yet. */
    @Test
    void sixMonthsWithoutABaselineMakeProtectorsAMust() {
        assertThat(why(RuleSets.OSHA, facts("86", "2025-09-09", false, false)))
                .as("six months today")
                .isEmpty();
        assertThat(why(RuleSets.OSHA, facts("86", "2025-09-08", false, false)))
                .containsExactly(Why.NO_BASELINE_IN_TIME);
        assertThat(why(RuleSets.OSHA, facts("86", "2025-09-08", true, false))).isEmpty();
        assertThat(why(RuleSets.OSHA, facts("84.9", "2025-09-08", false, false)))
                .isEmpty();
    }

    @Test
    void aShiftMakesProtectorsAMustFromTheActionLevelOn() {
        assertThat(why(RuleSets.OSHA, facts("85", "2020-01-01", true, true))).containsExactly(Why.SHIFT);
        assertThat(why(RuleSets.OSHA, facts("84.9", "2020-01-01", true, true))).isEmpty();
    }

    @Test
    void withoutALevelOnRecordTheAnswerStaysOpenUnlessAnotherReasonHolds() {
        assertThat(MustWear.of(RuleSets.OSHA, facts("", "2020-01-01", true, false), TODAY)
                        .answer())
                .isEqualTo(Answer.UNDECIDED);
        assertThat(why(RuleSets.OSHA, facts("", "2020-01-01", true, true))).containsExactly(Why.SHIFT);
        assertThat(MustWear.of(NIOSH, facts("99", "2020-01-01", true, true), TODAY)
                        .answer())
                .isEqualTo(Answer.UNDECIDED);
        assertThat(MustWear.of(RuleSets.OSHA, facts("86", "2020-01-01", true, false), TODAY)
                        .answer())
                .isEqualTo(Answer.NO);
    }
}
