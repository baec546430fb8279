package org.thresholdregister.clinical;

import jakarta.persistence.Embedded;
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
import org.thresholdregister.core.clinical.ClinicalFacts;

/** The clinical part as of a day, kept for good. */
@Entity
@Table(name = "clinical_entry")
@Immutable
class StoredClinicalEntry {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "clinical_entry_seq")
    @SequenceGenerator(name = "clinical_entry_seq", sequenceName = "clinical_entry_seq", allocationSize = 10)
    private @Nullable Long id;

    private long workerId;
    private LocalDate takenOn;

    @Embedded
    private StoredClinicalFacts facts;

    private @Nullable Long correctsId;
    private String reason;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredClinicalEntry() {}

    StoredClinicalEntry(
            long workerKey,
            LocalDate day,
            ClinicalFacts facts,
            @Nullable StoredClinicalEntry corrects,
            String reason,
            String enteredBy,
            Instant enteredAt) {
        this.workerId = workerKey;
        this.takenOn = day;
        this.facts = new StoredClinicalFacts(facts);
        this.correctsId = corrects == null ? null : corrects.key();
        this.reason = reason;
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    long key() {
        return Objects.requireNonNull(id, "an entry that has not been stored");
    }

    LocalDate day() {
        return takenOn;
    }

    Optional<Long> corrects() {
        return Optional.ofNullable(correctsId);
    }

    ClinicalEntry toEntry(boolean inForce) {
        return new ClinicalEntry(takenOn, facts.toFacts(), inForce, reason, enteredBy, enteredAt);
    }
}
