package org.thresholdregister.core.caselife;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.recording.Recording.Comparison;

/**
 * All cases of one worker, lived through up to the day that the options name, whatever the order of the history.
 *
 * @param cases by the day of the test that opened each
 * @param withoutCase the decisions that name a test or an ear without a shift: kept, and shown as such
 */
public record WorkerCases(List<CaseLife> cases, List<WithoutCase> withoutCase) {

    /** A decision, and the ears that it names without a case. */
    public record WithoutCase(Decision decision, Ear ear) {}

    /** Why a decision is no move that is open. */
    public record Objection(Ear ear, Refusal why) {}

    public WorkerCases {
        cases = List.copyOf(cases);
        withoutCase = List.copyOf(withoutCase);
    }

    /** @param judgement of this history by these options */
    public static WorkerCases of(WorkerHistory history, WorkerJudgement judgement, JudgingOptions options) {
        return new Gathering(history, judgement, options).gather();
    }

    /** The case that a decision about the test of this day is about, the latest where there are several. */
    public Optional<CaseLife> about(LocalDate testDate) {
        return cases.stream()
                .filter(life -> Stream.of(Ear.values()).anyMatch(ear -> life.isNamedBy(testDate, ear)))
                .reduce((earlier, later) -> later);
    }

    /**
     * The ears to propose for such a decision: those for which it is owed, or else open, or else part of the case. A
     * decision about the test itself is proposed for both.
     */
    public Ears earsFor(DecisionKind kind, LocalDate testDate) {
        if (kind == DecisionKind.INVALID_TEST || CaseMove.madeBy(kind).isEmpty()) {
            return Ears.BOTH;
        }
        return about(testDate)
                .map(life -> life.nextMoves().stream()
                        .filter(next -> next instanceof NextMove.Open
                                && next.move().decision().filter(kind::equals).isPresent())
                        .map(NextMove::ears)
                        .findFirst()
                        .orElse(life.ears()))
                .orElse(Ears.BOTH);
    }

    /**
     * Why this decision, which is not on record yet, would be no legal move; empty where it is one, or is about a test
     * and no case. It is judged as of its own day, so that what was done then may be entered later.
     */
    public static Optional<Objection> objectionTo(Decision decision, WorkerHistory history, JudgingOptions options) {
        if (decision.kind() == DecisionKind.INVALID_TEST) {
            return setAsideAlready(decision, history);
        }
        if (CaseMove.madeBy(decision.kind()).isEmpty()) {
            return Optional.empty();
        }
        List<Decision> decisions = new ArrayList<>(history.decisions());
        decisions.add(decision);
        WorkerHistory with = new WorkerHistory(history.worker(), history.audiograms(), decisions);
        WorkerCases cases = of(with, Judge.judge(with, options), options);
        return Stream.of(Ear.values())
                .filter(decision.ears()::include)
                .flatMap(ear -> cases.refusal(decision, ear).map(why -> new Objection(ear, why)).stream())
                .findFirst();
    }

    private static Optional<Objection> setAsideAlready(Decision decision, WorkerHistory history) {
        return Stream.of(Ear.values())
                .filter(decision.ears()::include)
                .filter(ear -> history.decisions().stream()
                        .anyMatch(earlier -> earlier.kind() == DecisionKind.INVALID_TEST
                                && earlier.testDate().equals(decision.testDate())
                                && earlier.ears().include(ear)))
                .map(ear -> new Objection(ear, Refusal.TEST_SET_ASIDE))
                .findFirst();
    }

    /** A decision may be about two cases, where a retest answers one and opens another: being open to one is enough. */
    private Optional<Refusal> refusal(Decision decision, Ear ear) {
        if (withoutCase.contains(new WithoutCase(decision, ear))) {
            return Optional.of(Refusal.NO_SHIFT_FOUND);
        }
        List<CaseEvent> made = cases.stream()
                .filter(life -> life.isNamedBy(decision.testDate(), ear))
                .flatMap(life -> life.history().stream())
                .filter(event -> event.decision().filter(decision::equals).isPresent()
                        && event.ears().include(ear))
                .toList();
        return made.stream().allMatch(event -> event.note().isPresent())
                ? made.stream().flatMap(event -> event.note().stream()).findFirst()
                : Optional.empty();
    }

    /** Brings determinations and decisions together. */
    private static final class Gathering {

        private final WorkerHistory history;
        private final WorkerJudgement judgement;
        private final JudgingOptions options;
        private final List<Decision> decisions;
        private final Map<LocalDate, CaseBuilder> builders = new TreeMap<>();
        private final List<WithoutCase> withoutCase = new ArrayList<>();

        Gathering(WorkerHistory history, WorkerJudgement judgement, JudgingOptions options) {
            this.history = history;
            this.judgement = judgement;
            this.options = options;
            this.decisions = history.decisions().stream()
                    .filter(decision -> !decision.decidedOn().isAfter(options.asOf()))
                    .sorted(CaseBuilder.DECISIONS)
                    .toList();
        }

        WorkerCases gather() {
            addCases();
            addCasesSetAside();
            for (Decision decision : decisions) {
                for (Ear ear : Ear.values()) {
                    if (decision.ears().include(ear)) {
                        handOut(decision, ear);
                    }
                }
            }
            List<Decision> forTheWorker = decisions.stream()
                    .filter(decision -> decision.kind() == DecisionKind.PROTECTOR_REFITTED
                            || decision.kind() == DecisionKind.TRAINED)
                    .toList();
            builders.values().forEach(builder -> builder.carryOver(forTheWorker));
            return new WorkerCases(
                    builders.values().stream().map(CaseBuilder::build).toList(), withoutCase);
        }

        private void addCases() {
            for (Ear ear : Ear.values()) {
                Map<LocalDate, ShiftFacts> shifts = new TreeMap<>();
                judged(judgement, ear)
                        .flatMap(judged -> ShiftFacts.of(judged, options.asOf()).stream())
                        .forEach(shift -> shifts.merge(dateOf(shift), shift, Gathering::weightier));
                shifts.forEach((date, shift) ->
                        builder(date).add(ear, shift, daysOf(shift.judged(), judgement), Optional.empty()));
            }
        }

        private static Stream<Judged> judged(WorkerJudgement judgement, Ear ear) {
            return judgement.determinations().stream()
                    .filter(Judged.class::isInstance)
                    .map(Judged.class::cast)
                    .filter(judged -> judged.ear() == ear);
        }

        private static LocalDate dateOf(ShiftFacts shift) {
            return shift.judged().test().date();
        }

        /** Of two tests of one day the weightier outcome stands for the ear, as in the summary of the year. */
        private static ShiftFacts weightier(ShiftFacts one, ShiftFacts other) {
            List<Outcome> byWeight = List.of(Outcome.CONFIRMED, Outcome.AWAITING_RETEST, Outcome.NOT_CONFIRMED);
            return Stream.of(one, other)
                    .min(Comparator.comparing(shift -> {
                        int weight = byWeight.indexOf(shift.judged().outcome());
                        return weight < 0 ? byWeight.size() : weight;
                    }))
                    .orElseThrow();
        }

        private CaseBuilder builder(LocalDate date) {
            return builders.computeIfAbsent(date, day -> new CaseBuilder(day, options));
        }

        /** The days by which a decision may name the test, as {@link Judge} has it. */
        private static Set<LocalDate> daysOf(Judged judged, WorkerJudgement judgement) {
            Set<LocalDate> days = new HashSet<>();
            days.add(judged.test().date());
            judged.recording()
                    .comparison()
                    .map(Comparison::decidingTest)
                    .ifPresent(deciding -> days.add(deciding.date()));
            judgement.determinations().stream()
                    .filter(Determination.Retest.class::isInstance)
                    .map(Determination.Retest.class::cast)
                    .filter(retest -> retest.resolves().equals(judged.test()))
                    .forEach(retest -> days.add(retest.test().date()));
            return days;
        }

        /**
         * A test that was set aside is judged no more. Its case is what would stand without that decision on the day
         * when it was made.
         */
        private void addCasesSetAside() {
            Map<Ear, Set<LocalDate>> done = new EnumMap<>(Ear.class);
            for (Decision decision : decisions) {
                if (decision.kind() != DecisionKind.INVALID_TEST) {
                    continue;
                }
                for (Ear ear : Ear.values()) {
                    if (decision.ears().include(ear)
                            && done.computeIfAbsent(ear, any -> new HashSet<>()).add(decision.testDate())) {
                        addCaseSetAside(decision, ear);
                    }
                }
            }
        }

        private void addCaseSetAside(Decision decision, Ear ear) {
            LocalDate day =
                    decision.decidedOn().isBefore(decision.testDate()) ? decision.testDate() : decision.decidedOn();
            WorkerHistory before = new WorkerHistory(
                    history.worker(),
                    history.audiograms(),
                    history.decisions().stream()
                            .filter(other -> other.kind() != DecisionKind.INVALID_TEST
                                    || !other.testDate().equals(decision.testDate()))
                            .toList());
            WorkerJudgement asItStood = Judge.judge(before, options.withAsOf(day));
            judged(asItStood, ear)
                    .filter(judged -> judged.test().date().equals(decision.testDate()))
                    .flatMap(judged -> ShiftFacts.of(judged, day).stream())
                    .reduce(Gathering::weightier)
                    .ifPresent(shift -> builder(decision.testDate())
                            .add(ear, shift, daysOf(shift.judged(), asItStood), Optional.of(day)));
        }

        private void handOut(Decision decision, Ear ear) {
            if (decision.kind() == DecisionKind.INVALID_TEST) {
                builders.forEach((date, builder) -> setAside(decision, ear, date, builder));
                return;
            }
            CaseMove.madeBy(decision.kind()).ifPresent(move -> {
                List<CaseBuilder> about = builders.values().stream()
                        .filter(builder -> builder.isNamedBy(decision.testDate(), ear))
                        .toList();
                about.forEach(builder -> builder.happens(decision.decidedOn(), ear, move, decision));
                if (about.isEmpty() && !isToldAnyway(decision, ear)) {
                    withoutCase.add(new WithoutCase(decision, ear));
                }
            });
        }

        /** Some rule sets have the worker told of every test, so that a notice needs no case. */
        private boolean isToldAnyway(Decision decision, Ear ear) {
            return decision.kind() == DecisionKind.NOTICE_GIVEN
                    && judged(judgement, ear)
                            .filter(judged -> daysOf(judged, judgement).contains(decision.testDate()))
                            .anyMatch(judged -> judged.dueDates().notifyBy().isPresent());
        }

        private void setAside(Decision decision, Ear ear, LocalDate date, CaseBuilder builder) {
            LocalDate day =
                    decision.decidedOn().isBefore(decision.testDate()) ? decision.testDate() : decision.decidedOn();
            if (!builder.has(ear)) {
                return;
            }
            if (decision.testDate().equals(date)) {
                builder.happens(day, ear, CaseMove.TEST_SET_ASIDE, decision);
            } else if (isRetestOf(date, decision.testDate())) {
                builder.happens(day, ear, CaseMove.RETEST_SET_ASIDE, decision);
            }
        }

        private boolean isRetestOf(LocalDate date, LocalDate retest) {
            return retest.isAfter(date)
                    && options.ruleSet()
                            .retest()
                            .filter(rule -> !retest.isAfter(rule.lastDay(date)))
                            .isPresent()
                    && history.audiograms().stream()
                            .anyMatch(test -> test.purpose() == TestPurpose.RETEST
                                    && test.date().equals(retest));
        }
    }
}
