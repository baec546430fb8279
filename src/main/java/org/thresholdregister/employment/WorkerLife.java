package org.thresholdregister.employment;

import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.employment.WorkState;
import org.thresholdregister.core.employment.WorkingLife;

/**
 * A worker's life as it is on record.
 *
 * @param entries every line there ever was, by its day, corrected ones among them
 * @param life what is in force
 */
public record WorkerLife(LocalDate asOf, List<LifeEntry> entries, WorkingLife life) {

    /** What holds today. */
    public WorkState state() {
        return life.asEnteredOn(asOf);
    }
}
