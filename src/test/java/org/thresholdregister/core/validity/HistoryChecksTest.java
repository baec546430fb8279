package org.thresholdregister.core.validity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static org.thresholdregister.core.validity.Tests.PLAIN;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;

class HistoryChecksTest {

    private static final String GOOD = "5 5 5 5 10 10 5";
    private static final String POOR = "10 15 30 45 55 50 40";

    /** Draft criteria of the National Hearing Conservation Association: 15 dB at any frequency, or a mean of 10 dB. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            baseline,               now,                   kind
            30 30 30 30 35 40 30,   30 30 30 30 35 25 30,  BETTER_THAN_BASELINE
            30 30 30 30 35 40 30,   30 30 30 30 35 26 30,  ''
            30 30 30 30 35 40 30,   30 30 30 30 35 40 15,  BETTER_THAN_BASELINE
            30 30 30 30 35 40 30,   30 30 20 20 25 40 30,  MEAN_BETTER_THAN_BASELINE
            30 30 30 30 35 40 30,   30 30 20 20 26 40 30,  ''
            30 30 30 30 35 40 30,   30 30 30 30 >20 40 30, ''
            30 30 30 30 >50 40 30,  30 30 30 30 40 40 30,  BETTER_THAN_BASELINE
            30 30 30 30 >49 40 30,  30 30 30 30 40 40 30,  ''
            30 30 30 30 >60 40 30,  30 30 30 30 35 40 30,  MEAN_BETTER_THAN_BASELINE
            30 30 30 30 DNT 40 30,  30 30 30 30 0 40 30,   ''
            30 30 30 30 35 40 30,   45 45 45 45 50 55 45,  ''
            """)
    void anImprobableImprovementOnTheBaselineIsFlagged(String baseline, String now, String kind) {
        List<ValidityFlag.BetterThanBaseline> flags = new Tests()
                .baseline(baseline, "30 30 30 30 35 40 30")
                .annual("2021-03-01", now, "30 30 30 30 35 40 30")
                .flags(ValidityFlag.BetterThanBaseline.class);

        assertThat(flags)
                .extracting(ValidityFlag::kind)
                .isEqualTo(kind.isEmpty() ? List.of() : List.of(FlagKind.valueOf(kind)));
    }

    @Test
    void anImprovementNamesTheBaselineAndTheLevels() {
        assertThat(new Tests()
                        .baseline(PLAIN, "10 5 25 25 40 15 10")
                        .annual("2021-03-01", PLAIN, PLAIN)
                        .flags())
                .containsExactly(new ValidityFlag.BetterThanBaseline(
                        Ear.RIGHT,
                        LocalDate.of(2020, 3, 2),
                        List.of(
                                new LevelChange(Frequency.HZ_2000, Threshold.measured(25), Threshold.measured(10)),
                                new LevelChange(Frequency.HZ_4000, Threshold.measured(40), Threshold.measured(20))),
                        DecibelRange.exactly(45),
                        true));
    }

    /** HSE L108 (2021): more than 10 dB worse at any frequency than on the test before. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            previous, now, flagged
            20,       30,  false
            20,       31,  true
            20,       35,  true
            20,       >25, false
            20,       >26, true
            >95,      >95, false
            20,       NR,  false
            DNT,      60,  false
            """)
    void aFallOfMoreThanTenDecibelsSinceThePreviousTestIsFlagged(String previous, String now, boolean flagged) {
        List<ValidityFlag.WorseThanPrevious> flags = new Tests()
                .baseline(PLAIN, PLAIN)
                .annual("2021-03-01", PLAIN.replace("20", previous), PLAIN)
                .annual("2022-03-01", PLAIN.replace("20", now), PLAIN)
                .flags(ValidityFlag.WorseThanPrevious.class);

        assertThat(flags)
                .isEqualTo(
                        flagged
                                ? List.of(new ValidityFlag.WorseThanPrevious(
                                        Ear.LEFT,
                                        LocalDate.of(2021, 3, 1),
                                        List.of(new LevelChange(
                                                Frequency.HZ_4000,
                                                Vectors.threshold(previous),
                                                Vectors.threshold(now)))))
                                : List.of());
    }

    @Test
    void anEarThatWasSetAsideOrNotTestedIsNotThePreviousOne() {
        String raised = "10 5 10 15 35 15 10";
        Tests tests = new Tests()
                .baseline(PLAIN, PLAIN)
                .annual("2021-03-01", raised, raised)
                .decided(new Decision(
                        Ears.LEFT,
                        LocalDate.of(2021, 3, 1),
                        DecisionKind.INVALID_TEST,
                        LocalDate.of(2021, 3, 2),
                        "Dr Invented",
                        ""))
                .annual("2022-03-01", "- - - - - - -", PLAIN)
                .annual("2023-03-01", raised, raised);

        assertThat(tests.flags(ValidityFlag.WorseThanPrevious.class))
                .extracting(ValidityFlag.WorseThanPrevious::ear, ValidityFlag.WorseThanPrevious::previous)
                .containsExactly(tuple(Ear.LEFT, LocalDate.of(2020, 3, 2)), tuple(Ear.RIGHT, LocalDate.of(2022, 3, 1)));
    }

    @Test
    void exchangedEarsAreFoundAmongOtherTests() {
        Tests tests = new Tests()
                .baseline(POOR, GOOD)
                .annual("2021-03-01", POOR, GOOD)
                .annual("2023-03-01", POOR, GOOD)
                .annual("2022-03-01", GOOD, POOR);

        assertThat(tests.flags(ValidityFlag.EarsLookSwapped.class))
                .containsExactly(new ValidityFlag.EarsLookSwapped(new Fit(400, 14), new Fit(0, 14), 3));
        assertThat(tests.flagsOfAll().stream()
                        .filter(flags -> flags.flags().stream().anyMatch(flag -> flag.kind() == FlagKind.EARS_SWAPPED))
                        .map(flags -> flags.test().date()))
                .as("and only they")
                .containsExactly(LocalDate.of(2022, 3, 1));
    }

    /** Levels of left and right differ by so much throughout; exchanging them gains as much in the mean. */
    @ParameterizedTest
    @CsvSource({"4, true", "3, false", "0, false"})
    void theMarginIsFourDecibels(int difference, boolean flagged) {
        String worse = flat(20 + difference);
        assertThat(new Tests()
                        .baseline(worse, flat(20))
                        .annual("2021-03-01", worse, flat(20))
                        .annual("2022-03-01", flat(20), worse)
                        .kinds()
                        .contains(FlagKind.EARS_SWAPPED))
                .isEqualTo(flagged);
    }

    @Test
    void aLossOfTheOtherEarIsNoSwap() {
        assertThat(new Tests()
                        .baseline(POOR, GOOD)
                        .annual("2021-03-01", POOR, GOOD)
                        .annual("2022-03-01", POOR, POOR)
                        .kinds())
                .doesNotContain(FlagKind.EARS_SWAPPED);
        assertThat(new Tests()
                        .baseline(GOOD, GOOD)
                        .annual("2021-03-01", GOOD, GOOD)
                        .annual("2022-03-01", POOR, GOOD)
                        .kinds())
                .doesNotContain(FlagKind.EARS_SWAPPED);
    }

    @Test
    void withFewerThanFourFrequenciesInBothEarsNothingIsSaid() {
        String poor = "10 15 30 45 - - -";
        String good = "5 5 5 - 10 10 5";
        Tests tests = new Tests()
                .baseline(poor, good)
                .annual("2021-03-01", poor, good)
                .annual("2022-03-01", good, poor);
        assertThat(tests.kinds()).doesNotContain(FlagKind.EARS_SWAPPED);
    }

    @Test
    void anEarWithoutHearingIsTakenIntoAccount() {
        String none = ">95 >95 >95 >95 >95 >95 >90";
        assertThat(new Tests()
                        .baseline(none, GOOD)
                        .annual("2021-03-01", none, GOOD)
                        .annual("2022-03-01", GOOD, none)
                        .kinds())
                .contains(FlagKind.EARS_SWAPPED);
    }

    @Test
    void aTestWithoutOthersIsNotCompared() {
        assertThat(new Tests().baseline(POOR, GOOD).kinds()).doesNotContain(FlagKind.EARS_SWAPPED);
        assertThat(new Tests()
                        .add("2020-03-02", TestPurpose.BASELINE, POOR, GOOD)
                        .annual("2021-03-01", GOOD, POOR)
                        .flags(ValidityFlag.EarsLookSwapped.class))
                .as("with one other test it may be either")
                .extracting(ValidityFlag.EarsLookSwapped::otherTests)
                .containsExactly(1);
    }

    private static String flat(int level) {
        return (level + " ").repeat(7).strip();
    }
}
