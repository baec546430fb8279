package org.thresholdregister.core.validity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.validity.Tests.PLAIN;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.rules.RuleSets;

/** 29 CFR 1910.95(g)(5)(iii): 14 hours, protectors may stand in. NIOSH 98-126 (from memory): 12, they may not. */
class QuietTimeTest {

    private static List<FlagKind> kinds(TestPurpose purpose, QuietRule rule, TestConditions conditions) {
        return new Tests()
                .by(rule)
                .add("2019-03-04", TestPurpose.BASELINE, PLAIN, PLAIN)
                .add(Tests.audiogram("2020-03-02", purpose, PLAIN, PLAIN), conditions)
                .kinds();
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            rule set, hours, protectors worn, flagged
            osha,    14,    false,           false
            osha,    13.9,  false,           true
            osha,    0,     true,            false
            osha,    13.9,  true,            false
            niosh,   12,    false,           false
            niosh,   11.75, false,           true
            niosh,   11.75, true,            true
            uk-l108, 16,    false,           false
            uk-l108, 15.5,  true,            true
            """)
    void aBaselineWantsItsHoursOfQuiet(String ruleSet, String hours, boolean protectorsWorn, boolean flagged) {
        assertThat(kinds(
                        TestPurpose.BASELINE,
                        RuleSets.find(ruleSet).orElseThrow().quiet(),
                        Tests.quiet(hours, protectorsWorn)))
                .isEqualTo(flagged ? List.of(FlagKind.QUIET_TIME_SHORT) : List.of());
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            purpose, by OSHA, by NIOSH
            ANNUAL,  false,   false
            RETEST,  false,   true
            EXIT,    false,   false
            OTHER,   false,   false
            """)
    void otherTestsOnlyWantItWhereTheRuleSaysSo(TestPurpose purpose, boolean byOsha, boolean byNiosh) {
        TestConditions noisy = Tests.quiet("1", false);

        assertThat(kinds(purpose, RuleSets.OSHA.quiet(), noisy).contains(FlagKind.QUIET_TIME_SHORT))
                .isEqualTo(byOsha);
        assertThat(kinds(purpose, RuleSets.find("niosh").orElseThrow().quiet(), noisy)
                        .contains(FlagKind.QUIET_TIME_SHORT))
                .isEqualTo(byNiosh);
    }

    /** An annual test that serves as the baseline, because none was made as one, wants what a baseline wants. */
    @Test
    void anAnnualTestThatServesAsTheBaselineWantsItToo() {
        Tests first = new Tests()
                .add(Tests.audiogram("2020-03-02", TestPurpose.ANNUAL, PLAIN, PLAIN), Tests.quiet("2", false));

        assertThat(first.flags())
                .containsExactly(new ValidityFlag.QuietTimeShort(new BigDecimal("2"), false, RuleSets.OSHA.quiet()));
    }

    @Test
    void quietTimeThatIsNotOnRecordIsASofterFlag() {
        assertThat(kinds(TestPurpose.BASELINE, RuleSets.OSHA.quiet(), TestConditions.NOT_ON_RECORD))
                .containsExactly(FlagKind.QUIET_TIME_NOT_ON_RECORD);
        assertThat(FlagKind.QUIET_TIME_NOT_ON_RECORD.weight()).isEqualTo(FlagKind.Weight.NOTE);
        assertThat(FlagKind.QUIET_TIME_SHORT.weight()).isEqualTo(FlagKind.Weight.DOUBT);
        assertThat(kinds(TestPurpose.ANNUAL, RuleSets.OSHA.quiet(), TestConditions.NOT_ON_RECORD))
                .isEmpty();
    }

    @Test
    void protectorsWornAloneAreEnoughOnlyWhereTheyMayStandIn() {
        TestConditions protectorsOnly = new TestConditions(
                Optional.empty(), Optional.of(true), Transducer.SUPRA_AURAL, PerEar.from(ear -> Threshold.notGiven()));

        assertThat(kinds(TestPurpose.BASELINE, RuleSets.OSHA.quiet(), protectorsOnly))
                .isEmpty();
        assertThat(kinds(
                        TestPurpose.BASELINE,
                        RuleSets.find("niosh").orElseThrow().quiet(),
                        protectorsOnly))
                .containsExactly(FlagKind.QUIET_TIME_NOT_ON_RECORD);
    }
}
