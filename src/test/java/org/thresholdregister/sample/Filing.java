package org.thresholdregister.sample;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.recording.Recordability;

/**
 * What the plant did about the shifts and cases that the rule engine finds: a written notice of a confirmed shift, and
 * for a case an entry on the log or a physician's finding that work had no part in it. Nearly all of it is done in time;
 * a few are forgotten.
 */
final class Filing {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 24);

    /** From here on some things are still on somebody's desk. */
    private static final LocalDate BACKLOG_FROM = LocalDate.of(2026, 6, 1);

    private static final double FORGOTTEN = 0.2;

    private static final List<String> MEDICAL_CAUSES = List.of(
            "middle-ear disease, under treatment by an ear specialist",
            "sudden loss after a viral illness, seen by an ear specialist",
            "loss from a skull injury away from work");

    private final Worker worker;
    private final Dice dice;

    Filing(Worker worker) {
        this.worker = worker;
        this.dice = Dice.of(worker.number, "filing");
    }

    void file() {
        Optional<LocalDate> next = nextDay(LocalDate.MIN);
        while (next.isPresent()) {
            LocalDate day = next.get();
            giveNotice(onDay(day).filter(Filing::isConfirmed).toList());
            settleCases(onDay(day).filter(Filing::isOpenCase).toList());
            next = nextDay(day);
        }
    }

    private static boolean isConfirmed(Judged judged) {
        return judged.outcome() == Outcome.CONFIRMED;
    }

    /** A case may be due even where a revised baseline shows no shift any more. */
    private static boolean isOpenCase(Judged judged) {
        return judged.recording().answer() == Recordability.YES
                && judged.recording().entry().isEmpty();
    }

    private Optional<LocalDate> nextDay(LocalDate after) {
        return judged().filter(judged -> isConfirmed(judged) || isOpenCase(judged))
                .map(judged -> judged.test().date())
                .filter(day -> day.isAfter(after))
                .findFirst();
    }

    private Stream<Judged> onDay(LocalDate day) {
        return judged().filter(judged -> judged.test().date().equals(day));
    }

    /** The tests as the engine judges them in the light of the decisions made so far, in order. */
    private Stream<Judged> judged() {
        List<Audiogram> audiograms =
                worker.tests.stream().map(HearingTest::audiogram).toList();
        WorkerHistory history = new WorkerHistory(worker.facts(), audiograms, worker.decisions);
        return Judge.judge(history, JudgingOptions.asOf(TODAY)).determinations().stream()
                .filter(Judged.class::isInstance)
                .map(Judged.class::cast);
    }

    private void giveNotice(List<Judged> shifts) {
        if (shifts.isEmpty()) {
            return;
        }
        LocalDate settled = settledOn(shifts);
        boolean forgotten = isForgotten(settled);
        int days = dice.chance(0.95) ? dice.between(2, 20) : dice.between(22, 40);
        if (!forgotten) {
            decide(shifts, DecisionKind.NOTICE_GIVEN, settled.plusDays(days), Plant.NURSE, "");
        }
    }

    private void settleCases(List<Judged> cases) {
        if (cases.isEmpty() || worker.isCaseLeftOpen()) {
            return;
        }
        LocalDate settled = settledOn(cases);
        Optional<Decision> earlier = earlierFinding(cases);
        if (earlier.isPresent()) {
            String reason = "as found on " + earlier.get().decidedOn() + ", nothing new";
            decide(cases, DecisionKind.NOT_WORK_RELATED, settled.plusDays(6), Plant.PHYSICIAN, reason);
        } else if (dice.chance(0.04)) {
            decide(
                    cases,
                    DecisionKind.NOT_WORK_RELATED,
                    settled.plusDays(6),
                    Plant.PHYSICIAN,
                    Dice.of(worker.number, "cause").pick(MEDICAL_CAUSES));
        } else if (!isForgotten(settled)) {
            boolean retested =
                    cases.stream().anyMatch(judged -> !judged.settledBy().equals(judged.test()));
            int days = retested ? dice.between(1, 7) : dice.between(8, 30);
            decide(cases, DecisionKind.RECORDED, settled.plusDays(days), Plant.SAFETY_OFFICER, "");
        }
    }

    private boolean isForgotten(LocalDate settled) {
        return dice.chance(FORGOTTEN) && !settled.isBefore(BACKLOG_FROM);
    }

    /** The finding that this ear's loss is not work-related, where all the ears concerned have one. */
    private Optional<Decision> earlierFinding(List<Judged> cases) {
        return worker.decisions.stream()
                .filter(decision -> decision.kind() == DecisionKind.NOT_WORK_RELATED
                        && cases.stream().allMatch(judged -> decision.ears().include(judged.ear())))
                .findFirst();
    }

    private static LocalDate settledOn(List<Judged> shifts) {
        return shifts.stream()
                .map(judged -> judged.settledBy().date())
                .max(LocalDate::compareTo)
                .orElseThrow();
    }

    private void decide(List<Judged> shifts, DecisionKind kind, LocalDate day, String by, String reason) {
        LocalDate on = Plant.workingDayUpTo(day);
        if (!on.isAfter(Plant.LAST_DAY)) {
            worker.decided(earsOf(shifts), shifts.getFirst().test().date(), kind, on, by, reason);
        }
    }

    private static Ears earsOf(List<Judged> shifts) {
        Set<Ear> ears = EnumSet.noneOf(Ear.class);
        shifts.forEach(judged -> ears.add(judged.ear()));
        return ears.size() == 2 ? Ears.BOTH : Ears.of(shifts.getFirst().ear());
    }
}
