package org.thresholdregister.review;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ears;

/** That something owed was put off; a later one takes its place, nothing changes it. */
@Entity
@Table(name = "postponement")
@Immutable
class StoredPostponement {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "postponement_seq")
    @SequenceGenerator(name = "postponement_seq", sequenceName = "postponement_seq", allocationSize = 100)
    private @Nullable Long id;

    private long workerId;
    private TaskKind kind;
    private @Nullable LocalDate testDate;
    private Ears ears;
    private @Nullable LocalDate dueDate;

    @Column(name = "until_day")
    private LocalDate until;

    private String reason;
    private String postponedBy;
    private Instant postponedAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredPostponement() {}

    /** @param key of the task at its worker */
    StoredPostponement(
            StoredTask task, TaskKey key, LocalDate until, String reason, String postponedBy, Instant postponedAt) {
        this.workerId = task.workerKey();
        this.kind = key.kind();
        this.testDate = key.test();
        this.ears = key.ears();
        this.dueDate = task.dueDate().orElse(null);
        this.until = until;
        this.reason = reason;
        this.postponedBy = postponedBy;
        this.postponedAt = postponedAt;
    }

    long key() {
        return Objects.requireNonNull(id, "a postponement that has not been stored");
    }

    long workerKey() {
        return workerId;
    }

    LocalDate until() {
        return until;
    }

    /** What it puts off. */
    TaskKey task(String workerNumber) {
        return new TaskKey(workerNumber, kind, testDate, ears);
    }

    Postponement toPostponement(Clock clock) {
        return new Postponement(until, reason, postponedBy, LocalDate.ofInstant(postponedAt, clock.getZone()));
    }
}
