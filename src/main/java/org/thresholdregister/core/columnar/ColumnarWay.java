package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_DAY;
import static org.thresholdregister.core.columnar.Population.NO_TEST;
import static org.thresholdregister.core.columnar.WorkerTests.NONE;

import java.util.Arrays;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.decision.TestDecisions;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RecordingRule;

/**
 * Judges one worker after the other on the columns themselves, by the steps of
 * {@link org.thresholdregister.core.judging.Judge}, for workers whose baseline stays where it is. For one thread.
 */
final class ColumnarWay {

    private static final Ear[] EARS = Ear.values();
    private static final FollowUpKind[] KINDS = FollowUpKind.values();

    private final WorkerColumns workers;
    private final AppliedRules rules;
    private final int asOf;
    private final boolean appliesRevision;
    private final Answers answers;
    private final FollowUpColumns followUps;
    private final WorkerTests tests;
    private final WorkerDecisions decisions;

    /** For each ear, the test that recordability is measured from: the first baseline, then each case. */
    private final int[] references = new int[EARS.length];

    /** For each ear, whether a loss from the first baseline was reported, where that is reported once. */
    private final boolean[] reported = new boolean[EARS.length];

    /** What is owed on one test, by kind; {@link Population#NO_DAY} where nothing is. */
    private final int[] dueDays = new int[KINDS.length];

    private final Ears[] dueEars = new Ears[KINDS.length];
    private boolean owesSomething;

    ColumnarWay(
            Population population,
            JudgingOptions options,
            AppliedRules rules,
            Answers answers,
            FollowUpColumns followUps) {
        this.workers = population.workers();
        this.rules = rules;
        this.asOf = Math.toIntExact(options.asOf().toEpochDay());
        this.appliesRevision = options.baselineRevision() == BaselineRevision.APPLY;
        this.answers = answers;
        this.followUps = followUps;
        this.tests = new WorkerTests(population, options, rules);
        this.decisions = new WorkerDecisions(population, options);
        Arrays.fill(dueDays, NO_DAY);
    }

    /**
     * Judges a worker.
     *
     * @return false, with nothing done, where the baseline may move or somebody set a test aside
     */
    boolean judge(int worker) {
        decisions.load(worker);
        if (decisions.changeComparisons()) {
            return false;
        }
        tests.load(worker);
        if (appliesRevision && (!tests.showNoShift() || tests.mayRevise())) {
            return false;
        }
        Arrays.fill(references, tests.baseline());
        Arrays.fill(reported, false);
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

    /** Whether the worker who was judged last may get another baseline by revision. */
    boolean mayRevise() {
        return tests.mayRevise();
    }

    private void judge(int test, int ear) {
        int row = Answers.row(tests.number(test), ear);
        int baseline = tests.baseline();
        if (test < baseline) {
            answers.set(row, Outcome.BEFORE_BASELINE);
        } else if (test == baseline) {
            answers.set(row, Outcome.BASELINE);
        } else if (tests.resolved(test) != NONE) {
            answers.setCompared(row, Outcome.RETEST, tests.number(baseline), tests.shift(test, ear));
        } else {
            judgeByItself(row, test, ear);
        }
    }

    private void judgeByItself(int row, int test, int ear) {
        int retest = tests.countingRetest(test);
        Answer answerOfRetest = retest == NONE ? Answer.UNDECIDED : tests.shift(retest, ear);
        int settling = answerOfRetest == Answer.UNDECIDED ? test : retest;
        Outcome outcome = Outcome.of(tests.shift(test, ear), answerOfRetest, isWindowOpen(test));
        int deciding = decidingTest(test, outcome, settling);
        int reference = references[ear];
        TestDecisions decided = decisionsAbout(test, ear);
        Recordability recordable = recordability(outcome, deciding, reference, ear, decided);
        if (recordable == Recordability.YES && !isLinedOut(decided)) {
            keepCase(deciding, ear);
        }
        answers.setJudged(
                row,
                outcome,
                tests.number(tests.baseline()),
                tests.shift(test, ear),
                tests.number(settling),
                recordable,
                deciding == NONE ? NO_TEST : tests.number(deciding),
                deciding == NONE ? NO_TEST : tests.number(reference));
        owe(test, ear, outcome, settling, recordable, deciding, decided);
    }

    private boolean isWindowOpen(int test) {
        return asOf <= rules.lastRetestDay(tests.day(test));
    }

    /** The test that the question of the log is asked of: only a shift that stands has to answer it by itself. */
    private int decidingTest(int test, Outcome outcome, int settling) {
        if (rules.recording() instanceof RecordingRule.None) {
            return NONE;
        }
        return outcome == Outcome.CONFIRMED ? settling : appliesRevision ? test : NONE;
    }

    private Recordability recordability(Outcome outcome, int deciding, int reference, int ear, TestDecisions decided) {
        if (rules.recording() instanceof RecordingRule.None) {
            return Recordability.NOT_ASKED;
        }
        if (isNotWorkRelated(decided)) {
            return Recordability.NO;
        }
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
        Answer shifted = tests.caseShift(reference, deciding, ear);
        return switch (rules.recording()) {
            case RecordingRule.ShiftAndLevel ignored -> {
                boolean isHeld = reference != tests.baseline()
                        && (shifted == Answer.NO || tests.day(deciding) <= tests.day(reference));
                yield isHeld
                        ? Recordability.ALREADY_RECORDED
                        : Recordability.of(shifted.and(tests.caseLevel(deciding, ear)));
            }
            case RecordingRule.LargeShift ignored ->
                shifted == Answer.YES && reported[ear] ? Recordability.ALREADY_RECORDED : Recordability.of(shifted);
            case RecordingRule.None ignored -> Recordability.NOT_ASKED;
        };
    }

    private void keepCase(int deciding, int ear) {
        if (rules.recording() instanceof RecordingRule.LargeShift) {
            reported[ear] = true;
        } else {
            references[ear] = deciding;
        }
    }

    /** A decision may name the test or any retest of it. */
    private TestDecisions decisionsAbout(int test, int ear) {
        return decisions.isEmpty() ? TestDecisions.NONE : decisions.about(day -> isDayOf(day, test), ear);
    }

    private boolean isDayOf(int day, int test) {
        if (day == tests.day(test)) {
            return true;
        }
        for (int retest = test + 1; retest < tests.size() && tests.isInWindow(retest, test); retest++) {
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
            owe(FollowUpKind.RETEST, rules.lastRetestDay(tests.day(test)), ear);
        }
        int notifyBy = rules.notifyByDay(outcome, tests.day(settling));
        if (notifyBy != NO_DAY && !decided.has(DecisionKind.NOTICE_GIVEN)) {
            owe(FollowUpKind.NOTICE, notifyBy, ear);
        }
        if (recordable == Recordability.YES && decided.entry().isEmpty()) {
            owe(FollowUpKind.RECORD, rules.recordByDay(tests.day(deciding), deciding != test), ear);
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
            addIfStillOwed(worker, FollowUpKind.ANNUAL_TEST, rules.nextTestBy(tests.day(0), last), last);
        } else if (workers.enrolledFrom(worker) != NO_DAY) {
            int due = rules.baselineTestBy(workers.enrolledFrom(worker));
            addIfStillOwed(worker, FollowUpKind.BASELINE_TEST, due, NO_DAY);
        }
    }

    /** A test is owed neither to someone who has left nor to someone who will have left when it falls due. */
    private void addIfStillOwed(int worker, FollowUpKind kind, int dueDay, int testDay) {
        int endDay = workers.endDay(worker);
        if (endDay == NO_DAY || asOf <= endDay && dueDay <= endDay) {
            followUps.add(kind, dueDay, testDay, Ears.BOTH);
        }
    }
}
