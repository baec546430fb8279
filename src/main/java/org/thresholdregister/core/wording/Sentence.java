package org.thresholdregister.core.wording;

import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;

/** One step of a working, as it would be read aloud, and what it rests on. */
public record Sentence(String text, Optional<Citation> basis) {

    static Sentence of(String text, Citation basis) {
        return new Sentence(text, Optional.of(basis));
    }

    static Sentence plain(String text) {
        return new Sentence(text, Optional.empty());
    }

    /** The sentence with its source in brackets. */
    public String withBasis() {
        return basis.map(place -> text + " [" + place + "]").orElse(text);
    }
}
