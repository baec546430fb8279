package org.thresholdregister.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.calibration.DailyCheck.Listening;
import org.thresholdregister.core.calibration.DailyCheck.Verdict;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.wording.EquipmentWords;

/** 29 CFR 1910.95(h)(5)(i); worked example E4: 10 dB off at any frequency requires an acoustic calibration. */
class DailyCheckTest {

    private static PerEar<Map<Frequency, Threshold>> flat(int decibels) {
        return PerEar.from(ear -> {
            Map<Frequency, Threshold> levels = new EnumMap<>(Frequency.class);
            for (Frequency frequency : Frequency.values()) {
                levels.put(frequency, Threshold.measured(decibels));
            }
            return levels;
        });
    }

    private static DailyCheck.Result with(Ear ear, Frequency frequency, Threshold reading) {
        PerEar<Map<Frequency, Threshold>> readings = flat(20);
        readings.of(ear).put(frequency, reading);
        return DailyCheck.judge(flat(20), readings, Listening.GOOD);
    }

    @ParameterizedTest
    @EnumSource(Frequency.class)
    void tenDecibelsAtAnyFrequencyOfEitherEarOnEitherSideCallForACalibration(Frequency frequency) {
        for (Ear ear : Ear.values()) {
            assertThat(with(ear, frequency, Threshold.measured(30)).verdict()).isEqualTo(Verdict.DEVIATES);
            assertThat(with(ear, frequency, Threshold.measured(10)).verdict()).isEqualTo(Verdict.DEVIATES);
            assertThat(with(ear, frequency, Threshold.measured(29)).verdict()).isEqualTo(Verdict.PASSED);
            assertThat(with(ear, frequency, Threshold.measured(11)).verdict()).isEqualTo(Verdict.PASSED);
            assertThat(with(ear, frequency, Threshold.measured(30)).deviations())
                    .containsExactly(
                            new DailyCheck.Deviation(ear, frequency, Threshold.measured(20), Threshold.measured(30)));
        }
    }

    @Test
    void noResponseFarAboveTheReferenceDeviates() {
        assertThat(with(Ear.LEFT, Frequency.HZ_500, Threshold.noResponseAt(25)).verdict())
                .isEqualTo(Verdict.DEVIATES);
        assertThat(with(Ear.LEFT, Frequency.HZ_500, Threshold.noResponseAt(20)).verdict())
                .as("25 dB or more: perhaps 10 off, perhaps not")
                .isEqualTo(Verdict.INCOMPLETE);
    }

    @Test
    void aMissingReadingLeavesItOpenUnlessAnotherDeviates() {
        DailyCheck.Result open = with(Ear.RIGHT, Frequency.HZ_6000, Threshold.notGiven());
        assertThat(open.verdict()).isEqualTo(Verdict.INCOMPLETE);
        assertThat(open.acousticCalibrationRequired()).isEqualTo(Answer.UNDECIDED);
        assertThat(with(Ear.RIGHT, Frequency.HZ_8000, Threshold.notGiven()).verdict())
                .as("8000 Hz is not asked for")
                .isEqualTo(Verdict.PASSED);
        PerEar<Map<Frequency, Threshold>> readings = flat(20);
        readings.left().remove(Frequency.HZ_500);
        readings.right().put(Frequency.HZ_4000, Threshold.measured(35));
        assertThat(DailyCheck.judge(flat(20), readings, Listening.GOOD).verdict())
                .isEqualTo(Verdict.DEVIATES);
    }

    @Test
    void whatIsHeardCountsToo() {
        assertThat(DailyCheck.judge(flat(5), flat(5), Listening.FAULT).verdict())
                .isEqualTo(Verdict.FAULT_HEARD);
        assertThat(DailyCheck.judge(flat(5), flat(5), Listening.NOT_DONE).verdict())
                .isEqualTo(Verdict.INCOMPLETE);
        assertThat(DailyCheck.judge(flat(5), flat(15), Listening.FAULT).verdict())
                .as("the deviation weighs more: it asks for a calibration")
                .isEqualTo(Verdict.DEVIATES);
    }

    @Test
    void theResultIsSaidInWords() {
        assertThat(EquipmentWords.check("A-1", with(Ear.LEFT, Frequency.HZ_3000, Threshold.measured(30))))
                .isEqualTo("A-1 needs an acoustic calibration before tests on it count: left ear at 3000 Hz 30 dB HL"
                        + " where 20 dB HL is known.");
        assertThat(EquipmentWords.check("A-1", DailyCheck.judge(flat(5), flat(5), Listening.GOOD)))
                .isEqualTo("A-1 may be used: no reading is 10 dB or more off.");
    }
}
