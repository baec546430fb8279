package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.baseline.BaselineTimeline;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.decision.TestDecisions;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.recording.Recording.Comparison;
import org.thresholdregister.core.recording.RecordingReference;
import org.thresholdregister.core.recording.RecordingReferences;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * Decides, test by test in order, whether each ear's shift is a case for the injury log, 29 CFR 1904.10, and keeps the
 * references that later tests are measured from. Each ear has its own (letters of 8 May 2003 and 9 September 2005).
 *
 * <p>While an ear's baseline has not moved, the question is asked of shifts that stand against the baseline. Once it
 * has, the shift from the recording reference is judged in its own right, since a baseline revised for a lasting shift
 * hides it: the reading of 29 CFR 1904.10(b)(2)(i) that loses no case.
 */
final class RecordingJudge {

    private final JudgingOptions options;
    private final PerEar<BaselineTimeline> timelines;
    private final List<TestEntry> entries;
    private final DecisionLookup decisions;
    private final ShiftMeasure measure;
    private final RecordingRule rule;
    private final PerEar<Optional<RecordingReferences>> references;
    private final PerEar<Set<RecordingReference>> reported = PerEar.from(ear -> new HashSet<>());
    private final Set<BaselineChange> seenChanges = new HashSet<>();

    RecordingJudge(
            JudgingOptions options,
            PerEar<BaselineTimeline> timelines,
            List<TestEntry> entries,
            DecisionLookup decisions,
            ShiftMeasure measure) {
        this.options = options;
        this.rule = options.ruleSet().recording();
        this.timelines = timelines;
        this.entries = entries;
        this.decisions = decisions;
        this.measure = measure;
        this.references = PerEar.from(ear -> timelines.of(ear).firstBaseline().map(RecordingReferences::new));
    }

    /** Takes in the baselines that were improved before this test. */
    void advanceTo(TestEntry entry) {
        for (Ear ear : Ear.values()) {
            for (BaselineChange change : timelines.of(ear).changes()) {
                if (change.isForBetterHearing() && change.appliesTo(entry.test()) && seenChanges.add(change)) {
                    referencesOf(ear).addImprovedBaseline(change.to());
                }
            }
        }
    }

    /** The answer for a test judged by itself; entries must come in order, after {@link #advanceTo}. */
    Recording judge(TestEntry entry, Ear ear, Outcome outcome) {
        if (rule instanceof RecordingRule.None) {
            return Recording.without(Recordability.NOT_ASKED);
        }
        Recording recording = options.baselineRevision() == BaselineRevision.APPLY
                        || timelines.of(ear).hasMovedFor(entry.test())
                ? inItsOwnRight(entry, ear, outcome)
                : byOutcome(entry, ear, outcome);
        Recording answer = afterDecisions(recording, decisions.on(() -> daysOf(entry, recording), ear));
        if (answer.answer() == Recordability.YES && !isLinedOut(answer)) {
            answer.comparison().ifPresent(comparison -> keepCase(ear, comparison));
        }
        return answer;
    }

    private void keepCase(Ear ear, Comparison comparison) {
        switch (rule) {
            case RecordingRule.ShiftAndLevel ignored -> referencesOf(ear).addCase(comparison.decidingTest());
            case RecordingRule.LargeShift ignored -> reported.of(ear).add(comparison.reference());
            case RecordingRule.None ignored -> throw new IllegalStateException("nothing is recorded");
        }
    }

    /** A decision may name the test, any retest of it, or the test that settled the question of the log. */
    private static Set<LocalDate> daysOf(TestEntry entry, Recording recording) {
        Set<LocalDate> days = entry.days();
        recording
                .comparison()
                .ifPresent(comparison -> days.add(comparison.decidingTest().date()));
        return days;
    }

    private Recording byOutcome(TestEntry entry, Ear ear, Outcome outcome) {
        return switch (outcome) {
            case CONFIRMED -> {
                Audiogram deciding =
                        entry.resolvingRetest(ear).map(ThresholdShift::later).orElse(entry.test());
                Comparison comparison = compare(ear, deciding);
                yield of(standing(ear, comparison), comparison);
            }
            case AWAITING_RETEST -> Recording.without(Recordability.AWAITING_RETEST);
            case UNDECIDED -> Recording.without(Recordability.UNDECIDED);
            case NO_SHIFT, NOT_CONFIRMED -> Recording.without(Recordability.NO);
            case BASELINE, BEFORE_BASELINE, RETEST ->
                throw new IllegalArgumentException("not judged by itself: " + outcome);
        };
    }

    private Recording inItsOwnRight(TestEntry entry, Ear ear, Outcome outcome) {
        if (outcome == Outcome.AWAITING_RETEST) {
            return Recording.without(Recordability.AWAITING_RETEST);
        }
        Comparison own = compare(ear, entry.test());
        boolean settledByRetest =
                outcome == Outcome.CONFIRMED && entry.resolvingRetest(ear).isPresent();
        Optional<Comparison> retest = retestFor(entry, ear)
                .map(later -> compare(ear, later))
                .filter(comparison -> settledByRetest || comparison.shifted() != Answer.UNDECIDED);
        Comparison deciding = retest.orElse(own);
        if (retest.isEmpty()
                && own.shifted() == Answer.YES
                && windowIsOpen(entry.test().date())) {
            return of(Recordability.AWAITING_RETEST, own);
        }
        if (deciding.shifted() == Answer.YES || outcome == Outcome.CONFIRMED) {
            return of(standing(ear, deciding), deciding);
        }
        if (outcome == Outcome.UNDECIDED && deciding.shifted() == Answer.UNDECIDED) {
            return of(Recordability.UNDECIDED, deciding);
        }
        return of(Recordability.of(deciding.shifted().and(deciding.levelReached())), deciding);
    }

    /**
     * The retest that settles the shift from the reference: the one that settled the shift from the baseline, or,
     * where the baseline showed none, the last one made within thirty days of a test that shows a shift from the
     * reference in either ear and before another such test.
     */
    private Optional<Audiogram> retestFor(TestEntry entry, Ear ear) {
        if (!entry.retests().isEmpty()) {
            return entry.countingRetest(ear).map(TestEntry::test);
        }
        if (!showsShiftFromReference(entry)) {
            return Optional.empty();
        }
        Optional<Audiogram> last = Optional.empty();
        for (TestEntry later : entries.subList(entries.indexOf(entry) + 1, entries.size())) {
            if (entry.windowHolds(later.test()) && later.resolves().isEmpty()) {
                last = timelines.of(ear).holds(later.test()) ? Optional.of(later.test()) : last;
            } else if (later.test().purpose() != TestPurpose.RETEST && showsShiftFromReference(later)) {
                return last;
            }
        }
        return last;
    }

    private boolean showsShiftFromReference(TestEntry entry) {
        for (Ear ear : Ear.values()) {
            if (entry.comparison(ear).isPresent() && compare(ear, entry.test()).shifted() == Answer.YES) {
                return true;
            }
        }
        return false;
    }

    /** A loss that was reported from this reference is not reported again. */
    private Recordability standing(Ear ear, Comparison comparison) {
        Recordability answer = comparison.forStandingShift();
        return answer == Recordability.YES && reported.of(ear).contains(comparison.reference())
                ? Recordability.ALREADY_RECORDED
                : answer;
    }

    private static Recording of(Recordability answer, Comparison comparison) {
        return new Recording(answer, Optional.of(comparison), Optional.empty(), Optional.empty());
    }

    private static Recording afterDecisions(Recording recording, TestDecisions decided) {
        Optional<Decision> workRelatedness = decided.workRelatedness();
        boolean notWorkRelated = workRelatedness
                .filter(decision -> decision.kind() == DecisionKind.NOT_WORK_RELATED)
                .isPresent();
        return new Recording(
                notWorkRelated ? Recordability.NO : recording.answer(),
                recording.comparison(),
                workRelatedness,
                decided.entry());
    }

    /** An entry that was lined out holds no loss any more, so that the same loss found again is a case of its own. */
    private static boolean isLinedOut(Recording recording) {
        return recording
                .entry()
                .filter(decision -> decision.kind() == DecisionKind.LINED_OUT)
                .isPresent();
    }

    private boolean windowIsOpen(LocalDate testDate) {
        return options.ruleSet()
                .retest()
                .filter(retest -> !options.asOf().isAfter(retest.lastDay(testDate)))
                .isPresent();
    }

    private Comparison compare(Ear ear, Audiogram deciding) {
        RecordingReference reference = referencesOf(ear).latest();
        return new Comparison(reference, measure.between(ear, reference.audiogram(), deciding), rule);
    }

    private RecordingReferences referencesOf(Ear ear) {
        return references
                .of(ear)
                .orElseThrow(() -> new IllegalStateException("an ear without a baseline has no recording reference"));
    }
}
