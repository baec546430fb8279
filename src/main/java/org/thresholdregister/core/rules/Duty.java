package org.thresholdregister.core.rules;

import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/**
 * Something that a rule set makes somebody do.
 *
 * @param what the duty, as a sentence
 * @param deadline how long it may take; empty where the rule set names no time
 * @param from the event that starts the time, as a noun phrase
 */
public record Duty(String what, Optional<Deadline> deadline, String from, Citation basis, Provenance provenance) {

    static Duty within(Deadline deadline, String from, String what, String basis, Provenance provenance) {
        return new Duty(what, Optional.of(deadline), from, new Citation(basis), provenance);
    }

    static Duty untimed(String what, String from, String basis, Provenance provenance) {
        return new Duty(what, Optional.empty(), from, new Citation(basis), provenance);
    }
}
