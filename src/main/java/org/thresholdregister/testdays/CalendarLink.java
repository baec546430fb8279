package org.thresholdregister.testdays;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;

/** A user's calendar address; of its secret part the hash only. */
@Entity
class CalendarLink {

    @Id
    private String username;

    private String uid;
    private String tokenHash;
    private Instant madeAt;

    @SuppressWarnings("NullAway.Init")
    protected CalendarLink() {}

    CalendarLink(String username, String uid, String tokenHash, Instant madeAt) {
        this.username = username;
        this.uid = uid;
        this.tokenHash = tokenHash;
        this.madeAt = madeAt;
    }

    /** The address before it stops to work; the calendar goes on. */
    void renew(String hash, Instant now) {
        tokenHash = hash;
        madeAt = now;
    }

    String username() {
        return username;
    }

    String uid() {
        return uid;
    }
}
