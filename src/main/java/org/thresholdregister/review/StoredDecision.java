package org.thresholdregister.review;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;

/** What somebody decided; a later decision may outweigh it, nothing changes it. */
@Entity
@Table(name = "decision")
@Immutable
class StoredDecision {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "decision_seq")
    @SequenceGenerator(name = "decision_seq", sequenceName = "decision_seq", allocationSize = 100)
    private @Nullable Long id;

    private long workerId;
    private Ears ears;
    private LocalDate testDate;
    private DecisionKind kind;
    private LocalDate decidedOn;
    private String decidedBy;
    private String reason;
    private String enteredBy;
    private Instant enteredAt;
    private @Nullable Long importBatchId;

    @SuppressWarnings("NullAway.Init")
    protected StoredDecision() {}

    StoredDecision(
            long workerKey, Decision decision, String enteredBy, Instant enteredAt, @Nullable Long importBatchId) {
        this.workerId = workerKey;
        this.ears = decision.ears();
        this.testDate = decision.testDate();
        this.kind = decision.kind();
        this.decidedOn = decision.decidedOn();
        this.decidedBy = decision.by();
        this.reason = decision.reason();
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
        this.importBatchId = importBatchId;
    }

    long key() {
        return Objects.requireNonNull(id, "a decision that has not been stored");
    }

    boolean isOfImport(long batch) {
        return importBatchId != null && importBatchId == batch;
    }

    long workerKey() {
        return workerId;
    }

    RecordedDecision toRecordedDecision() {
        return new RecordedDecision(
                new Decision(ears, testDate, kind, decidedOn, decidedBy, reason), enteredBy, enteredAt);
    }
}
