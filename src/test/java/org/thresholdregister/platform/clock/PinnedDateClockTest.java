package org.thresholdregister.platform.clock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

class PinnedDateClockTest {

    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");

    @Test
    void theDateStandsStillWhileTheTimeOfDayGoesOn() {
        var system = Clock.fixed(Instant.parse("2030-07-04T18:15:00Z"), CHICAGO);
        var clock = new PinnedDateClock(system, LocalDate.of(2026, 3, 9));

        assertThat(LocalDate.now(clock)).isEqualTo(LocalDate.of(2026, 3, 9));
        assertThat(LocalTime.now(clock)).isEqualTo(LocalTime.of(13, 15));
    }

    @Test
    void theDateIsTheOneOfTheClocksOwnZone() {
        var lateEvening = Clock.fixed(Instant.parse("2030-07-05T03:00:00Z"), CHICAGO);
        var clock = new PinnedDateClock(lateEvening, LocalDate.of(2026, 3, 9));

        assertThat(LocalDate.now(clock)).isEqualTo(LocalDate.of(2026, 3, 9));
    }
}
