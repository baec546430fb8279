package org.thresholdregister.review;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ears;

/** Something open about a worker; whether it is overdue is asked on the day. */
@Entity
@Table(name = "follow_up")
class StoredTask {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "follow_up_seq")
    @SequenceGenerator(name = "follow_up_seq", sequenceName = "follow_up_seq", allocationSize = 100)
    private @Nullable Long id;

    private long workerId;
    private TaskKind kind;
    private @Nullable LocalDate dueDate;
    private LocalDate openSince;
    private @Nullable LocalDate testDate;
    private Ears ears;
    private String ruleSet;
    private String basis;
    private String booked;
    private @Nullable Long postponementId;
    private @Nullable LocalDate postponedUntil;

    @SuppressWarnings("NullAway.Init")
    protected StoredTask() {}

    /**
     * @param ruleSet the word of the rule set that is answered to
     * @param basis the paragraph that makes it due; empty where none does
     */
    StoredTask(
            long workerKey,
            TaskKind kind,
            Optional<LocalDate> dueDate,
            LocalDate openSince,
            Optional<LocalDate> testDate,
            Ears ears,
            String ruleSet,
            String basis) {
        this.workerId = workerKey;
        this.kind = kind;
        this.dueDate = dueDate.orElse(null);
        this.openSince = openSince;
        this.testDate = testDate.orElse(null);
        this.ears = ears;
        this.ruleSet = ruleSet;
        this.basis = basis;
        this.booked = "";
    }

    long workerKey() {
        return workerId;
    }

    TaskKind kind() {
        return kind;
    }

    Optional<LocalDate> dueDate() {
        return Optional.ofNullable(dueDate);
    }

    LocalDate openSince() {
        return openSince;
    }

    String basis() {
        return basis;
    }

    Optional<Long> postponement() {
        return Optional.ofNullable(postponementId);
    }

    TaskKey key(String workerNumber) {
        return new TaskKey(workerNumber, kind, testDate, ears);
    }

    /** @param words when and where it is booked for */
    void book(String words) {
        booked = words;
    }

    void postpone(StoredPostponement postponement) {
        postponementId = postponement.key();
        postponedUntil = postponement.until();
    }
}
