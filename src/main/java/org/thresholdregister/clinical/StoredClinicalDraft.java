package org.thresholdregister.clinical;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import org.thresholdregister.core.clinical.ClinicalFacts;

/** What is typed beside a test that is not signed yet. */
@Entity
@Table(name = "clinical_draft")
class StoredClinicalDraft {

    @Id
    private long draftKey;

    private long workerId;

    @Embedded
    private StoredClinicalFacts facts;

    private String typedBy;
    private Instant typedAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredClinicalDraft() {}

    StoredClinicalDraft(long draftKey, long workerKey, ClinicalFacts facts, String typedBy, Instant typedAt) {
        this.draftKey = draftKey;
        this.workerId = workerKey;
        this.facts = new StoredClinicalFacts(facts);
        this.typedBy = typedBy;
        this.typedAt = typedAt;
    }

    long workerKey() {
        return workerId;
    }

    ClinicalFacts facts() {
        return facts.toFacts();
    }

    String typedBy() {
        return typedBy;
    }
}
