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
import org.thresholdregister.core.judging.Determination.DueDates;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Determination.Resolution;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.Finding;
import org.thresholdregister.core.rules.Reference;
import org.thresholdregister.core.rules.RetestRule;
import org.thresholdregister.core.rules.RuleReader;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.TestSeen;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * Judges one worker's tests, ear by ear and in order, by a {@link RuleSet}: baseline, age allowance, shift, retest,
 * recordability, dates, and the rules that are read beside. The same history and options always give the same
 * judgement, in whatever order the history lists its parts.
 */
public final class Judge {

    private final WorkerHistory history;
    private final JudgingOptions options;
    private final RuleSet ruleSet;
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
        this.ruleSet = options.ruleSet();
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
        return new WorkerJudgement(
                asItIs.determinations(), asItIs.findings(), asItIs.followUps(), ifAccepted.proposals());
    }

    private WorkerJudgement judge() {
        for (Audiogram test : tests) {
            moveToChosenBaselines(test);
            TestEntry entry = compare(test);
            entries.add(entry);
            reviseBaselines(entry);
        }
        DecisionLookup decided = (days, ear) -> decisions.isEmpty() ? TestDecisions.NONE : decisionsOn(days.get(), ear);
        RecordingJudge recordingJudge = new RecordingJudge(options, timelines, entries, decided, this::shift);
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
                findings(),
                FollowUps.of(history.worker(), options, tests, determinations, decided),
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
                                ruleSet.revision(),
                                ruleSet.retest().map(RetestRule::days).orElse(0),
                                (from, to) -> shift(ear, from, to).isShift(),
                                to -> decisionsOn(Set.of(to.date()), ear).has(DecisionKind.BASELINE_KEPT)))
                : Optional.empty();
    }

    /** What a person chose before this test was made counts from it on. */
    private void moveToChosenBaselines(Audiogram test) {
        for (Ear ear : Ear.values()) {
            BaselineTimeline timeline = timelines.of(ear);
            if (!timeline.holds(test) || timeline.standing(test) != Standing.COMPARED || !comparesWithBaseline()) {
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

    private boolean comparesWithBaseline() {
        return ruleSet.shift().reference() instanceof Reference.Baseline;
    }

    private TestEntry compare(Audiogram test) {
        TestEntry opening = null;
        for (TestEntry earlier : entries) {
            if (earlier.windowHolds(test) && earlier.opensWindow()) {
                opening = earlier;
            }
        }
        TestEntry entry = new TestEntry(test, ruleSet.retest(), opening);
        for (Ear ear : Ear.values()) {
            if (timelines.of(ear).holds(test)) {
                // A retest answers the question of the test that it may replace, and so on that test's baseline.
                Audiogram asked = opening != null && opening.comparison(ear).isPresent() ? opening.test() : test;
                reference(ear, test, asked).ifPresent(earlier -> entry.compare(shift(ear, earlier, test)));
            }
        }
        return entry;
    }

    /** The earlier test that an ear is compared with, if any. */
    private Optional<Audiogram> reference(Ear ear, Audiogram test, Audiogram asked) {
        BaselineTimeline timeline = timelines.of(ear);
        return switch (ruleSet.shift().reference()) {
            case Reference.Baseline ignored ->
                timeline.standing(test) == Standing.COMPARED
                        ? Optional.of(timeline.baselineFor(asked))
                        : Optional.empty();
            case Reference.LatestWithin recent ->
                timeline.tests().stream()
                        .filter(earlier -> Audiogram.CHRONOLOGICAL.compare(earlier, test) < 0
                                && !earlier.date().isBefore(test.date().minusYears(recent.years())))
                        .reduce((earlier, later) -> later);
        };
    }

    private Determination determine(TestEntry entry, Ear ear, RecordingJudge recordingJudge) {
        Optional<ThresholdShift> comparison = entry.comparison(ear);
        if (comparison.isEmpty()) {
            return comparesWithBaseline() && timelines.of(ear).standing(entry.test()) == Standing.BEFORE_BASELINE
                    ? new Determination.BeforeBaseline(entry.test(), ear, ruleSet)
                    : new Determination.BaselineTest(entry.test(), ear, ruleSet);
        }
        Optional<TestEntry> resolved =
                entry.resolves().filter(opening -> opening.comparison(ear).isPresent());
        return resolved.isPresent()
                ? new Determination.Retest(
                        entry.test(), ear, ruleSet, resolved.get().test(), comparison.get())
                : judgeByItself(entry, ear, comparison.get(), recordingJudge);
    }

    private Judged judgeByItself(TestEntry entry, Ear ear, ThresholdShift comparison, RecordingJudge recordingJudge) {
        Settled settled = settled(entry, ear, comparison);
        Recording recording = recordingJudge.judge(entry, ear, settled.outcome());
        return new Judged(
                entry.test(),
                ear,
                ruleSet,
                comparison,
                settled.resolution(),
                settled.outcome(),
                recording,
                dueDates(entry.test(), settled, recording));
    }

    /** What became of the question that a test of an ear asks, how, and on which day. */
    private record Settled(Outcome outcome, Resolution resolution, LocalDate on) {}

    private Settled settled(TestEntry entry, Ear ear, ThresholdShift comparison) {
        boolean mustConfirm = ruleSet.retest()
                .filter(retest -> retest.effect() == RetestRule.Effect.MUST_CONFIRM)
                .isPresent();
        return mustConfirm ? confirmedOrNot(entry, ear, comparison) : replacedOrNot(entry, ear, comparison);
    }

    /** A retest may take the test's place; without one the test stands. */
    private Settled replacedOrNot(TestEntry entry, Ear ear, ThresholdShift comparison) {
        Optional<ThresholdShift> retest = entry.resolvingRetest(ear);
        Outcome outcome = Outcome.of(
                comparison.isShift(),
                retest.map(ThresholdShift::isShift).orElse(Answer.UNDECIDED),
                mayBeRetested(entry.test()));
        return retest.isPresent()
                ? new Settled(
                        outcome,
                        new Resolution.ByRetest(retest.get()),
                        retest.get().later().date())
                : new Settled(
                        outcome, new Resolution.ByTestItself(), entry.test().date());
    }

    private boolean mayBeRetested(Audiogram test) {
        return ruleSet.retest()
                .filter(retest -> !options.asOf().isAfter(retest.lastDay(test.date())))
                .isPresent();
    }

    /** Two tests running have to show the shift at the same frequency of the ear. */
    private Settled confirmedOrNot(TestEntry entry, Ear ear, ThresholdShift comparison) {
        LocalDate testDate = entry.test().date();
        Answer own = comparison.isShift();
        if (own != Answer.YES) {
            return new Settled(
                    own == Answer.NO ? Outcome.NO_SHIFT : Outcome.UNDECIDED, new Resolution.ByTestItself(), testDate);
        }
        List<ThresholdShift> compared = entries.stream()
                .flatMap(other -> other.comparison(ear).stream())
                .toList();
        int at = compared.indexOf(comparison);
        Optional<ThresholdShift> before = at > 0 ? Optional.of(compared.get(at - 1)) : Optional.empty();
        Optional<ThresholdShift> after =
                at + 1 < compared.size() ? Optional.of(compared.get(at + 1)) : Optional.empty();
        Answer byBefore = before.map(comparison::isShiftTogetherWith).orElse(Answer.NO);
        if (byBefore == Answer.YES) {
            return new Settled(Outcome.CONFIRMED, new Resolution.BySecondTest(before.orElseThrow()), testDate);
        }
        if (after.isEmpty()) {
            return new Settled(
                    byBefore == Answer.NO ? Outcome.AWAITING_RETEST : Outcome.UNDECIDED,
                    new Resolution.ByTestItself(),
                    testDate);
        }
        return new Settled(
                switch (byBefore.or(comparison.isShiftTogetherWith(after.get()))) {
                    case YES -> Outcome.CONFIRMED;
                    case NO -> Outcome.NOT_CONFIRMED;
                    case UNDECIDED -> Outcome.UNDECIDED;
                },
                new Resolution.BySecondTest(after.get()),
                after.get().later().date());
    }

    private DueDates dueDates(Audiogram test, Settled settled, Recording recording) {
        boolean retestMaySettle =
                settled.outcome() == Outcome.AWAITING_RETEST || recording.answer() == Recordability.AWAITING_RETEST;
        return new DueDates(
                retestMaySettle ? ruleSet.retest().map(retest -> retest.lastDay(test.date())) : Optional.empty(),
                ruleSet.notice()
                        .filter(notice -> settled.outcome().isToldWhere(notice.occasion()))
                        .map(notice -> notice.deadline().after(settled.on(), options.holidays())),
                recording.answer() == Recordability.YES
                        ? recording.comparison().map(comparison -> recordBy(test, comparison.decidingTest()))
                        : Optional.empty());
    }

    private LocalDate recordBy(Audiogram test, Audiogram decidingTest) {
        return ruleSet.recording().deadline(!decidingTest.equals(test)).after(decidingTest.date(), options.holidays());
    }

    /** What the rules that are read beside the shift say of each test. */
    private List<Finding> findings() {
        if (ruleSet.furtherRules().isEmpty()) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        for (TestEntry entry : entries) {
            PerEar<Optional<Audiogram>> baselines =
                    PerEar.from(ear -> timelines.of(ear).holds(entry.test())
                                    && timelines.of(ear).standing(entry.test()) == Standing.COMPARED
                            ? Optional.of(timelines.of(ear).baselineFor(entry.test()))
                            : Optional.empty());
            PerEar<List<Audiogram>> earlier = PerEar.from(ear -> timelines.of(ear).tests().stream()
                    .filter(test -> Audiogram.CHRONOLOGICAL.compare(test, entry.test()) < 0)
                    .toList());
            WorkerFacts worker = history.worker();
            findings.addAll(RuleReader.read(
                    ruleSet.furtherRules(),
                    new TestSeen(entry.test(), baselines, earlier, worker.birthDate(), worker.sex())));
        }
        return List.copyOf(findings);
    }

    private ThresholdShift shift(Ear ear, Audiogram earlier, Audiogram later) {
        WorkerFacts worker = history.worker();
        return ThresholdShift.between(
                ear,
                earlier,
                later,
                AgeAllowance.between(
                        options.ageTables(), worker.birthDate(), worker.sex(), earlier.date(), later.date()),
                ruleSet.shift().criterion());
    }

    private TestDecisions decisionsOn(Set<LocalDate> days, Ear ear) {
        return new TestDecisions(decisions.stream()
                .filter(decision ->
                        days.contains(decision.testDate()) && decision.ears().include(ear))
                .toList());
    }
}
