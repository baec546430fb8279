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

    @SuppressWarnings("NullAway.Init")
    protected StoredCertificate() {}

    StoredCertificate(Facts.Certificate facts, Change change, String enteredBy, Instant enteredAt) {
        super(change, enteredBy, enteredAt);
        testerId = facts.tester();
        number = facts.number();
        issuedOn = facts.issued();
        expiresOn = facts.expires().orElse(null);
    }

    @Override
    Facts.Certificate facts() {
        return new Facts.Certificate(testerId, number, issuedOn, Optional.ofNullable(expiresOn));
    }
}
