package org.thresholdregister.review;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

/** How a decision was carried out, and the file that shows it. */
@Entity
@Table(name = "decision_evidence")
@Immutable
class StoredEvidence {

    @Id
    private long decisionId;

    private Evidence.Means means;
    private String note;
    private @Nullable Long documentId;

    @SuppressWarnings("NullAway.Init")
    protected StoredEvidence() {}

    StoredEvidence(long decisionKey, Evidence.Means means, String note, Optional<Long> documentKey) {
        this.decisionId = decisionKey;
        this.means = means;
        this.note = note;
        this.documentId = documentKey.orElse(null);
    }

    Evidence.Means means() {
        return means;
    }

    String note() {
        return note;
    }

    Optional<Long> document() {
        return Optional.ofNullable(documentId);
    }
}
