package org.thresholdregister.core.scheduling;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Comparator;

/** A time for one person on a test day. */
public record Slot(LocalDate day, LocalTime starts) implements Comparable<Slot> {

    private static final Comparator<Slot> IN_TIME =
            Comparator.comparing(Slot::day).thenComparing(Slot::starts);

    public LocalDateTime time() {
        return day.atTime(starts);
    }

    @Override
    public int compareTo(Slot other) {
        return IN_TIME.compare(this, other);
    }
}
