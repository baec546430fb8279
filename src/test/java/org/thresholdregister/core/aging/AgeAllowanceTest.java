package org.thresholdregister.core.aging;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;

class AgeAllowanceTest {

    private static final LocalDate BASELINE = LocalDate.parse("2020-03-09");

    @ParameterizedTest(name = "born {0}, tested {1}: {2}")
    @CsvSource({
        "1990-03-09, 2026-03-08, 35",
        "1990-03-09, 2026-03-09, 36",
        "1990-03-09, 2026-03-10, 36",
        "1990-12-31, 2026-01-01, 35",
        "1990-01-01, 2025-12-31, 35",
        // Common practice where the law of a place says nothing else: without a 29 February the year is full on 1
        // March.
        "1992-02-29, 2025-02-28, 32",
        "1992-02-29, 2025-03-01, 33",
        "1992-02-29, 2024-02-28, 31",
        "1992-02-29, 2024-02-29, 32",
    })
    void ageIsCountedInCompletedYears(LocalDate birth, LocalDate test, int years) {
        AgeAllowance allowance = between(AgeCorrection.ON, Optional.of(birth), Optional.of(Sex.FEMALE), test);
        assertThat(allowance.ageAtTest()).hasValue(years);
    }

    @Test
    void theAllowanceIsTheLaterValueLessTheEarlierOne() {
        AgeAllowance allowance = between(
                AgeCorrection.ON,
                Optional.of(LocalDate.parse("1993-03-09")),
                Optional.of(Sex.MALE),
                LocalDate.parse("2025-03-09"));
        assertThat(allowance.ageAtBaseline()).hasValue(27);
        assertThat(allowance.ageAtTest()).hasValue(32);
        // 29 CFR 1910.95 Appendix F, worked example: 10 less 7 at 4000 Hz.
        assertThat(allowance.at(Frequency.HZ_4000)).isEqualTo(DecibelRange.exactly(3));
    }

    @Test
    void theDayBeforeABirthdayReadsTheEarlierRow() {
        Optional<LocalDate> birth = Optional.of(LocalDate.parse("1993-03-09"));
        // Table F-1 at 4000 Hz: 7 at 27, 9 at 31, 10 at 32.
        assertThat(between(AgeCorrection.ON, birth, Optional.of(Sex.MALE), LocalDate.parse("2025-03-08"))
                        .at(Frequency.HZ_4000))
                .isEqualTo(DecibelRange.exactly(2));
        assertThat(between(AgeCorrection.ON, birth, Optional.of(Sex.MALE), LocalDate.parse("2025-03-09"))
                        .at(Frequency.HZ_4000))
                .isEqualTo(DecibelRange.exactly(3));
    }

    @Test
    void switchedOffItIsNothingAndNeedsNoAge() {
        AgeAllowance allowance = between(AgeCorrection.OFF, Optional.empty(), Optional.empty(), BASELINE.plusYears(9));
        for (Frequency frequency : Frequency.AVERAGED) {
            assertThat(allowance.at(frequency)).isEqualTo(DecibelRange.exactly(0));
        }
        assertThat(allowance.ageAtBaseline()).isEmpty();
        assertThat(allowance.ageAtTest()).isEmpty();
    }

    @Test
    void withoutSexOrBirthDateItIsNothingOrMore() {
        Optional<LocalDate> birth = Optional.of(LocalDate.parse("1990-03-09"));
        LocalDate test = BASELINE.plusYears(1);
        for (AgeAllowance allowance : java.util.List.of(
                between(AgeCorrection.ON, Optional.empty(), Optional.of(Sex.MALE), test),
                between(AgeCorrection.ON, birth, Optional.empty(), test),
                between(AgeCorrection.ON, Optional.empty(), Optional.empty(), test))) {
            assertThat(allowance.at(Frequency.HZ_2000)).isEqualTo(DecibelRange.atLeast(0));
        }
        assertThat(between(AgeCorrection.ON, birth, Optional.empty(), test))
                .isEqualTo(new AgeAllowance.NotKnown(OptionalInt.of(30), OptionalInt.of(31), false, true));
        assertThat(between(AgeCorrection.ON, Optional.empty(), Optional.of(Sex.MALE), test))
                .isEqualTo(new AgeAllowance.NotKnown(OptionalInt.empty(), OptionalInt.empty(), true, false));
    }

    private static AgeAllowance between(
            AgeCorrection correction, Optional<LocalDate> birth, Optional<Sex> sex, LocalDate test) {
        Optional<AgeTables> tables =
                correction == AgeCorrection.ON ? Optional.of(AgeTables.OSHA_APPENDIX_F) : Optional.empty();
        return AgeAllowance.between(tables, birth, sex, BASELINE, test);
    }
}
