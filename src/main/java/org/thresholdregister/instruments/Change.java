package org.thresholdregister.instruments;

import java.util.Optional;

/**
 * Whether facts are new or correct what is on record.
 *
 * @param corrects key of the entry that they correct
 * @param withdraws whether the entry is taken back altogether
 * @param reason why; empty only for something new
 */
public record Change(Optional<Long> corrects, boolean withdraws, String reason) {

    public static final int LONGEST_REASON = 1000;

    public static final Change NEW = new Change(Optional.empty(), false, "");

    public static Change correcting(long key, String reason) {
        return new Change(Optional.of(key), false, reason);
    }

    public static Change withdrawing(long key, String reason) {
        return new Change(Optional.of(key), true, reason);
    }
}
