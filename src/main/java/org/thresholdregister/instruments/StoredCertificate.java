package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "tester_certificate")
@Immutable
class StoredCertificate extends StoredEntry<Facts.Certificate> {

    private long testerId;
    private String number;
    private LocalDate issuedOn;
    private @Nullable LocalDate expiresOn;
    private @Nullable Long documentId;

    @SuppressWarnings("NullAway.Init")
    protected StoredCertificate() {}

    StoredCertificate(
            Facts.Certificate facts, Change change, String enteredBy, Instant enteredAt, @Nullable Long documentId) {
        super(change, enteredBy, enteredAt);
        testerId = facts.tester();
        number = facts.number();
        issuedOn = facts.issued();
        expiresOn = facts.expires().orElse(null);
        this.documentId = documentId;
    }

    @Override
    Facts.Certificate facts() {
        return new Facts.Certificate(testerId, number, issuedOn, Optional.ofNullable(expiresOn));
    }

    @Override
    Optional<Long> documentKey() {
        return Optional.ofNullable(documentId);
    }
}
