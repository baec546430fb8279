package org.thresholdregister;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands at noon of a day until a test moves it. */
public final class MovableClock extends Clock {

    public static final LocalDate FIRST_DAY = LocalDate.of(2026, 3, 9);

    private volatile LocalDate today = FIRST_DAY;

    public void moveTo(LocalDate day) {
        today = day;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return Clock.fixed(instant(), zone);
    }

    @Override
    public Instant instant() {
        return today.atTime(12, 0).toInstant(ZoneOffset.UTC);
    }
}
