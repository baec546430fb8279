package org.thresholdregister.core.caselife;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination.DueDates;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.JudgingOptions;

/**
 * The life of one worker's shift as of a day: both ears of one date are one case, and each ear has a state of its own
 * where they differ.
 */
public final class CaseLife {

    private final LocalDate testDate;
    private final JudgingOptions options;
    private final Map<Ear, ShiftFacts> facts;
    private final Map<Ear, CaseState> states;
    private final Map<Ear, Set<LocalDate>> days;
    private final List<CaseEvent> history;
    private final Optional<LocalDate> closedOn;

    CaseLife(
            LocalDate testDate,
            JudgingOptions options,
            Map<Ear, ShiftFacts> facts,
            Map<Ear, CaseState> states,
            Map<Ear, Set<LocalDate>> days,
            List<CaseEvent> history,
            Optional<LocalDate> closedOn) {
        this.testDate = testDate;
        this.options = options;
        this.facts = new EnumMap<>(facts);
        this.states = new EnumMap<>(states);
        this.days = new EnumMap<>(days);
        this.history = List.copyOf(history);
        this.closedOn = closedOn;
    }

    /** The day of the test that opened it. */
    public LocalDate testDate() {
        return testDate;
    }

    /** The ears that are part of it. */
    public Ears ears() {
        return together(states.keySet().stream()).orElseThrow();
    }

    /** Where this ear stands; empty where it is no part of the case. */
    public Optional<CaseState> state(Ear ear) {
        return Optional.ofNullable(states.get(ear));
    }

    /** The determination about this ear; for a test set aside, the one that stood when it was. */
    public Optional<Judged> determination(Ear ear) {
        return Optional.ofNullable(facts.get(ear)).map(ShiftFacts::judged);
    }

    /** Whether a decision about this ear that names the test of this day is about this case. */
    public boolean isNamedBy(LocalDate day, Ear ear) {
        return days.getOrDefault(ear, Set.of()).contains(day);
    }

    /** What happened, in order. */
    public List<CaseEvent> history() {
        return history;
    }

    /** The latest of these moves that concerned this ear. */
    public Optional<CaseEvent> latest(Ear ear, CaseMove... moves) {
        List<CaseMove> asked = List.of(moves);
        return history.stream()
                .filter(event -> asked.contains(event.move()) && event.ears().include(ear))
                .reduce((earlier, later) -> later);
    }

    /** The day on which the last of it was done; empty while it is open. */
    public Optional<LocalDate> closedOn() {
        return closedOn;
    }

    public boolean isClosed() {
        return closedOn.isPresent();
    }

    /** The last day on which a retest may still take the test's place; empty where none may. */
    public Optional<LocalDate> retestBy() {
        return earliest(states.keySet().stream(), DueDates::retestBy);
    }

    /** What is owed. */
    public List<Owed> owed() {
        return duties(CaseState::owed);
    }

    /** What is not owed because the loss was found not work-related, see {@link CaseState#lifted()}. */
    public List<Owed> lifted() {
        return duties(CaseState::lifted);
    }

    private List<Owed> duties(Function<CaseState, Set<CaseDuty>> which) {
        List<Owed> owed = new ArrayList<>();
        for (CaseDuty duty : CaseDuty.values()) {
            List<Ear> ears = states.keySet().stream()
                    .filter(ear -> state(ear)
                            .filter(state -> which.apply(state).contains(duty))
                            .isPresent())
                    .toList();
            together(ears.stream())
                    .ifPresent(both -> owed.add(
                            new Owed(duty, both, dueDate(duty, ears), CaseParagraphs.of(duty, options.ruleSet()))));
        }
        return owed;
    }

    private Optional<LocalDate> dueDate(CaseDuty duty, List<Ear> ears) {
        return switch (duty) {
            case NOTICE -> earliest(ears.stream(), DueDates::notifyBy);
            case RECORD -> earliest(ears.stream(), DueDates::recordBy);
            case REFIT, TRAINING ->
                ears.stream()
                        .flatMap(ear -> Optional.ofNullable(facts.get(ear)).stream())
                        .flatMap(shift -> shift.settlement().stream())
                        .flatMap(settled -> afterShift().by(settled.day(), options.holidays()).stream())
                        .min(LocalDate::compareTo);
            case RECORDABILITY, LINE_OUT -> Optional.empty();
        };
    }

    /** What the rule set asks to be done with protectors and training. */
    public AfterShift afterShift() {
        return AfterShift.of(options.ruleSet());
    }

    private Optional<LocalDate> earliest(Stream<Ear> ears, Function<DueDates, Optional<LocalDate>> date) {
        return ears.flatMap(ear -> determination(ear).stream())
                .flatMap(determination -> date.apply(determination.dueDates()).stream())
                .min(LocalDate::compareTo);
    }

    /** What people may do next, and what they may not with the reason, ear by ear where the ears differ. */
    public List<NextMove> nextMoves() {
        List<NextMove> moves = new ArrayList<>();
        for (CaseMove move : CaseMove.byPeople()) {
            if (move == CaseMove.RETEST_SET_ASIDE) {
                continue;
            }
            Map<Optional<Refusal>, List<Ear>> ears = new LinkedHashMap<>();
            states.forEach((ear, state) -> {
                if (!isOtherNameOfTheEntry(move, state)) {
                    ears.computeIfAbsent(state.refusal(move), why -> new ArrayList<>())
                            .add(ear);
                }
            });
            ears.forEach((why, alike) -> moves.add(why.<NextMove>map(refusal ->
                            new NextMove.NotOpen(move, together(alike.stream()).orElseThrow(), refusal))
                    .orElseGet(() -> open(move, alike))));
        }
        return moves;
    }

    /** An entry is either the first or made again, never a choice between the two. */
    private static boolean isOtherNameOfTheEntry(CaseMove move, CaseState state) {
        return move.decision().filter(kind -> kind == DecisionKind.RECORDED).isPresent() && move != entryIn(state);
    }

    /** What putting the case on the log would be in this state. */
    static CaseMove entryIn(CaseState state) {
        return state.entry() == CaseState.Entry.LINED_OUT ? CaseMove.RE_ENTERED : CaseMove.RECORDED;
    }

    private NextMove open(CaseMove move, List<Ear> ears) {
        Optional<Ears> owing = together(ears.stream()
                .filter(ear -> state(ear)
                        .filter(state -> state.owed().stream().anyMatch(duty -> duty.isDoneBy(move)))
                        .isPresent()));
        return new NextMove.Open(
                move, owing.orElseGet(() -> together(ears.stream()).orElseThrow()), owing.isPresent());
    }

    /** The ears as one word; empty where there is none. */
    static Optional<Ears> together(Stream<Ear> ears) {
        BiFunction<Optional<Ears>, Ear, Optional<Ears>> and =
                (sofar, ear) -> Optional.of(sofar.map(some -> some.and(ear)).orElse(Ears.of(ear)));
        return ears.reduce(Optional.<Ears>empty(), and, (one, other) -> one);
    }
}
