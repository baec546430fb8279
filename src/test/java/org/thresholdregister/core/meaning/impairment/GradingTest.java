package org.thresholdregister.core.meaning.impairment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.meaning.Audiograms;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.regulation.Answer;

/** WHO 2021 (table 1.3), WHO 1991 and Clark 1981: both sides of every boundary. */
class GradingTest {

    /** Levels at 500, 1000, 2000, (3000) and 4000 Hz; the other ear is deaf, so that this one is the better. */
    private static Audiogram better(String cells) {
        return Audiograms.of(cells, "120 120 120 120 120");
    }

    @ParameterizedTest
    @CsvSource({
        "20 20 20 0 19, NORMAL, NONE",
        "20 20 20 0 20, MILD, NONE",
        "25 25 25 0 25, MILD, NONE",
        "25 25 25 0 26, MILD, SLIGHT",
        "35 35 35 0 34, MILD, SLIGHT",
        "35 35 35 0 35, MODERATE, SLIGHT",
        "40 40 40 0 40, MODERATE, SLIGHT",
        "40 40 40 0 41, MODERATE, MODERATE",
        "50 50 50 0 49, MODERATE, MODERATE",
        "50 50 50 0 50, MODERATELY_SEVERE, MODERATE",
        "60 60 60 0 60, MODERATELY_SEVERE, MODERATE",
        "60 60 60 0 61, MODERATELY_SEVERE, SEVERE",
        "65 65 65 0 64, MODERATELY_SEVERE, SEVERE",
        "65 65 65 0 65, SEVERE, SEVERE",
        "80 80 80 0 79, SEVERE, SEVERE",
        "80 80 80 0 80, PROFOUND, SEVERE",
        "80 80 80 0 81, PROFOUND, PROFOUND",
        "95 95 95 0 94, PROFOUND, PROFOUND",
        "95 95 95 0 95, COMPLETE, PROFOUND",
        "-10 -10 -10 0 -10, NORMAL, NONE"
    })
    void theBetterEarIsGraded(String cells, Grade.Who2021 in2021, Grade.Who1991 in1991) {
        assertThat(Grading.Who2021.of(better(cells)).grade().exact()).contains(in2021);
        assertThat(Grading.Who1991.of(better(cells)).grade().exact()).contains(in1991);
    }

    @ParameterizedTest
    @CsvSource({
        "15 15 15, NORMAL",
        "15 15 16, SLIGHT",
        "25 25 25, SLIGHT",
        "25 25 26, MILD",
        "40 40 40, MILD",
        "40 40 41, MODERATE",
        "55 55 55, MODERATE",
        "55 55 56, MODERATELY_SEVERE",
        "70 70 70, MODERATELY_SEVERE",
        "70 70 71, SEVERE",
        "90 90 90, SEVERE",
        "90 90 91, PROFOUND"
    })
    void clarkGradesEachEar(String cells, Grade.Clark1981 grade) {
        Grading.Clark1981 graded = Grading.Clark1981.of(Audiograms.of(cells, "0 0 0"));
        assertThat(graded.grade().left().exact()).contains(grade);
        assertThat(graded.grade().right().exact()).contains(Grade.Clark1981.NORMAL);
    }

    /** Better ear under 20 dB and worse ear at 35 dB or more. */
    @ParameterizedTest
    @CsvSource({
        "20 20 20 0 19, 35 35 35 0 35, YES",
        "20 20 20 0 20, 35 35 35 0 35, NO",
        "20 20 20 0 19, 35 35 35 0 34, NO",
        "35 35 35 0 35, 20 20 20 0 19, YES",
        "- 20 20 0 20, 35 35 35 0 35, UNDECIDED",
        "- 20 20 0 20, 20 20 20 0 20, NO",
        "19 19 19 0 19, 35 35 35 0 -, UNDECIDED",
        "19 19 19 0 19, 35 35 35 0 >80, YES",
        "30 30 30 0 30, - 30 30 0 30, NO"
    })
    void unilateralLossIsSeen(String left, String right, Answer unilateral) {
        assertThat(Grading.Who2021.of(Audiograms.of(left, right)).unilateral()).isEqualTo(unilateral);
        assertThat(Grading.Who2021.of(Audiograms.of(right, left)).unilateral()).isEqualTo(unilateral);
    }

    @Test
    void disablingIsOverForty() {
        assertThat(Grading.Who1991.of(better("40 40 40 0 40")).disabling()).isEqualTo(Answer.NO);
        assertThat(Grading.Who1991.of(better("40 40 40 0 41")).disabling()).isEqualTo(Answer.YES);
    }

    @Test
    void aBlankLeavesTheGradesOpenThatItLeavesPossible() {
        Grading.Who2021 oneEarKnown = Grading.Who2021.of(Audiograms.of("- 20 20 0 20", "20 20 20 0 30"));
        assertThat(oneEarKnown.grade()).isEqualTo(new GradeRange<>(Grade.Who2021.NORMAL, Grade.Who2021.MILD));
        assertThat(oneEarKnown.grade().exact()).isEmpty();
        Grading.Who2021 noResponse = Grading.Who2021.of(Audiograms.of(">95 60 60 0 60", "NR 60 60 0 60"));
        assertThat(noResponse.grade()).isEqualTo(new GradeRange<>(Grade.Who2021.NORMAL, Grade.Who2021.COMPLETE));
        Grading.Clark1981 eachEar = Grading.Clark1981.of(Audiograms.of(">95 60 60", "60 60 60"));
        assertThat(eachEar.grade().left())
                .isEqualTo(new GradeRange<>(Grade.Clark1981.SEVERE, Grade.Clark1981.PROFOUND));
    }

    @Test
    void fillingInABlankStaysInTheRange() {
        var random = new Random(2021);
        for (int i = 0; i < 500; i++) {
            Audiogram full = Audiograms.random(random, 100);
            Audiogram open = full.with(
                    Ear.values()[random.nextInt(2)],
                    Grading.WHO_FREQUENCIES.get(random.nextInt(4)),
                    Threshold.notGiven());
            Grade.Who2021 filled = Grading.Who2021.of(full).grade().exact().orElseThrow();
            GradeRange<Grade.Who2021> range = Grading.Who2021.of(open).grade();
            assertThat(filled).isBetween(range.best(), range.worst());
        }
    }

    @Test
    void unilateralLossIsNeverContradictedByFillingIn() {
        var random = new Random(13);
        for (int i = 0; i < 25; i++) {
            assertThat(Audiograms.withTwoBlank(
                            random, test -> Grading.Who2021.of(test).unilateral()))
                    .matches(Audiograms.Open::agree);
        }
    }

    @Test
    void gradesAreNoProgrammeCriterion() {
        assertThat(Grading.all(Audiograms.flat(20)))
                .hasSize(3)
                .allSatisfy(grading -> assertThat(grading.isNot()).contains(Caveat.NO_PROGRAMME_CRITERION));
    }
}
