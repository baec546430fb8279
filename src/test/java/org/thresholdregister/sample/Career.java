package org.thresholdregister.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.regulation.Answer;

/**
 * The ordinary story of a worker: a baseline, tests about a year apart, hearing that now and then changes, a nurse who
 * asks for a retest where a shift shows, and a supervisor who may revise a baseline. The nurse's arithmetic only
 * decides who comes back when; what the tests mean is for the rule engine to say.
 */
final class Career {

    private static final int STANDARD_SHIFT_SUM_DB = 30;
    private static final int IMPROVEMENT_SUM_DB = 15;
    private static final double LASTING_CHANGES_A_YEAR = 0.020;

    private final Worker worker;
    private final Dice dice;
    private final LocalDate lastDay;
    private final boolean punctual;
    private final List<EarRecord> ears = new ArrayList<>();

    /** What the nurse knows of one ear. */
    private static final class EarRecord {
        private final Ear ear;
        private Audiogram baseline;
        private @Nullable Audiogram firstShift;
        private @Nullable Audiogram firstImprovement;

        EarRecord(Ear ear, Audiogram baseline) {
            this.ear = ear;
            this.baseline = baseline;
        }
    }

    /** @param punctual no test is missed or much too late */
    Career(Worker worker, boolean punctual) {
        this.worker = worker;
        this.dice = Dice.of(worker.number, "career");
        this.lastDay = worker.left().filter(day -> day.isBefore(Plant.LAST_DAY)).orElse(Plant.LAST_DAY);
        this.punctual = punctual;
    }

    void live() {
        changeHearing();
        LocalDate first = Plant.openOn(worker.enrolled().plusDays(daysUntilBaseline()));
        if (first.isAfter(lastDay)) {
            return;
        }
        Audiogram baseline = worker.test(first, TestPurpose.BASELINE).audiogram();
        for (Ear ear : Ear.values()) {
            ears.add(new EarRecord(ear, baseline));
        }
        LocalDate latest = first;
        for (LocalDate next = nextAnnual(first); !next.isAfter(lastDay); next = nextAnnual(next)) {
            if (punctual || !dice.chance(0.03)) {
                periodicTest(next, TestPurpose.ANNUAL);
                latest = next;
            }
        }
        Optional<LocalDate> left = worker.left();
        if (left.isPresent() && latest.isBefore(left.get().minusDays(90)) && dice.chance(0.75)) {
            LocalDate exit = left.get().minusDays(dice.between(0, 10));
            if (!Plant.isClosed(exit)) {
                periodicTest(exit, TestPurpose.EXIT);
            }
        }
    }

    private void changeHearing() {
        LocalDate day = worker.enrolled();
        while (true) {
            day = day.plusDays((long) (-StrictMath.log(dice.between(0.001, 1.0)) / LASTING_CHANGES_A_YEAR * 365));
            if (day.isAfter(lastDay)) {
                return;
            }
            Ears which = dice.chance(0.55) ? Ears.BOTH : dice.chance(0.55) ? Ears.LEFT : Ears.RIGHT;
            worker.worsens(which, day, dice.between(10.0, 24.0));
        }
    }

    private int daysUntilBaseline() {
        boolean late = !punctual && worker.enrolled().getYear() < 2025 && dice.chance(0.04);
        return late ? dice.between(190, 320) : dice.chance(0.75) ? dice.between(4, 70) : dice.between(70, 165);
    }

    private LocalDate nextAnnual(LocalDate last) {
        int slip = punctual || dice.chance(0.72)
                ? dice.between(-34, -3)
                : dice.chance(0.8) ? dice.between(0, 21) : dice.between(22, 100);
        return Plant.openOn(last.plusDays(365L + slip));
    }

    private void periodicTest(LocalDate day, TestPurpose purpose) {
        Audiogram test = worker.test(day, purpose).audiogram();
        Audiogram ofRecord = test;
        if (showsShift(test)) {
            boolean known = ears.stream().anyMatch(ear -> ear.firstShift != null);
            LocalDate retestDay =
                    Plant.openOn(day.plusDays(dice.chance(0.04) ? dice.between(31, 55) : dice.between(4, 27)));
            if (dice.chance(known ? 0.5 : 0.88) && !retestDay.isAfter(lastDay)) {
                Audiogram retest = worker.test(retestDay, TestPurpose.RETEST).audiogram();
                ofRecord = retestDay.isAfter(day.plusDays(30)) ? test : retest;
            }
        }
        for (EarRecord ear : ears) {
            review(ear, ofRecord);
        }
    }

    private boolean showsShift(Audiogram test) {
        return ears.stream().anyMatch(ear -> showsShift(ear, test));
    }

    private boolean showsShift(EarRecord known, Audiogram test) {
        Audiogram baseline = known.baseline;
        Ear ear = known.ear;
        int allowance = AgeAllowance.sumDb(worker.sex(), worker.birthDate(), baseline.date(), test.date());
        DecibelRange shift = test.levelSum(ear).minus(baseline.levelSum(ear)).minus(DecibelRange.exactly(allowance));
        return shift.isAtLeast(STANDARD_SHIFT_SUM_DB) == Answer.YES;
    }

    /**
     * The supervisor's review of a test of record. A baseline moves to the second of two tests in a row that show
     * the change, at least six months apart, unless the first was the better one: then the supervisor waits for a third.
     */
    private void review(EarRecord known, Audiogram test) {
        Ear ear = known.ear;
        if (showsShift(known, test)) {
            if (known.firstShift == null) {
                known.firstShift = test;
            } else if (isSecond(ear, known.firstShift, test) && dice.chance(0.9)) {
                revise(known, test, "shift persistent on two yearly tests");
            }
            return;
        }
        known.firstShift = null;
        if (known.baseline.levelSum(ear).minus(test.levelSum(ear)).isAtLeast(IMPROVEMENT_SUM_DB) != Answer.YES) {
            known.firstImprovement = null;
        } else if (known.firstImprovement == null) {
            known.firstImprovement = test;
        } else if (isSecond(ear, known.firstImprovement, test) && dice.chance(0.5)) {
            revise(known, test, "better than the baseline on two yearly tests");
        }
    }

    private static boolean isSecond(Ear ear, Audiogram first, Audiogram second) {
        OptionalInt before = first.levelSum(ear).exact();
        OptionalInt now = second.levelSum(ear).exact();
        return !second.date().isBefore(first.date().plusMonths(6))
                && before.isPresent()
                && now.isPresent()
                && now.getAsInt() <= before.getAsInt();
    }

    private void revise(EarRecord known, Audiogram test, String reason) {
        LocalDate on = Plant.openOn(test.date().plusDays(dice.between(8, 30)));
        if (on.isAfter(Plant.LAST_DAY)) {
            return;
        }
        worker.decided(Ears.of(known.ear), test.date(), DecisionKind.BASELINE, on, Plant.AUDIOLOGIST, reason);
        known.baseline = test;
        known.firstShift = null;
        known.firstImprovement = null;
    }
}
