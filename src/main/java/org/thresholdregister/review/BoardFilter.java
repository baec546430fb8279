package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What the board shows.
 *
 * @param kind only this kind: the word of a {@link TaskKind}, or the words of a feature's duty
 * @param site only this site, or those without one where the text is empty
 * @param department likewise; what is about no worker has none
 * @param from only what is due on this day or later
 * @param to only what is due on this day or before
 * @param who only what is theirs to see to
 * @param postponed only what is put off beyond today, or only what is not
 * @param text words that the worker's name or number, or the thing's name, must hold; empty for all
 */
public record BoardFilter(
        Optional<String> kind,
        Optional<DueState> state,
        Optional<String> site,
        Optional<String> department,
        Optional<LocalDate> from,
        Optional<LocalDate> to,
        Optional<TaskKind.Doer> who,
        Optional<Postponed> postponed,
        String text) {

    public static final BoardFilter EVERYTHING = new BoardFilter(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            "");

    /** Whether something is put off. */
    public enum Postponed {
        POSTPONED,
        NOT_POSTPONED
    }

    /** The same of one kind alone. */
    public BoardFilter withKind(TaskKind one) {
        return new BoardFilter(Optional.of(one.word()), state, site, department, from, to, who, postponed, text);
    }

    /** The same in one state alone. */
    public BoardFilter withState(DueState one) {
        return new BoardFilter(kind, Optional.of(one), site, department, from, to, who, postponed, text);
    }

    /** The same of what is put off alone, or of what is not. */
    public BoardFilter withPostponed(Postponed which) {
        return new BoardFilter(kind, state, site, department, from, to, who, Optional.of(which), text);
    }

    /** The same at one site alone. */
    public BoardFilter withSite(String one) {
        return new BoardFilter(kind, state, Optional.of(one), department, from, to, who, postponed, text);
    }
}
