package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_DAY;
import static org.thresholdregister.core.columnar.Population.NO_TEST;
import static org.thresholdregister.core.columnar.WorkerTests.NONE;

import java.time.LocalDate;
import java.util.Arrays;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.decision.TestDecisions;
import org.thresholdregister.core.followup.Deadlines;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

/**
 * Judges one worker after the other on the columns themselves, by the steps of
 * {@link org.thresholdregister.core.judging.Judge}, for workers whose baseline stays where it is. For one thread.
 */
final class ColumnarWay {

    private static final Ear[] EARS = Ear.values();
    private static final FollowUpKind[] KINDS = FollowUpKind.values();

    private final WorkerColumns workers;
    private final Limits limits;
    private final int asOf;
    private final Answers answers;
    private final FollowUpColumns followUps;
    private final WorkerTests tests;
    private final WorkerDecisions decisions;

    /** For each ear, the test that recordability is measured from: the first baseline, then each case. */
    private final int[] references = new int[EARS.length];

    /** What is owed on one test, by kind; {@link Population#NO_DAY} where nothing is. */
    private final int[] dueDays = new int[KINDS.length];

    private final Ears[] dueEars = new Ears[KINDS.length];
    private boolean owesSomething;

    ColumnarWay(
            Population population, JudgingOptions options, Limits limits, Answers answers, FollowUpColumns followUps) {
        this.workers = population.workers();
        this.limits = limits;
        this.asOf = Math.toIntExact(options.asOf().toEpochDay());
        this.answers = answers;
        this.followUps = followUps;
        this.tests = new WorkerTests(population, options, limits);
        this.decisions = new WorkerDecisions(population, options);
        Arrays.fill(dueDays, NO_DAY);
    }

    /**
     * Judges a worker.
     *
     * @return false, with nothing done, where somebody chose another baseline or set a test aside
     */
    boolean judge(int worker) {
        decisions.load(worker);
        if (decisions.changeComparisons()) {
            return false;
        }
        tests.load(worker);
        Arrays.fill(references, tests.baseline());
        int firstFollowUp = followUps.size();
        for (int test = 0; test < tests.size(); test++) {
            for (int ear = 0; ear < EARS.length; ear++) {
                judge(test, ear);
            }
            addFollowUps(test);
        }
        addNextTest(worker);
        followUps.sortFrom(firstFollowUp);
        return true;
    }

    private void judge(int test, int ear) {
        int row = Answers.row(tests.number(test), ear);
        int baseline = tests.baseline();
        if (test < baseline) {
            answers.set(row, Outcome.BEFORE_BASELINE);
        } else if (test == baseline) {
            answers.set(row, Outcome.BASELINE);
        } else if (tests.resolved(test) != NONE) {
            answers.setCompared(row, Outcome.RETEST, tests.number(baseline));
        } else {
            judgeByItself(row, test, ear);
        }
    }

    private void judgeByItself(int row, int test, int ear) {
        int retest = tests.lastRetest(test);
        Answer answerOfRetest = retest == NONE ? Answer.UNDECIDED : tests.shift(retest, ear);
        int settling = answerOfRetest == Answer.UNDECIDED ? test : retest;
        Outcome outcome = Outcome.of(tests.shift(test, ear), answerOfRetest, isWindowOpen(test));
        // Only a shift that stands is asked whether it belongs on the log.
        int deciding = outcome == Outcome.CONFIRMED ? settling : NONE;
        int reference = references[ear];
        TestDecisions decided = decisionsAbout(test, deciding, ear);
        Recordability recordable =
                isNotWorkRelated(decided) ? Recordability.NO : recordability(outcome, deciding, reference, ear);
        if (recordable == Recordability.YES && !isLinedOut(decided)) {
            references[ear] = deciding;
        }
        answers.setJudged(
                row,
                outcome,
                tests.number(tests.baseline()),
                tests.number(settling),
                recordable,
                deciding == NONE ? NO_TEST : tests.number(deciding),
                deciding == NONE ? NO_TEST : tests.number(reference));
        owe(test, ear, outcome, settling, recordable, deciding, decided);
    }

    private boolean isWindowOpen(int test) {
        return asOf <= tests.day(test) + limits.retestDays();
    }

    private Recordability recordability(Outcome outcome, int deciding, int reference, int ear) {
        return switch (outcome) {
            case CONFIRMED -> ofStandingShift(deciding, reference, ear);
            case AWAITING_RETEST -> Recordability.AWAITING_RETEST;
            case UNDECIDED -> Recordability.UNDECIDED;
            case NO_SHIFT, NOT_CONFIRMED -> Recordability.NO;
            case BASELINE, BEFORE_BASELINE, RETEST ->
                throw new IllegalArgumentException("not judged by itself: " + outcome);
        };
    }

    private Recordability ofStandingShift(int deciding, int reference, int ear) {
        Answer shifted = tests.shift(reference, deciding, ear);
        boolean isLaterReference = reference != tests.baseline();
        if (isLaterReference && (shifted == Answer.NO || tests.day(deciding) <= tests.day(reference))) {
            return Recordability.ALREADY_RECORDED;
        }
        return Recordability.of(shifted.and(tests.levelReached(deciding, ear)));
    }

    /** A decision may name the test, any retest of it, or the test that settled the question of the log. */
    private TestDecisions decisionsAbout(int test, int deciding, int ear) {
        if (decisions.isEmpty()) {
            return TestDecisions.NONE;
        }
        return decisions.about(day -> isDayOf(day, test) || deciding != NONE && tests.day(deciding) == day, ear);
    }

    private boolean isDayOf(int day, int test) {
        if (day == tests.day(test)) {
            return true;
        }
        for (int retest = test + 1; retest <= tests.lastRetest(test); retest++) {
            if (tests.resolved(retest) == test && tests.day(retest) == day) {
                return true;
            }
        }
        return false;
    }

    private static boolean isNotWorkRelated(TestDecisions decided) {
        return decided.workRelatedness()
                .filter(decision -> decision.kind() == DecisionKind.NOT_WORK_RELATED)
                .isPresent();
    }

    /** An entry that was lined out holds no loss any more. */
    private static boolean isLinedOut(TestDecisions decided) {
        return decided.entry()
                .filter(decision -> decision.kind() == DecisionKind.LINED_OUT)
                .isPresent();
    }

    private void owe(
            int test,
            int ear,
            Outcome outcome,
            int settling,
            Recordability recordable,
            int deciding,
            TestDecisions decided) {
        if (outcome == Outcome.AWAITING_RETEST || recordable == Recordability.AWAITING_RETEST) {
            owe(FollowUpKind.RETEST, tests.day(test) + limits.retestDays(), ear);
        }
        if ((outcome == Outcome.AWAITING_RETEST || outcome == Outcome.CONFIRMED)
                && !decided.has(DecisionKind.NOTICE_GIVEN)) {
            owe(FollowUpKind.NOTICE, tests.day(settling) + limits.noticeDays(), ear);
        }
        if (recordable == Recordability.YES && decided.entry().isEmpty()) {
            int days = deciding == test ? limits.recordWithoutRetestDays() : limits.recordAfterRetestDays();
            owe(FollowUpKind.RECORD, tests.day(deciding) + days, ear);
        }
    }

    private void owe(FollowUpKind kind, int dueDay, int ear) {
        int i = kind.ordinal();
        owesSomething = true;
        if (dueDays[i] == NO_DAY) {
            dueDays[i] = dueDay;
            dueEars[i] = Ears.of(EARS[ear]);
        } else {
            dueDays[i] = Math.min(dueDays[i], dueDay);
            dueEars[i] = dueEars[i].and(EARS[ear]);
        }
    }

    private void addFollowUps(int test) {
        if (!owesSomething) {
            return;
        }
        for (FollowUpKind kind : KINDS) {
            int i = kind.ordinal();
            if (dueDays[i] != NO_DAY) {
                followUps.add(kind, dueDays[i], tests.day(test), dueEars[i]);
                dueDays[i] = NO_DAY;
            }
        }
        owesSomething = false;
    }

    private void addNextTest(int worker) {
        if (tests.size() > 0) {
            int last = tests.day(tests.size() - 1);
            addIfStillOwed(worker, FollowUpKind.ANNUAL_TEST, Deadlines.annualTestBy(LocalDate.ofEpochDay(last)), last);
        } else if (workers.enrolledFrom(worker) != NO_DAY) {
            LocalDate enrolledFrom = LocalDate.ofEpochDay(workers.enrolledFrom(worker));
            addIfStillOwed(worker, FollowUpKind.BASELINE_TEST, Deadlines.baselineTestBy(enrolledFrom), NO_DAY);
        }
    }

    /** A test is owed neither to someone who has left nor to someone who will have left when it falls due. */
    private void addIfStillOwed(int worker, FollowUpKind kind, LocalDate due, int testDay) {
        int dueDay = Math.toIntExact(due.toEpochDay());
        int endDay = workers.endDay(worker);
        if (endDay == NO_DAY || asOf <= endDay && dueDay <= endDay) {
            followUps.add(kind, dueDay, testDay, Ears.BOTH);
        }
    }
}
