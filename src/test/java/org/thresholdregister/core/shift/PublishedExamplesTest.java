package org.thresholdregister.core.shift;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeAllowance;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.AgeTables;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.regulation.Answer;

/**
 * The worked example of 29 CFR 1910.95 Appendix F (a man's right ear from 26 to 32), what follows from it by
 * arithmetic, and the examples of letters of interpretation.
 */
@DisplayName("Published worked examples")
class PublishedExamplesTest {

    private static final LocalDate BIRTH = LocalDate.parse("1990-06-15");

    @Test
    void appendixFGivesTwentyThreeTwentyTwoAndSeventeenAtFourThousandHertz() {
        // 29 CFR 1910.95 Appendix F, steps (i) and (ii): 25 - 5 = 20; allowance 3; adjusted threshold 22; 22 - 5 = 17.
        FrequencyShift at4000 = shift(27, 32, AgeCorrection.ON).frequencies().getLast();
        assertThat(at4000.frequency()).isEqualTo(Frequency.HZ_4000);
        assertThat(at4000.uncorrected()).isEqualTo(DecibelRange.exactly(20));
        assertThat(at4000.allowance()).isEqualTo(DecibelRange.exactly(3));
        assertThat(at4000.now().range().minus(at4000.allowance())).isEqualTo(DecibelRange.exactly(22));
        assertThat(at4000.corrected()).isEqualTo(DecibelRange.exactly(17));
    }

    @ParameterizedTest
    @CsvSource({"HZ_1000, 1", "HZ_2000, 1", "HZ_3000, 1", "HZ_4000, 3", "HZ_6000, 3"})
    void appendixFPrintsTheseDifferencesBetween27And32(Frequency frequency, int decibels) {
        // 29 CFR 1910.95 Appendix F, step (ii)(C), the row "Difference".
        assertThat(allowance(27, 32).at(frequency)).isEqualTo(DecibelRange.exactly(decibels));
    }

    static Stream<Map<String, String>> derived() {
        return Vectors.rows("osha-appendix-f-expected-derived.csv").stream();
    }

    @Test
    void noDerivedRowIsMissing() {
        assertThat(derived().count()).isEqualTo(11);
        assertThat(Vectors.rows("osha-appendix-f-example.csv")).hasSize(7);
    }

    /** Derived: arithmetic on the published audiograms and tables, not itself published. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("derived")
    void derivedFromAppendixF(Map<String, String> row) {
        int from = Integer.parseInt(row.get("baseline_age"));
        int to = Integer.parseInt(row.get("test_age"));
        ThresholdShift shift = shift(from, to, AgeCorrection.ON);
        SoftAssertions softly = new SoftAssertions();
        for (Frequency frequency : List.of(
                Frequency.HZ_1000, Frequency.HZ_2000, Frequency.HZ_3000, Frequency.HZ_4000, Frequency.HZ_6000)) {
            String hertz = "_" + frequency.hertz();
            FrequencyShift at = FrequencyShift.of(
                    frequency,
                    shift.earlier().threshold(Ear.RIGHT, frequency),
                    shift.later().threshold(Ear.RIGHT, frequency),
                    shift.allowance().at(frequency));
            softly.assertThat(at.allowance()).isEqualTo(number(row, "allowance" + hertz));
            softly.assertThat(at.now().range().minus(at.allowance()))
                    .isEqualTo(number(row, "adjusted_threshold" + hertz));
            softly.assertThat(at.uncorrected()).isEqualTo(number(row, "shift_uncorrected" + hertz));
            softly.assertThat(at.corrected()).isEqualTo(number(row, "shift_age_corrected" + hertz));
        }
        ThresholdShift without = shift(from, to, AgeCorrection.OFF);
        softly.assertThat(shift.sum()).isEqualTo(number(row, "sum_234_age_corrected"));
        softly.assertThat(shift.uncorrectedSum()).isEqualTo(number(row, "sum_234_uncorrected"));
        softly.assertThat(without.sum()).isEqualTo(shift.uncorrectedSum());
        softly.assertThat(shift.isShift()).isEqualTo(answer(row, "sts_age_corrected"));
        softly.assertThat(shift.isShiftWithoutAllowance()).isEqualTo(answer(row, "sts_uncorrected"));
        softly.assertThat(without.isShift()).isEqualTo(answer(row, "sts_uncorrected"));
        softly.assertThat(mean(shift.sum())).isEqualTo(twoDecimals(row, "average_234_age_corrected_db"));
        softly.assertThat(mean(shift.uncorrectedSum())).isEqualTo(twoDecimals(row, "average_234_uncorrected_db"));
        softly.assertThat(mean(shift.later().levelSum(Ear.RIGHT)))
                .isEqualTo(twoDecimals(row, "current_hearing_level_average_234_db"));
        softly.assertAll();
    }

    @Test
    void theAppendixFHistoryIsAShiftUnderTheRecordingLevel() {
        // Derived from Appendix F, 27 to 32: 40/3 = 13.33 and 35/3 = 11.67, both shifts; level 45/3 = 15.
        ThresholdShift shift = shift(27, 32, AgeCorrection.ON);
        assertThat(mean(shift.uncorrectedSum())).isEqualTo("13.33");
        assertThat(mean(shift.sum())).isEqualTo("11.67");
        assertThat(shift.isShift()).isEqualTo(Answer.YES);
        assertThat(mean(shift.later().levelSum(Ear.RIGHT))).isEqualTo("15.00");
        assertThat(Limit.atLeast(25).reachedByMean(shift.later().levelSum(Ear.RIGHT), 3))
                .isEqualTo(Answer.NO);
    }

    @Test
    void theAllowanceMayTakeAShiftOfExactlyTenAway() {
        // Derived from Appendix F, 27 to 30: 30/3 = 10.00; allowances 0, 0, 2; 28/3 = 9.33.
        ThresholdShift shift = shift(27, 30, AgeCorrection.ON);
        assertThat(mean(shift.uncorrectedSum())).isEqualTo("10.00");
        assertThat(shift.isShiftWithoutAllowance()).isEqualTo(Answer.YES);
        assertThat(shift.frequencies())
                .extracting(FrequencyShift::allowance)
                .containsExactly(DecibelRange.exactly(0), DecibelRange.exactly(0), DecibelRange.exactly(2));
        assertThat(mean(shift.sum())).isEqualTo("9.33");
        assertThat(shift.isShift()).isEqualTo(Answer.NO);
    }

    @Test
    void measuredFromTheAgeOf26TheHistoryShowsNoShift() {
        // Derived from Appendix F, 26 to 32: 25/3 = 8.33; 19/3 = 6.33.
        ThresholdShift shift = shift(26, 32, AgeCorrection.ON);
        assertThat(mean(shift.uncorrectedSum())).isEqualTo("8.33");
        assertThat(mean(shift.sum())).isEqualTo("6.33");
        assertThat(shift.isShiftWithoutAllowance()).isEqualTo(Answer.NO);
        assertThat(shift.isShift()).isEqualTo(Answer.NO);
    }

    @ParameterizedTest
    @EnumSource
    void fromMinusTenToZeroIsAShift(Ear ear) {
        // OSHA letter of 17 November 1989: a change of 10 dB at all three frequencies is one, whatever the levels.
        ThresholdShift shift = ThresholdShift.between(
                ear,
                Vectors.flat(LocalDate.parse("2025-06-15"), TestPurpose.BASELINE, -10, -10),
                Vectors.flat(LocalDate.parse("2026-06-15"), TestPurpose.ANNUAL, 0, 0),
                new AgeAllowance.SwitchedOff(),
                ThresholdShift.STANDARD);
        assertThat(shift.sum()).isEqualTo(DecibelRange.exactly(30));
        assertThat(shift.isShift()).isEqualTo(Answer.YES);
    }

    /** 29 CFR 1910.95(g)(10)(i) says "10 dB or more"; no rounding rule is published, so 29 dB in all is none. */
    @ParameterizedTest
    @CsvSource({"20, 20, 19, NO", "20, 20, 20, YES", "40, 10, 9, NO", "40, 10, 10, YES", "-10, 40, 30, YES"})
    void theSumIsComparedAndNothingIsRounded(String at2000, String at3000, String at4000, Answer answer) {
        List<String> levels = List.of(at2000, at3000, at4000);
        ThresholdShift shift = ThresholdShift.between(
                Ear.LEFT,
                Vectors.flat(LocalDate.parse("2025-06-15"), TestPurpose.BASELINE, 10, 10),
                Vectors.audiogram(LocalDate.parse("2026-06-15"), TestPurpose.ANNUAL, levels, levels),
                new AgeAllowance.SwitchedOff(),
                ThresholdShift.STANDARD);
        assertThat(shift.isShift()).isEqualTo(answer);
    }

    private static ThresholdShift shift(int fromAge, int toAge, AgeCorrection correction) {
        return ThresholdShift.between(
                Ear.RIGHT,
                audiogram(fromAge),
                audiogram(toAge),
                AgeAllowance.between(
                        correction == AgeCorrection.ON ? Optional.of(AgeTables.OSHA_APPENDIX_F) : Optional.empty(),
                        Optional.of(BIRTH),
                        Optional.of(Sex.MALE),
                        dayAtAge(fromAge),
                        dayAtAge(toAge)),
                ThresholdShift.STANDARD);
    }

    private static AgeAllowance allowance(int fromAge, int toAge) {
        return shift(fromAge, toAge, AgeCorrection.ON).allowance();
    }

    private static LocalDate dayAtAge(int age) {
        return BIRTH.plusYears(age);
    }

    /** The published audiogram of the right ear at this age. */
    private static Audiogram audiogram(int age) {
        Map<String, String> row = Vectors.rows("osha-appendix-f-example.csv").stream()
                .filter(candidate -> candidate.get("age").equals("" + age))
                .findFirst()
                .orElseThrow();
        Audiogram.Builder builder = new Audiogram.Builder(dayAtAge(age), TestPurpose.ANNUAL);
        for (Frequency frequency : Frequency.values()) {
            builder.set(Ear.RIGHT, frequency, Vectors.threshold(row.getOrDefault("" + frequency.hertz(), "")));
        }
        return builder.build();
    }

    private static DecibelRange number(Map<String, String> row, String column) {
        return DecibelRange.exactly(Integer.parseInt(row.get(column)));
    }

    private static Answer answer(Map<String, String> row, String column) {
        return Answer.valueOf(row.get(column).toUpperCase(java.util.Locale.ROOT));
    }

    private static String mean(DecibelRange sum) {
        return MeanOfThree.ofSum(sum.exact().orElseThrow());
    }

    private static String twoDecimals(Map<String, String> row, String column) {
        return new BigDecimal(row.get(column)).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
