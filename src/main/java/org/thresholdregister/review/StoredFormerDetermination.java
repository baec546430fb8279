package org.thresholdregister.review;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import org.hibernate.annotations.BatchSize;
import org.hibernate.annotations.Immutable;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;

/** A determination as it was made, kept once it was replaced. Nothing changes or removes it. */
@Entity
@Table(name = "determination_history")
@Immutable
@BatchSize(size = 100)
class StoredFormerDetermination extends DeterminationRow {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "determination_history_seq")
    @SequenceGenerator(
            name = "determination_history_seq",
            sequenceName = "determination_history_seq",
            allocationSize = 100)
    private @Nullable Long id;

    private Instant replacedAt;
    private LocalDate replacedOn;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private ReplacementCause cause;

    private @Nullable Long decisionId;
    private @Nullable Long importBatchId;

    @SuppressWarnings("NullAway.Init")
    protected StoredFormerDetermination() {}

    StoredFormerDetermination(
            StoredDetermination replaced, Instant replacedAt, LocalDate replacedOn, JudgingCause cause) {
        super(replaced);
        this.replacedAt = replacedAt;
        this.replacedOn = replacedOn;
        this.cause = ReplacementCause.of(cause);
        this.decisionId = cause instanceof JudgingCause.ByDecision(long decisionKey) ? decisionKey : null;
        this.importBatchId = cause instanceof JudgingCause.ByImport(long importBatch) ? importBatch : null;
    }

    long key() {
        return Objects.requireNonNull(id, "a determination of the past that has not been stored");
    }

    Instant replacedAt() {
        return replacedAt;
    }

    Optional<Long> decisionKey() {
        return Optional.ofNullable(decisionId);
    }

    /** @param decision the decision that replaced it, where one did */
    DeterminationVersion toVersion(@Nullable StoredDecision decision) {
        return toVersion(Optional.of(new DeterminationVersion.Replacement(
                replacedOn,
                cause,
                Optional.ofNullable(decision)
                        .map(StoredDecision::toRecordedDecision)
                        .map(RecordedDecision::decision),
                Optional.ofNullable(importBatchId))));
    }
}
