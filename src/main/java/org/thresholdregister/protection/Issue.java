package org.thresholdregister.protection;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A protector that a worker has or had.
 *
 * @param end empty while the worker has it
 * @param withdrawn why it was entered by mistake; empty where it was not
 */
public record Issue(long key, Product product, NewIssue details, Optional<End> end, String withdrawn) {

    /** How it ended. */
    public enum How {
        RETURNED,
        REPLACED,
        LOST
    }

    public record End(LocalDate on, How how) {}

    /** Whether the worker has it. */
    public boolean isInUse() {
        return end.isEmpty() && counts();
    }

    public boolean counts() {
        return withdrawn.isEmpty();
    }
}
