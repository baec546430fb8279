package org.thresholdregister.core.audiometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;

class ThresholdTest {

    @Test
    void everyLevelFromMinusTenTo120IsItself() {
        for (int decibels = -10; decibels <= 120; decibels++) {
            assertThat(Threshold.measured(decibels).range()).isEqualTo(DecibelRange.exactly(decibels));
            assertThat(new HearingLevel(decibels).decibels()).isEqualTo(decibels);
            assertThat(HearingLevel.isInRange(decibels)).isTrue();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, -11, 121, 999, Integer.MAX_VALUE})
    void levelsOutsideTheRangeAreRefused(int decibels) {
        assertThat(HearingLevel.isInRange(decibels)).isFalse();
        assertThatIllegalArgumentException().isThrownBy(() -> new HearingLevel(decibels));
        assertThatIllegalArgumentException().isThrownBy(() -> Threshold.measured(decibels));
        assertThatIllegalArgumentException().isThrownBy(() -> Threshold.noResponseAt(decibels));
    }

    /** The next step of a 5 dB procedure (common practice). */
    @ParameterizedTest(name = ">{0} is at least {1}")
    @CsvSource({"95, 100", "120, 125", "-10, -5", "0, 5"})
    void noResponseAtALevelIsTheNextStepOrMore(int limit, int atLeast) {
        assertThat(Threshold.noResponseAt(limit).range()).isEqualTo(DecibelRange.atLeast(atLeast));
    }

    @Test
    void noResponseWithoutALevelSaysNothing() {
        assertThat(Threshold.noResponse().range()).isEqualTo(DecibelRange.UNKNOWN);
    }

    @ParameterizedTest
    @EnumSource
    void whatWasNotTestedIsUnknown(Reason reason) {
        assertThat(Threshold.notTested(reason).range()).isEqualTo(DecibelRange.UNKNOWN);
        assertThat(Threshold.notTested(reason)).isEqualTo(new Threshold.NotTested(reason));
    }

    @Test
    void theLevelSumTakesTheThreeAveragedFrequenciesOfOneEar() {
        Audiogram.Builder builder = new Audiogram.Builder(LocalDate.parse("2026-03-09"), TestPurpose.ANNUAL);
        int weight = 1;
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(ear, frequency, Threshold.measured(weight++));
            }
        }
        Audiogram audiogram = builder.build();
        assertThat(audiogram.levelSum(Ear.LEFT)).isEqualTo(DecibelRange.exactly(3 + 4 + 5));
        assertThat(audiogram.levelSum(Ear.RIGHT)).isEqualTo(DecibelRange.exactly(10 + 11 + 12));
        assertThat(audiogram
                        .with(Ear.LEFT, Frequency.HZ_3000, Threshold.noResponseAt(95))
                        .levelSum(Ear.LEFT))
                .isEqualTo(DecibelRange.atLeast(3 + 100 + 5));
        assertThat(audiogram
                        .with(Ear.LEFT, Frequency.HZ_3000, Threshold.notGiven())
                        .levelSum(Ear.LEFT))
                .isEqualTo(DecibelRange.UNKNOWN);
    }

    @Test
    void audiogramsAreTheSameByDayPurposeAndEveryThreshold() {
        Audiogram audiogram = new Audiogram.Builder(LocalDate.parse("2026-03-09"), TestPurpose.ANNUAL).build();
        Set<Integer> hashes = new HashSet<>();
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                Audiogram other = audiogram.with(ear, frequency, Threshold.measured(20));
                assertThat(other).isNotEqualTo(audiogram);
                assertThat(other.with(ear, frequency, Threshold.notGiven()))
                        .isEqualTo(audiogram)
                        .hasSameHashCodeAs(audiogram);
                hashes.add(other.hashCode());
            }
        }
        assertThat(hashes).hasSizeGreaterThan(10);
        assertThat(audiogram)
                .isNotEqualTo(new Audiogram.Builder(LocalDate.parse("2026-03-10"), TestPurpose.ANNUAL).build())
                .isNotEqualTo(new Audiogram.Builder(LocalDate.parse("2026-03-09"), TestPurpose.EXIT).build());
    }

    @Test
    void anAudiogramShowsNoThresholdInLogs() {
        Audiogram audiogram = new Audiogram.Builder(LocalDate.parse("2026-03-09"), TestPurpose.ANNUAL)
                .set(Ear.LEFT, Frequency.HZ_4000, Threshold.measured(77))
                .build();
        assertThat(audiogram).hasToString("annual 2026-03-09");
    }
}
