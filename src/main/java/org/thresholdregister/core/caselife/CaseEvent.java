package org.thresholdregister.core.caselife;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.regulation.Citation;

/**
 * One thing that happened in the life of a case.
 *
 * @param rule behind it; empty where none is, as for a case that closes
 * @param note why the move was not open when it was made: decisions from files are kept all the same
 */
public record CaseEvent(
        LocalDate day,
        Ears ears,
        CaseMove move,
        CaseScope scope,
        Optional<Citation> rule,
        Origin origin,
        Optional<Refusal> note) {

    /** Where it is known from. */
    public sealed interface Origin {
        /** What a test showed, read by the rule. */
        record ByTest(Audiogram test) implements Origin {}

        /** The time for a retest ran out. */
        record ByTime() implements Origin {}

        /** Somebody did or decided it. */
        record ByPerson(Decision decision) implements Origin {}

        /** It follows from what came before. */
        record ByWhatWentBefore() implements Origin {}
    }

    /** The decision that it stands in, where a person made it. */
    public Optional<Decision> decision() {
        return origin instanceof Origin.ByPerson(Decision decision) ? Optional.of(decision) : Optional.empty();
    }

    /** Who did or decided it, as the record gives it; empty where it is derived or not given. */
    public String by() {
        return decision().map(Decision::by).orElse("");
    }

    /** Why, as the record gives it; empty likewise. */
    public String reason() {
        return decision().map(Decision::reason).orElse("");
    }
}
