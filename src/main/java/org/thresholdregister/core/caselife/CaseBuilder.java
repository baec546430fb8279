package org.thresholdregister.core.caselife;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.caselife.CaseEvent.Origin;
import org.thresholdregister.core.caselife.CaseState.ForTheLog;
import org.thresholdregister.core.caselife.CaseState.Shift;
import org.thresholdregister.core.caselife.CaseState.Step;
import org.thresholdregister.core.caselife.CaseState.Work;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.JudgingOptions;

/** Lives through a case day by day: what the tests showed and what people did, in the order of {@link CaseMove}. */
final class CaseBuilder {

    /** Decisions in an order that does not depend on how they were listed. */
    static final Comparator<Decision> DECISIONS = Comparator.comparing(Decision::decidedOn)
            .thenComparing(Decision::kind)
            .thenComparing(Decision::testDate)
            .thenComparing(Decision::ears)
            .thenComparing(Decision::by)
            .thenComparing(Decision::reason);

    /** What is known to have happened to an ear on a day; {@code carried} where it names another test. */
    private record Happening(Ear ear, CaseMove move, Origin origin, boolean carried) implements Comparable<Happening> {
        @Override
        public int compareTo(Happening other) {
            int byTime = Boolean.compare(other.isByTime(), isByTime());
            int byMove = byTime != 0 ? byTime : move.compareTo(other.move);
            int byDecision = origin instanceof Origin.ByPerson(Decision one)
                            && other.origin instanceof Origin.ByPerson(Decision another)
                    ? DECISIONS.compare(one, another)
                    : 0;
            return byMove != 0 ? byMove : byDecision != 0 ? byDecision : ear.compareTo(other.ear);
        }

        /** The time for a retest has run out when the day begins. */
        private boolean isByTime() {
            return origin instanceof Origin.ByTime;
        }
    }

    private final LocalDate testDate;
    private final JudgingOptions options;
    private final Map<Ear, ShiftFacts> facts = new EnumMap<>(Ear.class);
    private final Map<Ear, Set<LocalDate>> days = new EnumMap<>(Ear.class);
    private final Map<LocalDate, List<Happening>> happenings = new TreeMap<>();
    private final Map<Ear, CaseState> states = new EnumMap<>(Ear.class);
    private final List<CaseEvent> history = new ArrayList<>();
    private Optional<LocalDate> closedOn = Optional.empty();

    CaseBuilder(LocalDate testDate, JudgingOptions options) {
        this.testDate = testDate;
        this.options = options;
    }

    /**
     * Takes an ear in.
     *
     * @param daysNamed the days by which a decision may name its test: its own, those of its retests, and that of the
     *     test that decided the question of the log
     * @param lastDay what was settled later does not count, as for a test that was set aside; empty for no such day
     */
    void add(Ear ear, ShiftFacts shift, Set<LocalDate> daysNamed, Optional<LocalDate> lastDay) {
        facts.put(ear, shift);
        days.put(ear, new HashSet<>(daysNamed));
        states.put(ear, CaseState.start(CaseTerms.of(options.ruleSet(), shift.scope())));
        happens(shift.foundBy().date(), ear, CaseMove.SHIFT_FOUND, new Origin.ByTest(shift.foundBy()));
        shift.settlement()
                .filter(settled ->
                        lastDay.map(last -> !settled.day().isAfter(last)).orElse(true))
                .ifPresent(settled -> happens(
                        settled.day(),
                        ear,
                        settled.stands() ? CaseMove.CONFIRMED : CaseMove.CLEARED,
                        settled.by().<Origin>map(Origin.ByTest::new).orElseGet(Origin.ByTime::new)));
    }

    boolean has(Ear ear) {
        return facts.containsKey(ear);
    }

    /** Whether a decision about this ear that names this day is about this case. */
    boolean isNamedBy(LocalDate day, Ear ear) {
        return days.getOrDefault(ear, Set.of()).contains(day);
    }

    void happens(LocalDate day, Ear ear, CaseMove move, Decision decision) {
        happens(day, ear, move, new Origin.ByPerson(decision));
    }

    private void happens(LocalDate day, Ear ear, CaseMove move, Origin origin) {
        happenings.computeIfAbsent(day, any -> new ArrayList<>()).add(new Happening(ear, move, origin, false));
    }

    /**
     * Protectors and training are the worker's: what was done once the shift had been found does this case's duty too,
     * whichever test it names.
     */
    void carryOver(Collection<Decision> decisions) {
        for (Decision decision : decisions) {
            CaseMove move =
                    decision.kind() == DecisionKind.PROTECTOR_REFITTED ? CaseMove.PROTECTOR_REFITTED : CaseMove.TRAINED;
            facts.forEach((ear, shift) -> {
                if (decision.ears().include(ear)
                        && !isNamedBy(decision.testDate(), ear)
                        && !decision.decidedOn().isBefore(shift.foundBy().date())) {
                    happenings
                            .computeIfAbsent(decision.decidedOn(), any -> new ArrayList<>())
                            .add(new Happening(ear, move, new Origin.ByPerson(decision), true));
                }
            });
        }
    }

    CaseLife build() {
        happenings.forEach((day, ofDay) -> {
            ofDay.sort(Comparator.naturalOrder());
            for (Happening happening : ofDay) {
                if (happening.move.compareTo(CaseMove.RECORDED) < 0) {
                    live(day, happening);
                }
            }
            facts.keySet().forEach(ear -> answerForTheLog(day, ear));
            for (Happening happening : ofDay) {
                if (happening.move.compareTo(CaseMove.RECORDED) >= 0) {
                    live(day, happening);
                }
            }
            closeOrOpen(day);
        });
        return new CaseLife(testDate, options, facts, states, days, history, closedOn);
    }

    private void live(LocalDate day, Happening happening) {
        CaseState before = state(happening.ear);
        CaseMove move = happening.move == CaseMove.RECORDED ? CaseLife.entryIn(before) : happening.move;
        if (happening.carried
                && (before.refusal(move).isPresent() || before.done().contains(move))) {
            return;
        }
        switch (before.after(move)) {
            case Step.Taken(CaseState after) ->
                take(day, happening.ear, move, happening.origin, after, Optional.empty());
            case Step.Refused(Refusal why) ->
                take(day, happening.ear, move, happening.origin, before.afterAllTheSame(move), Optional.of(why));
        }
    }

    private void take(LocalDate day, Ear ear, CaseMove move, Origin origin, CaseState after, Optional<Refusal> note) {
        states.put(ear, after);
        CaseEvent event = new CaseEvent(
                day,
                Ears.of(ear),
                move,
                after.scope(),
                CaseParagraphs.of(move, after.scope(), options.ruleSet()),
                origin,
                note);
        if (!history.isEmpty() && isSameBut(history.getLast(), event)) {
            history.set(
                    history.size() - 1,
                    new CaseEvent(
                            day, history.getLast().ears().and(ear), move, after.scope(), event.rule(), origin, note));
        } else {
            history.add(event);
        }
    }

    /** Whether it is the other ear's part of the same event. */
    private static boolean isSameBut(CaseEvent one, CaseEvent other) {
        return !one.ears().equals(other.ears())
                && one.ears() != Ears.BOTH
                && new CaseEvent(one.day(), other.ears(), one.move(), one.scope(), one.rule(), one.origin(), one.note())
                        .equals(other);
    }

    /** The question of the log is answered once the shift stands, and again where it is found work-related after all. */
    private void answerForTheLog(LocalDate day, Ear ear) {
        CaseState state = state(ear);
        ShiftFacts shift = facts.get(ear);
        if (shift == null
                || state.shift() != Shift.CONFIRMED
                || state.work() == Work.FOUND_NOT_RELATED
                || state.forTheLog() != ForTheLog.NOT_ASKED) {
            return;
        }
        CaseMove answer = switch (shift.answer()) {
            case YES -> CaseMove.FOUND_RECORDABLE;
            case NO -> CaseMove.FOUND_NOT_RECORDABLE;
            case ALREADY_RECORDED -> CaseMove.FOUND_HELD_BY_EARLIER_CASE;
            case UNDECIDED, AWAITING_RETEST -> CaseMove.LEFT_UNDECIDED;
            case NOT_ASKED -> throw new IllegalStateException("the rule set keeps no log");
        };
        live(day, new Happening(ear, answer, new Origin.ByTest(shift.decidingTest()), false));
    }

    private void closeOrOpen(LocalDate day) {
        boolean mayClose = states.values().stream()
                .allMatch(state -> state.refusal(CaseMove.CLOSED).isEmpty());
        if (!mayClose) {
            closedOn = Optional.empty();
        } else if (closedOn.isEmpty()) {
            closedOn = Optional.of(day);
            Ears ears = CaseLife.together(states.keySet().stream()).orElseThrow();
            history.add(new CaseEvent(
                    day,
                    ears,
                    CaseMove.CLOSED,
                    CaseScope.SHIFT_AND_LOG,
                    Optional.empty(),
                    new Origin.ByWhatWentBefore(),
                    Optional.empty()));
        }
    }

    private CaseState state(Ear ear) {
        CaseState state = states.get(ear);
        if (state == null) {
            throw new IllegalArgumentException("this ear is no part of the case");
        }
        return state;
    }
}
