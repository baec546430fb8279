package org.thresholdregister.roster;

import java.util.Optional;

/**
 * Which workers a list shows.
 *
 * @param text words that the name or number must hold; empty for all
 * @param site only this site, or those without one where the text is empty
 * @param department likewise
 */
public record WorkerFilter(String text, Optional<String> site, Optional<String> department, Status status) {

    public static final WorkerFilter EVERYONE = new WorkerFilter("", Optional.empty(), Optional.empty(), Status.ALL);

    /** Whether someone still works at the plant, judged by today's date. The last day of employment counts as active. */
    public enum Status {
        ACTIVE,
        LEFT,
        ALL
    }
}
