package org.thresholdregister.testdays;

import java.nio.charset.StandardCharsets;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;

/** Serves calendars to programs that know their address; nobody is signed in. */
@RestController
class CalendarFeedController {

    private static final MediaType CALENDAR = new MediaType("text", "calendar", StandardCharsets.UTF_8);

    private final CalendarFeed feed;

    CalendarFeedController(CalendarFeed feed) {
        this.feed = feed;
    }

    /** An address that is unknown, revoked or of a closed account is not found, all alike. */
    @GetMapping("/calendar/{token}.ics")
    ResponseEntity<byte[]> calendar(@PathVariable String token) {
        return feed.of(token)
                .map(text -> ResponseEntity.ok().contentType(CALENDAR).body(text.getBytes(StandardCharsets.UTF_8)))
                .orElseGet(() -> ResponseEntity.notFound().build());
    }
}
