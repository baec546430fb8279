package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Set;

/** What a method says of a protector in a noise. */
public sealed interface Estimate {

    AttenuationMethod method();

    /**
     * A level under the protector.
     *
     * @param levelUnder in dBA
     * @param notes what has to be said with it
     */
    record Estimated(AttenuationMethod method, Reckoning reckoning, BigDecimal levelUnder, Set<EstimateNote> notes)
            implements Estimate {
        public Estimated {
            notes = notes.isEmpty() ? Set.of() : EnumSet.copyOf(notes);
        }
    }

    /** No level, and what it lacks for one. */
    record Unavailable(AttenuationMethod method, Set<Missing> missing) implements Estimate {
        public Unavailable {
            missing = EnumSet.copyOf(missing);
        }
    }
}
