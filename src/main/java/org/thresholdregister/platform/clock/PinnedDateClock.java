package org.thresholdregister.platform.clock;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;

/** A clock whose date stands still while its time of day goes on. */
final class PinnedDateClock extends Clock {

    private final Clock timeOfDay;
    private final LocalDate today;

    PinnedDateClock(Clock timeOfDay, LocalDate today) {
        this.timeOfDay = timeOfDay;
        this.today = today;
    }

    @Override
    public ZoneId getZone() {
        return timeOfDay.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return new PinnedDateClock(timeOfDay.withZone(zone), today);
    }

    @Override
    public Instant instant() {
        var now = timeOfDay.instant().atZone(getZone());
        return now.with(today).toInstant();
    }
}
