package org.thresholdregister.core.validity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.validity.Tests.PLAIN;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

/** The limits are those of the flags' sources; see {@link FlagSource}. */
class SingleTestChecksTest {

    private static Tests test(String left, String right) {
        return new Tests().baseline(left, right);
    }

    @Test
    void aPlainTestHasNoFlag() {
        assertThat(test(PLAIN, PLAIN).flags()).isEmpty();
    }

    /** 29 CFR 1910.95(h)(1) asks for 500 to 6000 Hz and not for 8000 Hz. */
    @Test
    void aMissingFrequencyIsFlaggedUnlessTheRuleDoesNotAskForIt() {
        assertThat(test("10 5 DNT 15 20 - 10", PLAIN).flags())
                .containsExactly(
                        new ValidityFlag.FrequenciesMissing(Ear.LEFT, List.of(Frequency.HZ_2000, Frequency.HZ_6000)));
        assertThat(test("10 5 10 15 20 15 -", "10 5 10 15 20 15 DNT").flags()).isEmpty();
        assertThat(test("10 5 10 15 NR >95 10", PLAIN).flags(ValidityFlag.FrequenciesMissing.class))
                .as("no response is an answer")
                .isEmpty();
    }

    @Test
    void whatCouldNotBeTestedIsToldFromWhatWasLeftOut() {
        assertThat(test(PLAIN, "CNT CNT CNT CNT CNT DNT CNT").flags())
                .containsExactly(
                        new ValidityFlag.FrequenciesMissing(Ear.RIGHT, List.of(Frequency.HZ_6000)),
                        new ValidityFlag.CouldNotBeTested(
                                Ear.RIGHT,
                                List.of(
                                        Frequency.HZ_500,
                                        Frequency.HZ_1000,
                                        Frequency.HZ_2000,
                                        Frequency.HZ_3000,
                                        Frequency.HZ_4000)));
    }

    @Test
    void aTestThatIsNeverJudgedMayLeaveFrequenciesOut() {
        assertThat(new Tests()
                        .baseline(PLAIN, PLAIN)
                        .add("2021-03-01", TestPurpose.OTHER, "10 5 - - - - -", "10 5 - - - - -")
                        .flags())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            transducer text,       worse, flagged
            supra-aural P-11,      59,    true
            supra-aural P-11,      58,    false
            '',                    59,    true
            '',                    58,    false
            P-21,                  59,    true
            Insert earphones,      74,    true
            Insert earphones,      73,    false
            insert or supra-aural, 59,    true
            supra-aural P-11,      >54,   true
            supra-aural P-11,      >53,   false
            supra-aural P-11,      NR,    false
            supra-aural P-11,      DNT,   false
            """)
    void maskingIsCalledForFromADifferenceOf40OrWithInsertsOf55(String transducer, String worse, boolean flagged) {
        Audiogram audiogram = Tests.audiogram(
                "2020-03-02", TestPurpose.BASELINE, PLAIN, PLAIN.replace("20", worse.equals("DNT") ? "DNT" : worse));
        audiogram = audiogram.with(Ear.LEFT, Frequency.HZ_4000, Threshold.measured(19));
        TestConditions conditions = new TestConditions(
                Tests.quiet().hoursSinceNoise(),
                Optional.of(false),
                Transducer.in(transducer),
                PerEar.from(ear -> Threshold.notGiven()));

        List<ValidityFlag.MaskingCalledFor> flags =
                new Tests().add(audiogram, conditions).flags(ValidityFlag.MaskingCalledFor.class);

        if (!flagged) {
            assertThat(flags).isEmpty();
            return;
        }
        assertThat(flags)
                .containsExactly(new ValidityFlag.MaskingCalledFor(
                        Ear.RIGHT,
                        Transducer.in(transducer),
                        List.of(new EarDifference(
                                Frequency.HZ_4000, Vectors.threshold(worse), Threshold.measured(19)))));
    }

    @Test
    void theTransducerIsReadFromItsText() {
        assertThat(Transducer.in("INSERT, foam tips")).isEqualTo(Transducer.INSERT);
        assertThat(Transducer.in("Supraaural")).isEqualTo(Transducer.SUPRA_AURAL);
        assertThat(Transducer.in("P-31")).isEqualTo(Transducer.NOT_KNOWN);
    }

    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            first, second, kind
            20,    20,     ''
            20,    25,     ''
            20,    15,     ''
            20,    26,     REPEAT_DIFFERS
            20,    30,     REPEAT_DIFFERS
            20,    10,     REPEAT_DIFFERS
            20,    31,     REPEAT_UNRELIABLE
            20,    9,      REPEAT_UNRELIABLE
            20,    DNT,    ''
            20,    NR,     ''
            20,    >20,    ''
            20,    >21,    REPEAT_DIFFERS
            20,    >26,    REPEAT_UNRELIABLE
            >95,   90,     REPEAT_DIFFERS
            >95,   >95,    ''
            """)
    void aSecondReadingAt1000MayDifferByOneStep(String first, String second, String kind) {
        Audiogram audiogram = Tests.audiogram("2020-03-02", TestPurpose.BASELINE, PLAIN, PLAIN)
                .with(Ear.LEFT, Frequency.HZ_1000, Vectors.threshold(first));
        PerEar<Threshold> repeat = new PerEar<>(Vectors.threshold(second), Threshold.notGiven());

        List<ValidityFlag.RepeatDiffers> flags =
                new Tests().add(audiogram, Tests.quiet().withRepeat(repeat)).flags(ValidityFlag.RepeatDiffers.class);

        assertThat(flags)
                .extracting(ValidityFlag::kind)
                .isEqualTo(kind.isEmpty() ? List.of() : List.of(FlagKind.valueOf(kind)));
        assertThat(flags).allSatisfy(flag -> assertThat(flag.ear()).isEqualTo(Ear.LEFT));
    }

    @Test
    void anEarThatHeardNothingAtAllIsFlagged() {
        assertThat(test(PLAIN, ">95 >95 >95 >95 >95 >95 >90").kinds())
                .containsExactly(FlagKind.MASKING_CALLED_FOR, FlagKind.NO_RESPONSE_THROUGHOUT);
        assertThat(test(PLAIN, "NR NR NR NR NR NR -").kinds()).containsExactly(FlagKind.NO_RESPONSE_THROUGHOUT);
        assertThat(test(PLAIN, ">95 >95 90 >95 >95 >95 >90").kinds()).containsExactly(FlagKind.MASKING_CALLED_FOR);
    }

    @Test
    void oneLevelAtEveryFrequencyIsFlagged() {
        assertThat(test("15 15 15 15 15 15 15", PLAIN).flags())
                .containsExactly(new ValidityFlag.SameLevelThroughout(
                        Ear.LEFT, Threshold.measured(15), List.of(Frequency.values())));
        assertThat(test("15 15 15 15 15 15 -", PLAIN).kinds()).containsExactly(FlagKind.SAME_LEVEL_THROUGHOUT);
        assertThat(test("15 15 15 15 15 15 20", PLAIN).kinds()).isEmpty();
        assertThat(test("15 15 15 15 15 - 15", PLAIN).kinds()).contains(FlagKind.SAME_LEVEL_THROUGHOUT);
        assertThat(test("15 15 15 15 15 - -", PLAIN).kinds()).doesNotContain(FlagKind.SAME_LEVEL_THROUGHOUT);
    }

    @Test
    void aLevelOffTheStepIsFlaggedUnlessTheTestWasMadeInFinerSteps() {
        assertThat(test(PLAIN, "10 5 12 15 20 15 10").flags())
                .containsExactly(new ValidityFlag.OffTheStep(Ear.RIGHT, List.of(Frequency.HZ_2000)));
        assertThat(test("11 6 12 14 21 14 10", "9 5 12 15 22 13 11").flags()).isEmpty();
        // Seven of fourteen: as many on the step as off it say nothing of the step.
        assertThat(test("11 6 12 14 21 14 9", PLAIN).flags()).isEmpty();
        assertThat(test("11 6 12 14 21 14 10", PLAIN).kinds()).containsExactly(FlagKind.OFF_THE_STEP);
    }

    @Test
    void everyFlagNamesItsEarsAndItsSource() {
        List<ValidityFlag> flags =
                test("10 5 10 DNT 20 15 10", ">95 >95 >95 >95 >95 >95 >90").flags();
        assertThat(flags).extracting(ValidityFlag::ears).containsExactly(Ears.LEFT, Ears.RIGHT, Ears.RIGHT);
        assertThat(flags)
                .allSatisfy(flag -> assertThat(flag.source().citation().place()).isNotBlank());
        assertThat(flags.getFirst().source().standing()).isEqualTo(FlagSource.Standing.REGULATION);
    }
}
