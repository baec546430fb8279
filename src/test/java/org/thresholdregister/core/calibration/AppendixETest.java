package org.thresholdregister.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.wording.EquipmentWords;

/** 29 CFR 1910.95 Appendix E, Tables E-1 and E-2, row by row, and its tolerances. */
class AppendixETest {

    private static final String TABLE = "/vectors/calibration/appendix-e.csv";

    private static Frequency frequency(int hertz) {
        return List.of(Frequency.values()).stream()
                .filter(any -> any.hertz() == hertz)
                .findFirst()
                .orElseThrow();
    }

    private static PerEar<Map<Frequency, MeterReading>> asPrinted(Earphone earphone) {
        return PerEar.from(ear -> {
            Map<Frequency, MeterReading> readings = new EnumMap<>(Frequency.class);
            AppendixE.FREQUENCIES.forEach(at -> readings.put(at, AppendixE.expected(earphone, at)));
            return readings;
        });
    }

    private static AppendixE.Result off(Earphone earphone, Ear ear, Frequency at, int tenths) {
        PerEar<Map<Frequency, MeterReading>> readings = asPrinted(earphone);
        readings.of(ear).computeIfPresent(at, (unused, right) -> new MeterReading(right.tenths() + tenths));
        return AppendixE.judge(earphone, readings);
    }

    @ParameterizedTest
    @CsvFileSource(resources = TABLE, useHeadersInDisplayName = true)
    void eachRowHoldsAtItsLimitsOnBothSidesAndInBothEars(
            String table,
            String earphoneName,
            int hertz,
            int dial,
            String reference,
            String reading,
            int advised,
            int required) {
        Earphone earphone = Earphone.find(earphoneName).orElseThrow();
        Frequency at = frequency(hertz);
        assertThat(earphone.table()).isEqualTo(table);
        assertThat(dial).isEqualTo(AppendixE.DIAL_DB);
        assertThat(AppendixE.expected(earphone, at)).isEqualTo(MeterReading.parse(reading));
        assertThat(AppendixE.expected(earphone, at).tenthsAbove(MeterReading.ofDecibels(dial)))
                .isEqualTo(MeterReading.parse(reference).tenths());
        for (Ear ear : Ear.values()) {
            for (int sign : new int[] {1, -1}) {
                assertThat(off(earphone, ear, at, sign * (10 * advised - 1)).exhaustiveAdvised())
                        .isEqualTo(Answer.NO);
                assertThat(off(earphone, ear, at, sign * 10 * advised).exhaustiveAdvised())
                        .isEqualTo(Answer.YES);
                assertThat(off(earphone, ear, at, sign * 10 * advised).exhaustiveRequired())
                        .isEqualTo(Answer.NO);
                assertThat(off(earphone, ear, at, sign * (10 * required - 1)).exhaustiveRequired())
                        .isEqualTo(Answer.NO);
                assertThat(off(earphone, ear, at, sign * 10 * required).exhaustiveRequired())
                        .isEqualTo(Answer.YES);
            }
        }
    }

    @Test
    void theTableHoldsTwelveRows() throws Exception {
        try (var lines = new java.io.BufferedReader(
                new java.io.InputStreamReader(AppendixETest.class.getResourceAsStream(TABLE)))) {
            assertThat(lines.lines().filter(line -> line.startsWith("E-")).count())
                    .isEqualTo(12);
        }
    }

    @ParameterizedTest
    @CsvSource({"2000, 30, ADVISED", "4000, 40, ADVISED", "6000, 50, ADVISED", "500, 150, REQUIRED", "6000, 49, NEITHER"
    })
    void theWorkedExamplesE2AndE3(int hertz, int tenths, String expected) {
        AppendixE.Result result = off(Earphone.TDH_39, Ear.LEFT, frequency(hertz), tenths);
        assertThat(
                        result.exhaustiveRequired() == Answer.YES
                                ? "REQUIRED"
                                : result.exhaustiveAdvised() == Answer.YES ? "ADVISED" : "NEITHER")
                .isEqualTo(expected);
    }

    @Test
    void theWorkedExampleE1() {
        assertThat(AppendixE.expected(Earphone.TDH_39, Frequency.HZ_1000)).isEqualTo(MeterReading.ofDecibels(77));
    }

    @Test
    void aMissingReadingLeavesOpenWhatTheOthersDoNotDecide() {
        PerEar<Map<Frequency, MeterReading>> readings = asPrinted(Earphone.TDH_49);
        readings.right().remove(Frequency.HZ_3000);
        AppendixE.Result open = AppendixE.judge(Earphone.TDH_49, readings);
        assertThat(open.exhaustiveAdvised()).isEqualTo(Answer.UNDECIDED);
        assertThat(open.exhaustiveRequired()).isEqualTo(Answer.UNDECIDED);
        assertThat(EquipmentWords.acoustic(open))
                .isEqualTo("Whether an exhaustive calibration is called for cannot be decided: 1 of 12 readings is"
                        + " missing.");

        readings.left().put(Frequency.HZ_500, MeterReading.parse("80.5"));
        assertThat(AppendixE.judge(Earphone.TDH_49, readings).exhaustiveAdvised())
                .isEqualTo(Answer.YES);
        readings.left().put(Frequency.HZ_500, MeterReading.parse("68.5"));
        AppendixE.Result required = AppendixE.judge(Earphone.TDH_49, readings);
        assertThat(required.exhaustiveRequired()).isEqualTo(Answer.YES);
        assertThat(EquipmentWords.acoustic(required))
                .isEqualTo(
                        "An exhaustive calibration is required: a reading is 15 dB or more off. Furthest off: left ear"
                                + " at 500 Hz, 68.5 dB where 83.5 dB are printed (-15 dB).");
    }

    @Test
    void readingsAt8000HzHaveNoRowAndAreLeftOut() {
        PerEar<Map<Frequency, MeterReading>> readings = asPrinted(Earphone.TDH_39);
        readings.left().put(Frequency.HZ_8000, MeterReading.ofDecibels(0));
        AppendixE.Result result = AppendixE.judge(Earphone.TDH_39, readings);
        assertThat(result.findings()).hasSize(12);
        assertThat(result.exhaustiveAdvised()).isEqualTo(Answer.NO);
        assertThatThrownBy(() -> AppendixE.expected(Earphone.TDH_39, Frequency.HZ_8000))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(new ArrayList<>(result.findings())).allMatch(finding -> finding.deviationTenths() == 0);
    }

    @ParameterizedTest
    @CsvSource({"81.5, 815", "77, 770", "-3.5, -35", "150, 1500"})
    void aMeterReadingIsReadInTenths(String text, int tenths) {
        assertThat(MeterReading.parse(text)).isEqualTo(new MeterReading(tenths)).hasToString(text);
    }

    @ParameterizedTest
    @CsvSource({"81.25", "x", "''", "150.1", "-31"})
    void whatNoMeterShowsIsRefused(String text) {
        assertThatThrownBy(() -> MeterReading.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }
}
