package org.thresholdregister.employment;

import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.employment.Inconsistency;
import org.thresholdregister.core.employment.WorkState;

/**
 * Whom a sale would take along, before anything is changed.
 *
 * @param going those employed at the site on the day of the sale
 * @param held those who would go but whose record does not let them, each with what stands against it; while there is
 *     one, nobody goes
 */
public record SalePreview(String site, LocalDate soldOn, String successor, List<Going> going, List<Held> held) {

    public record Going(String workerId, String name, String department, WorkState state) {}

    public record Held(String workerId, String name, Inconsistency found) {}
}
