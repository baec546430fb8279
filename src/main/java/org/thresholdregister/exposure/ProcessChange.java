package org.thresholdregister.exposure;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A change of production, process, equipment or controls at one place.
 *
 * @param remeasureBy the day by which noise is to be measured again; the rule states none, a person chose it
 * @param settledOn the day on which it was measured again, or a person found that it need not be
 */
public record ProcessChange(
        long key,
        NoiseSubject subject,
        LocalDate changedOn,
        LocalDate remeasureBy,
        String what,
        Optional<LocalDate> settledOn,
        String settledReason) {

    /** The longest description or reason that is kept, in characters. */
    public static final int LONGEST_TEXT = 2000;

    public boolean isOpen() {
        return settledOn.isEmpty();
    }
}
