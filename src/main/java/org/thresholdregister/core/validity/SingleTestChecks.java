package org.thresholdregister.core.validity;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.QuietRule;

/** What a test says about itself, and what its conditions say about it. */
final class SingleTestChecks {

    /** 29 CFR 1910.95(h)(1). */
    private static final List<Frequency> REQUIRED = List.of(
            Frequency.HZ_500,
            Frequency.HZ_1000,
            Frequency.HZ_2000,
            Frequency.HZ_3000,
            Frequency.HZ_4000,
            Frequency.HZ_6000);

    /** A second reading further from the first than one step of 5 dB: test the ear again. */
    private static final int REPEAT_DIFFERS_FROM_DB = 6;

    /** Further than two steps: nothing of this ear can be relied on. */
    private static final int REPEAT_UNRELIABLE_FROM_DB = 11;

    private final Audiogram test;
    private final TestConditions conditions;
    private final List<ValidityFlag> flags = new ArrayList<>();

    private SingleTestChecks(Audiogram test, TestConditions conditions) {
        this.test = test;
        this.conditions = conditions;
    }

    /** @param servesAsBaseline whether it is a baseline, whatever purpose it was made for */
    static List<ValidityFlag> of(
            Audiogram test, TestConditions conditions, QuietRule quietTime, boolean servesAsBaseline) {
        SingleTestChecks checks = new SingleTestChecks(test, conditions);
        if (quietTime.appliesBefore(test.purpose()) || servesAsBaseline) {
            checks.quietTime(quietTime);
        }
        conditions.equipment().forEach(doubt -> checks.flags.add(new ValidityFlag.Equipment(doubt)));
        for (Ear ear : Ear.values()) {
            if (test.purpose().isJudged()) {
                checks.requiredFrequencies(ear);
            }
            checks.repeat(ear);
            checks.masking(ear);
            checks.noResponseThroughout(ear);
            checks.sameLevelThroughout(ear);
            checks.step(ear);
        }
        return checks.flags;
    }

    private void quietTime(QuietRule rule) {
        if (rule.protectorsMayStandIn() && conditions.protectorsStoodIn()) {
            return;
        }
        if (conditions.hoursSinceNoise().isEmpty()) {
            flags.add(new ValidityFlag.QuietTimeNotOnRecord(rule));
        } else if (!rule.isKept(conditions.hoursSinceNoise().get())) {
            flags.add(new ValidityFlag.QuietTimeShort(
                    conditions.hoursSinceNoise().get(), conditions.protectorsStoodIn(), rule));
        }
    }

    private void requiredFrequencies(Ear ear) {
        List<Frequency> missing = required(
                ear,
                threshold -> threshold instanceof Threshold.NotTested notTested
                        && notTested.reason() != Threshold.NotTested.Reason.COULD_NOT_TEST);
        if (!missing.isEmpty()) {
            flags.add(new ValidityFlag.FrequenciesMissing(ear, missing));
        }
        List<Frequency> couldNot = required(
                ear,
                threshold -> threshold instanceof Threshold.NotTested notTested
                        && notTested.reason() == Threshold.NotTested.Reason.COULD_NOT_TEST);
        if (!couldNot.isEmpty()) {
            flags.add(new ValidityFlag.CouldNotBeTested(ear, couldNot));
        }
    }

    private List<Frequency> required(Ear ear, Predicate<Threshold> wanted) {
        return REQUIRED.stream()
                .filter(frequency -> wanted.test(test.threshold(ear, frequency)))
                .toList();
    }

    private void repeat(Ear ear) {
        Threshold first = test.threshold(ear, Frequency.HZ_1000);
        Threshold second = conditions.repeatAt1000Hz().of(ear);
        if (differByAtLeast(REPEAT_DIFFERS_FROM_DB, first, second)) {
            flags.add(new ValidityFlag.RepeatDiffers(
                    ear, first, second, differByAtLeast(REPEAT_UNRELIABLE_FROM_DB, first, second)));
        }
    }

    private static boolean differByAtLeast(int decibels, Threshold one, Threshold other) {
        DecibelRange difference = one.range().minus(other.range());
        DecibelRange reverse = other.range().minus(one.range());
        return difference.isAtLeast(decibels) == Answer.YES || reverse.isAtLeast(decibels) == Answer.YES;
    }

    /** @param ear the ear that may be the worse one */
    private void masking(Ear ear) {
        List<EarDifference> at = new ArrayList<>();
        for (Frequency frequency : Frequency.values()) {
            Threshold worse = test.threshold(ear, frequency);
            Threshold better = test.threshold(ear.other(), frequency);
            if (worse.range()
                            .minus(better.range())
                            .isAtLeast(conditions.transducer().crossHearingFromDecibels())
                    == Answer.YES) {
                at.add(new EarDifference(frequency, worse, better));
            }
        }
        if (!at.isEmpty()) {
            flags.add(new ValidityFlag.MaskingCalledFor(ear, conditions.transducer(), List.copyOf(at)));
        }
    }

    private void noResponseThroughout(Ear ear) {
        List<Frequency> tested = tested(ear);
        if (tested.size() >= REQUIRED.size()
                && tested.stream()
                        .allMatch(frequency -> test.threshold(ear, frequency) instanceof Threshold.NoResponse)) {
            flags.add(new ValidityFlag.NoResponseThroughout(ear, tested));
        }
    }

    private void sameLevelThroughout(Ear ear) {
        List<Frequency> tested = tested(ear);
        if (tested.size() < REQUIRED.size()) {
            return;
        }
        Threshold level = test.threshold(ear, tested.getFirst());
        if (level instanceof Threshold.Measured
                && tested.stream()
                        .allMatch(frequency -> test.threshold(ear, frequency).equals(level))) {
            flags.add(new ValidityFlag.SameLevelThroughout(ear, level, tested));
        }
    }

    private List<Frequency> tested(Ear ear) {
        return List.of(Frequency.values()).stream()
                .filter(frequency -> !(test.threshold(ear, frequency) instanceof Threshold.NotTested))
                .toList();
    }

    /** A test most of whose levels are off the step was made in finer steps, and there is nothing to say. */
    private void step(Ear ear) {
        int on = 0;
        int off = 0;
        for (Ear any : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                if (test.threshold(any, frequency) instanceof Threshold.Measured measured) {
                    if (isOnStep(measured)) {
                        on++;
                    } else {
                        off++;
                    }
                }
            }
        }
        List<Frequency> offThisEar = List.of(Frequency.values()).stream()
                .filter(frequency ->
                        test.threshold(ear, frequency) instanceof Threshold.Measured measured && !isOnStep(measured))
                .toList();
        if (on > off && !offThisEar.isEmpty()) {
            flags.add(new ValidityFlag.OffTheStep(ear, offThisEar));
        }
    }

    private static boolean isOnStep(Threshold.Measured measured) {
        return measured.level().decibels() % Threshold.STEP_DB == 0;
    }
}
