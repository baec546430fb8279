package org.thresholdregister.clinical;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.platform.documents.Document;

/** A refusal, or the taking back of one. */
@Entity
@Table(name = "test_refusal")
@Immutable
class StoredTestRefusal {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "test_refusal_seq")
    @SequenceGenerator(name = "test_refusal_seq", sequenceName = "test_refusal_seq", allocationSize = 10)
    private @Nullable Long id;

    private long workerId;
    private LocalDate refusedOn;
    private String reason;
    private @Nullable Long documentId;
    private @Nullable Long takesBackId;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredTestRefusal() {}

    StoredTestRefusal(
            long workerKey,
            LocalDate day,
            String reason,
            @Nullable Long document,
            String enteredBy,
            Instant enteredAt) {
        this.workerId = workerKey;
        this.refusedOn = day;
        this.reason = reason;
        this.documentId = document;
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    static StoredTestRefusal takingBack(StoredTestRefusal other, String reason, String enteredBy, Instant enteredAt) {
        StoredTestRefusal row =
                new StoredTestRefusal(other.workerId, other.refusedOn, reason, null, enteredBy, enteredAt);
        row.takesBackId = other.key();
        return row;
    }

    long key() {
        return Objects.requireNonNull(id, "a refusal that has not been stored");
    }

    Optional<Long> takesBack() {
        return Optional.ofNullable(takesBackId);
    }

    Optional<Long> document() {
        return Optional.ofNullable(documentId);
    }

    LocalDate day() {
        return refusedOn;
    }

    String reason() {
        return reason;
    }

    Refusal toRefusal(Optional<Document> sheet, Optional<String> takenBack) {
        return new Refusal(key(), refusedOn, reason, sheet, takenBack, enteredBy, enteredAt);
    }
}
