package org.thresholdregister.core.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.RandomHistories;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.RuleSets;

/** What must hold of the flags of every history, tried on many. */
class ValidityPropertiesTest {

    private static final int HISTORIES = 1_000;

    private record Said(FlagKind kind, Ears ears, List<Frequency> frequencies) {}

    private static TestConditions conditions(Audiogram test) {
        Random random = new Random(test.date().toEpochDay());
        int level = random.nextInt(0, 40);
        return new TestConditions(
                random.nextBoolean() ? Optional.empty() : Optional.of(BigDecimal.valueOf(random.nextInt(20))),
                random.nextBoolean() ? Optional.empty() : Optional.of(random.nextBoolean()),
                Transducer.values()[random.nextInt(3)],
                new PerEar<>(Threshold.measured(level), Threshold.measured(level)));
    }

    private static List<TestFlags> flags(WorkerHistory history, JudgingOptions options) {
        return new TestValidity(
                        history,
                        Judge.judge(history, options),
                        ValidityPropertiesTest::conditions,
                        RuleSets.OSHA.quiet(),
                        SameDayTests.NONE)
                .ofAllTests();
    }

    private static List<List<Said>> said(List<TestFlags> tests, Function<Ears, Ears> ears) {
        return tests.stream()
                .map(test -> test.flags().stream()
                        .map(flag -> new Said(flag.kind(), ears.apply(flag.ears()), flag.frequencies()))
                        .sorted(Comparator.comparing(Said::kind).thenComparing(Said::ears))
                        .toList())
                .toList();
    }

    @Test
    void theHistoriesHoldEveryFlagThatOneWorkersTestsCanHave() {
        Map<FlagKind, Integer> counts = new EnumMap<>(FlagKind.class);
        RandomHistories.check(
                31,
                HISTORIES,
                true,
                (history, options) -> flags(history, options)
                        .forEach(test -> test.flags().forEach(flag -> counts.merge(flag.kind(), 1, Integer::sum))));

        assertThat(counts.keySet())
                .contains(
                        FlagKind.QUIET_TIME_SHORT,
                        FlagKind.QUIET_TIME_NOT_ON_RECORD,
                        FlagKind.FREQUENCIES_MISSING,
                        FlagKind.REPEAT_DIFFERS,
                        FlagKind.REPEAT_UNRELIABLE,
                        FlagKind.EARS_SWAPPED,
                        FlagKind.BETTER_THAN_BASELINE,
                        FlagKind.MEAN_BETTER_THAN_BASELINE,
                        FlagKind.WORSE_THAN_PREVIOUS,
                        FlagKind.MASKING_CALLED_FOR,
                        FlagKind.OFF_THE_STEP);
    }

    @Test
    void flagsChangeNoDetermination() {
        RandomHistories.check(32, HISTORIES, true, (history, options) -> {
            WorkerJudgement before = Judge.judge(history, options);
            flags(history, options);
            assertThat(Judge.judge(history, options)).isEqualTo(before);
        });
    }

    @Test
    void exchangingTheEarsOfAllTestsExchangesTheFlags() {
        RandomHistories.check(33, HISTORIES, true, (history, options) -> {
            WorkerHistory exchanged = new WorkerHistory(
                    history.worker(),
                    history.audiograms().stream()
                            .map(ValidityPropertiesTest::exchanged)
                            .toList(),
                    history.decisions().stream()
                            .map(ValidityPropertiesTest::exchanged)
                            .toList());
            assertThat(said(flags(exchanged, options), Function.identity()))
                    .isEqualTo(said(flags(history, options), ValidityPropertiesTest::exchanged));
        });
    }

    @Test
    void theOrderOfTheTestsDoesNotMatter() {
        Random random = new Random(34);
        RandomHistories.check(34, HISTORIES, true, (history, options) -> {
            List<Audiogram> audiograms = new ArrayList<>(history.audiograms());
            Collections.shuffle(audiograms, random);
            assertThat(flags(new WorkerHistory(history.worker(), audiograms, history.decisions()), options))
                    .isEqualTo(flags(history, options));
        });
    }

    /** Filling in a blank may add a flag; blanking a threshold never makes one that rests on levels. */
    @Test
    void aBlankMakesNoFlagButThatOfTheMissingFrequency() {
        RandomHistories.check(35, HISTORIES, false, (history, options) -> {
            Audiogram last =
                    history.audiograms().stream().max(Audiogram.CHRONOLOGICAL).orElseThrow();
            List<Audiogram> audiograms = new ArrayList<>(history.audiograms());
            Audiogram blanked = last.with(Ear.LEFT, Frequency.HZ_4000, Threshold.notGiven());
            audiograms.set(audiograms.indexOf(last), blanked);

            List<FlagKind> before = kindsOfLast(flags(history, options));
            List<FlagKind> after =
                    kindsOfLast(flags(new WorkerHistory(history.worker(), audiograms, history.decisions()), options));

            after.removeAll(before);
            // The step and the fit are taken over what is left, which may be more of one mind than all was; an
            // improvement at one frequency remains where that of the mean is gone.
            after.removeAll(List.of(
                    FlagKind.BETTER_THAN_BASELINE,
                    FlagKind.FREQUENCIES_MISSING,
                    FlagKind.OFF_THE_STEP,
                    FlagKind.EARS_SWAPPED,
                    FlagKind.SAME_LEVEL_THROUGHOUT));
            assertThat(after).isEmpty();
        });
    }

    private static List<FlagKind> kindsOfLast(List<TestFlags> tests) {
        return new ArrayList<>(
                tests.getLast().flags().stream().map(ValidityFlag::kind).toList());
    }

    private static Audiogram exchanged(Audiogram test) {
        Audiogram exchanged = test;
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                exchanged = exchanged.with(ear, frequency, test.threshold(ear.other(), frequency));
            }
        }
        return exchanged;
    }

    private static Decision exchanged(Decision decision) {
        return new Decision(
                exchanged(decision.ears()),
                decision.testDate(),
                decision.kind(),
                decision.decidedOn(),
                decision.by(),
                decision.reason());
    }

    private static Ears exchanged(Ears ears) {
        return switch (ears) {
            case LEFT -> Ears.RIGHT;
            case RIGHT -> Ears.LEFT;
            case BOTH -> Ears.BOTH;
        };
    }
}
