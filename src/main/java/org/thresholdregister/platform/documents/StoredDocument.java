package org.thresholdregister.platform.documents;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;

@Entity
@Table(name = "document")
@Immutable
class StoredDocument {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "document_seq")
    @SequenceGenerator(name = "document_seq", sequenceName = "document_seq", allocationSize = 10)
    private @Nullable Long id;

    private String name;

    @Enumerated(EnumType.STRING)
    private MediaType mediaType;

    private int byteCount;

    @Column(columnDefinition = "bytea")
    private byte[] content;

    private Instant storedAt;
    private String storedBy;

    @SuppressWarnings("NullAway.Init")
    protected StoredDocument() {}

    StoredDocument(NewDocument document, Instant storedAt, String storedBy) {
        this.name = document.name();
        this.mediaType = document.type();
        this.byteCount = document.content().length;
        this.content = document.content();
        this.storedAt = storedAt;
        this.storedBy = storedBy;
    }

    byte[] content() {
        return content;
    }

    /** @throws IllegalStateException while it is not stored */
    Document toDocument() {
        if (id == null) {
            throw new IllegalStateException("a document that is not stored has no key");
        }
        return new Document(id, name, mediaType, byteCount, storedAt, storedBy);
    }
}
