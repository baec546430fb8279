package org.thresholdregister.testdays;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.scheduling.DayHours;
import org.thresholdregister.core.scheduling.Slot;

@Entity
@Table(name = "test_day")
class StoredTestDay {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "test_day_seq")
    @SequenceGenerator(name = "test_day_seq", sequenceName = "test_day_seq", allocationSize = 1)
    private @Nullable Long id;

    private long visit;
    private String uid;
    private String site;
    private String place;
    private LocalDate testDate;
    private LocalTime startsAt;
    private LocalTime endsAt;
    private int perHour;
    private String breaks;
    private String nurse;
    private boolean mobileUnit;
    private boolean cancelled;

    /** How often a calendar had to be told of another time or place, RFC 5545 section 3.8.7.4. */
    private int revision;

    private Instant changedAt;

    @Version
    private int version;

    @SuppressWarnings("NullAway.Init")
    protected StoredTestDay() {}

    @SuppressWarnings("NullAway.Init")
    StoredTestDay(String site, String place, DayHours hours, String nurse, boolean mobileUnit, Instant now) {
        this.uid = UUID.randomUUID().toString();
        this.site = site;
        this.mobileUnit = mobileUnit;
        set(place, hours, nurse, now);
    }

    /** Takes over what may change. The day itself stays: another day is another test day. */
    final void set(String place, DayHours hours, String nurse, Instant now) {
        this.place = place;
        this.testDate = hours.day();
        this.startsAt = hours.from();
        this.endsAt = hours.to();
        this.perHour = hours.perHour();
        this.breaks = hours.breaks().stream()
                .map(pause -> pause.from() + "-" + pause.to())
                .collect(Collectors.joining(","));
        this.nurse = nurse;
        changed(now);
    }

    void planWith(long visit) {
        this.visit = visit;
    }

    void cancel(Instant now) {
        cancelled = true;
        revision++;
        changed(now);
    }

    /** Its people, or something else that a calendar tells of, changed. */
    final void changed(Instant now) {
        changedAt = now;
    }

    /** @throws IllegalStateException while it is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("a test day that is not stored has no key");
        }
        return id;
    }

    String site() {
        return site;
    }

    String uid() {
        return uid;
    }

    int revision() {
        return revision;
    }

    Instant changedAt() {
        return changedAt;
    }

    LocalDate date() {
        return testDate;
    }

    boolean isCancelled() {
        return cancelled;
    }

    Slot slot(LocalTime time) {
        return new Slot(testDate, time);
    }

    DayHours hours() {
        List<DayHours.Break> pauses = Stream.of(breaks.split(","))
                .filter(text -> !text.isEmpty())
                .map(text -> text.split("-"))
                .map(ends -> new DayHours.Break(LocalTime.parse(ends[0]), LocalTime.parse(ends[1])))
                .toList();
        return new DayHours(testDate, startsAt, endsAt, perHour, pauses);
    }

    TestDay toTestDay() {
        return new TestDay(key(), visit, site, place, hours(), nurse, mobileUnit, cancelled);
    }
}
