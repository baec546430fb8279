package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.aging.AgeAllowance;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.baseline.BaselineRevisionRule;
import org.thresholdregister.core.baseline.BaselineTimeline;
import org.thresholdregister.core.baseline.BaselineTimeline.Standing;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.decision.TestDecisions;
import org.thresholdregister.core.followup.Deadlines;
import org.thresholdregister.core.judging.Determination.DueDates;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Determination.Resolution;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * Judges one worker's tests, ear by ear and in order, by 29 CFR 1910.95(g) and 1904.10: baseline, age allowance,
 * standard threshold shift, retest, recordability and dates. The same history and options always give the same
 * judgement, in whatever order the history lists its parts.
 */
public final class Judge {

    private final WorkerHistory history;
    private final JudgingOptions options;
    private final List<Decision> decisions;
    private final List<Audiogram> tests;
    private final PerEar<BaselineTimeline> timelines;
    private final PerEar<List<Decision>> chosenBaselines;
    private final PerEar<Optional<BaselineRevisionRule>> revisionRules;
    private final List<BaselineChange> proposals = new ArrayList<>();
    private final List<TestEntry> entries = new ArrayList<>();

    private Judge(WorkerHistory history, JudgingOptions options) {
        this.history = history;
        this.options = options;
        this.decisions = history.decisions().stream()
                .filter(decision -> !decision.decidedOn().isAfter(options.asOf()))
                .toList();
        List<Audiogram> judgedTests = history.audiograms().stream()
                .filter(test -> test.purpose().isJudged() && !test.date().isAfter(options.asOf()))
                .sorted(Audiogram.CHRONOLOGICAL)
                .toList();
        this.timelines = PerEar.from(ear -> new BaselineTimeline(validTests(ear, judgedTests)));
        this.chosenBaselines = PerEar.from(this::chosenBaselines);
        this.revisionRules = PerEar.from(this::revisionRule);
        this.tests = judgedTests.stream()
                .filter(test ->
                        timelines.left().holds(test) || timelines.right().holds(test))
                .toList();
    }

    public static WorkerJudgement judge(WorkerHistory history, JudgingOptions options) {
        if (options.baselineRevision() != BaselineRevision.PROPOSE) {
            return new Judge(history, options).judge();
        }
        WorkerJudgement asItIs = judge(history, options.withBaselineRevision(BaselineRevision.OFF));
        WorkerJudgement ifAccepted = judge(history, options.withBaselineRevision(BaselineRevision.APPLY));
        return new WorkerJudgement(asItIs.determinations(), asItIs.followUps(), ifAccepted.proposals());
    }

    private WorkerJudgement judge() {
        for (Audiogram test : tests) {
            moveToChosenBaselines(test);
            TestEntry entry = compare(test);
            entries.add(entry);
            reviseBaselines(entry);
        }
        RecordingJudge recordingJudge = new RecordingJudge(options, timelines, entries, this::decisionsOn, this::shift);
        List<Determination> determinations = new ArrayList<>();
        for (TestEntry entry : entries) {
            recordingJudge.advanceTo(entry);
            for (Ear ear : Ear.values()) {
                if (timelines.of(ear).holds(entry.test())) {
                    determinations.add(determine(entry, ear, recordingJudge));
                }
            }
        }
        return new WorkerJudgement(
                determinations,
                FollowUps.of(history.worker(), options.asOf(), tests, determinations, this::decisionsOn),
                List.copyOf(proposals));
    }

    private List<Audiogram> validTests(Ear ear, List<Audiogram> judgedTests) {
        return decisions.isEmpty()
                ? judgedTests
                : judgedTests.stream()
                        .filter(test -> !decisionsOn(Set.of(test.date()), ear).has(DecisionKind.INVALID_TEST))
                        .toList();
    }

    private List<Decision> chosenBaselines(Ear ear) {
        return decisions.stream()
                .filter(decision -> decision.kind() == DecisionKind.BASELINE
                        && decision.ears().include(ear))
                .sorted(Comparator.comparing(Decision::decidedOn).thenComparing(Decision::testDate))
                .toList();
    }

    private Optional<BaselineRevisionRule> revisionRule(Ear ear) {
        return options.baselineRevision() == BaselineRevision.APPLY
                ? timelines
                        .of(ear)
                        .firstBaseline()
                        .map(first -> new BaselineRevisionRule(
                                ear,
                                first,
                                (from, to) -> shift(ear, from, to).sum(),
                                to -> decisionsOn(Set.of(to.date()), ear).has(DecisionKind.BASELINE_KEPT)))
                : Optional.empty();
    }

    /** What a person chose before this test was made counts from it on. */
    private void moveToChosenBaselines(Audiogram test) {
        for (Ear ear : Ear.values()) {
            BaselineTimeline timeline = timelines.of(ear);
            if (!timeline.holds(test) || timeline.standing(test) != Standing.COMPARED) {
                continue;
            }
            for (Decision decision : chosenBaselines.of(ear)) {
                Audiogram from = timeline.baselineFor(test);
                // Of several tests on the day the last stands for it, as a retest does for its test.
                timeline.tests().stream()
                        .filter(chosen -> chosen.date().equals(decision.testDate()))
                        .reduce((earlier, later) -> later)
                        .map(to -> new BaselineChange(
                                ear,
                                BaselineChange.Kind.DECIDED,
                                from,
                                to,
                                to,
                                decision.decidedOn(),
                                List.of(to.date())))
                        .filter(change -> change.appliesTo(test)
                                && timeline.changes().stream().noneMatch(change::isSameDecision))
                        .ifPresent(change -> {
                            timeline.move(change);
                            revisionRules.of(ear).ifPresent(rule -> rule.startFrom(change.to()));
                        });
            }
        }
    }

    private void reviseBaselines(TestEntry entry) {
        if (entry.resolves().isPresent()) {
            return;
        }
        for (Ear ear : Ear.values()) {
            BaselineTimeline timeline = timelines.of(ear);
            if (entry.comparison(ear).isPresent()) {
                revisionRules.of(ear).ifPresent(rule -> {
                    for (BaselineChange proposal : rule.consider(entry.test(), timeline.tests())) {
                        timeline.move(proposal);
                        proposals.add(proposal);
                    }
                });
            }
        }
    }

    private TestEntry compare(Audiogram test) {
        TestEntry opening = null;
        for (TestEntry earlier : entries) {
            if (earlier.windowHolds(test) && earlier.opensWindow()) {
                opening = earlier;
            }
        }
        TestEntry entry = new TestEntry(test, opening);
        for (Ear ear : Ear.values()) {
            BaselineTimeline timeline = timelines.of(ear);
            if (timeline.holds(test) && timeline.standing(test) == Standing.COMPARED) {
                // A retest answers the question of the test that it may replace, and so on that test's baseline.
                Audiogram asked = opening != null && opening.comparison(ear).isPresent() ? opening.test() : test;
                entry.compare(shift(ear, timeline.baselineFor(asked), test));
            }
        }
        return entry;
    }

    private Determination determine(TestEntry entry, Ear ear, RecordingJudge recordingJudge) {
        return switch (timelines.of(ear).standing(entry.test())) {
            case BEFORE_BASELINE -> new Determination.BeforeBaseline(entry.test(), ear);
            case IS_BASELINE -> new Determination.BaselineTest(entry.test(), ear);
            case COMPARED -> {
                ThresholdShift comparison = entry.comparison(ear).orElseThrow();
                Optional<TestEntry> resolved = entry.resolves()
                        .filter(opening -> opening.comparison(ear).isPresent());
                yield resolved.isPresent()
                        ? new Determination.Retest(
                                entry.test(), ear, resolved.get().test(), comparison)
                        : judgeByItself(entry, ear, comparison, recordingJudge);
            }
        };
    }

    private Judged judgeByItself(TestEntry entry, Ear ear, ThresholdShift comparison, RecordingJudge recordingJudge) {
        Optional<ThresholdShift> retest = entry.resolvingRetest(ear);
        Resolution resolution =
                retest.<Resolution>map(Resolution.ByRetest::new).orElseGet(Resolution.ByTestItself::new);
        Outcome outcome = outcome(entry.test().date(), comparison.isStandardThresholdShift(), retest);
        Recording recording = recordingJudge.judge(entry, ear, outcome);
        return new Judged(
                entry.test(),
                ear,
                comparison,
                resolution,
                outcome,
                recording,
                dueDates(entry.test(), outcome, retest, recording));
    }

    private Outcome outcome(LocalDate testDate, Answer own, Optional<ThresholdShift> retest) {
        if (retest.isPresent()) {
            boolean confirms = retest.get().isStandardThresholdShift() == Answer.YES;
            return confirms ? Outcome.CONFIRMED : own == Answer.YES ? Outcome.NOT_CONFIRMED : Outcome.NO_SHIFT;
        }
        return switch (own) {
            case YES ->
                options.asOf().isAfter(Deadlines.lastRetestDay(testDate)) ? Outcome.CONFIRMED : Outcome.AWAITING_RETEST;
            case NO -> Outcome.NO_SHIFT;
            case UNDECIDED -> Outcome.UNDECIDED;
        };
    }

    private static DueDates dueDates(
            Audiogram test, Outcome outcome, Optional<ThresholdShift> retest, Recording recording) {
        LocalDate settledOn = retest.map(shift -> shift.later().date()).orElse(test.date());
        boolean retestMaySettle =
                outcome == Outcome.AWAITING_RETEST || recording.answer() == Recordability.AWAITING_RETEST;
        return new DueDates(
                retestMaySettle ? Optional.of(Deadlines.lastRetestDay(test.date())) : Optional.empty(),
                outcome == Outcome.AWAITING_RETEST || outcome == Outcome.CONFIRMED
                        ? Optional.of(Deadlines.noticeBy(settledOn))
                        : Optional.empty(),
                recording.answer() == Recordability.YES
                        ? recording.comparison().map(comparison -> recordBy(test, comparison.decidingTest()))
                        : Optional.empty());
    }

    private static LocalDate recordBy(Audiogram test, Audiogram decidingTest) {
        return decidingTest.equals(test)
                ? Deadlines.recordWithoutRetestBy(test.date())
                : Deadlines.recordAfterRetestBy(decidingTest.date());
    }

    private ThresholdShift shift(Ear ear, Audiogram earlier, Audiogram later) {
        WorkerFacts worker = history.worker();
        return ThresholdShift.between(
                ear,
                earlier,
                later,
                AgeAllowance.between(
                        options.ageCorrection(), worker.birthDate(), worker.sex(), earlier.date(), later.date()));
    }

    private TestDecisions decisionsOn(Set<LocalDate> days, Ear ear) {
        return decisions.isEmpty()
                ? TestDecisions.NONE
                : new TestDecisions(decisions.stream()
                        .filter(decision -> days.contains(decision.testDate())
                                && decision.ears().include(ear))
                        .toList());
    }
}
