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

/** 29 CFR 1910.95(g)(5)(iii): 14 hours, protectors may stand in. NIOSH 98-126 (from memory): 12, they may not. */
class QuietTimeTest {

    private static List<FlagKind> kinds(TestPurpose purpose, QuietTime rule, TestConditions conditions) {
        return new Tests()
                .by(rule)
                .add("2019-03-04", TestPurpose.BASELINE, PLAIN, PLAIN)
                .add(Tests.audiogram("2020-03-02", purpose, PLAIN, PLAIN), conditions)
                .kinds();
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            rule,          hours, protectors worn, flagged
            OSHA,          14,    false,           false
            OSHA,          13.9,  false,           true
            OSHA,          0,     true,            false
            OSHA,          13.9,  true,            false
            NIOSH,         12,    false,           false
            NIOSH,         11.75, false,           true
            NIOSH,         11.75, true,            true
            SIXTEEN_HOURS, 16,    false,           false
            SIXTEEN_HOURS, 15.5,  true,            true
            """)
    void aBaselineWantsItsHoursOfQuiet(QuietTime rule, String hours, boolean protectorsWorn, boolean flagged) {
        assertThat(kinds(TestPurpose.BASELINE, rule, Tests.quiet(hours, protectorsWorn)))
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

        assertThat(kinds(purpose, QuietTime.OSHA, noisy).contains(FlagKind.QUIET_TIME_SHORT))
                .isEqualTo(byOsha);
        assertThat(kinds(purpose, QuietTime.NIOSH, noisy).contains(FlagKind.QUIET_TIME_SHORT))
                .isEqualTo(byNiosh);
    }

    /** An annual test that serves as the baseline, because none was made as one, wants what a baseline wants. */
    @Test
    void anAnnualTestThatServesAsTheBaselineWantsItToo() {
        Tests first = new Tests()
                .add(Tests.audiogram("2020-03-02", TestPurpose.ANNUAL, PLAIN, PLAIN), Tests.quiet("2", false));

        assertThat(first.flags())
                .containsExactly(new ValidityFlag.QuietTimeShort(new BigDecimal("2"), false, QuietTime.OSHA));
    }

    @Test
    void quietTimeThatIsNotOnRecordIsASofterFlag() {
        assertThat(kinds(TestPurpose.BASELINE, QuietTime.OSHA, TestConditions.NOT_ON_RECORD))
                .containsExactly(FlagKind.QUIET_TIME_NOT_ON_RECORD);
        assertThat(FlagKind.QUIET_TIME_NOT_ON_RECORD.weight()).isEqualTo(FlagKind.Weight.NOTE);
        assertThat(FlagKind.QUIET_TIME_SHORT.weight()).isEqualTo(FlagKind.Weight.DOUBT);
        assertThat(kinds(TestPurpose.ANNUAL, QuietTime.OSHA, TestConditions.NOT_ON_RECORD))
                .isEmpty();
    }

    @Test
    void protectorsWornAloneAreEnoughOnlyWhereTheyMayStandIn() {
        TestConditions protectorsOnly = new TestConditions(
                Optional.empty(), Optional.of(true), Transducer.SUPRA_AURAL, PerEar.from(ear -> Threshold.notGiven()));

        assertThat(kinds(TestPurpose.BASELINE, QuietTime.OSHA, protectorsOnly)).isEmpty();
        assertThat(kinds(TestPurpose.BASELINE, QuietTime.NIOSH, protectorsOnly))
                .containsExactly(FlagKind.QUIET_TIME_NOT_ON_RECORD);
    }

    @Test
    void aRuleIsFoundByItsHours() {
        assertThat(QuietTime.ofHours("14")).contains(QuietTime.OSHA);
        assertThat(QuietTime.ofHours("12")).contains(QuietTime.NIOSH);
        assertThat(QuietTime.ofHours("16")).contains(QuietTime.SIXTEEN_HOURS);
        assertThat(QuietTime.ofHours("13")).isEmpty();
    }
}
