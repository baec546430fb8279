package org.thresholdregister.platform.documents;

import jakarta.persistence.EntityManager;
import java.time.InstantSource;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.CurrentUser;

/**
 * Files kept as evidence; none is ever changed. It checks no role and no site: the service of the record that names a
 * file does, and notes on the audit trail who stored or fetched it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class DocumentStore {

    private final EntityManager entityManager;
    private final CurrentUser currentUser;
    private final InstantSource systemTime = InstantSource.system();

    DocumentStore(EntityManager entityManager, CurrentUser currentUser) {
        this.entityManager = entityManager;
        this.currentUser = currentUser;
    }

    /** Keeps a file and returns its key. */
    public long add(NewDocument document) {
        var stored = new StoredDocument(document, systemTime.instant(), currentUser.username());
        entityManager.persist(stored);
        return stored.toDocument().key();
    }

    public Optional<Document> find(long key) {
        return Optional.ofNullable(entityManager.find(StoredDocument.class, key))
                .map(StoredDocument::toDocument);
    }

    /**
     * The file itself.
     *
     * @throws IllegalArgumentException where no file has this key
     */
    public byte[] content(long key) {
        StoredDocument stored = entityManager.find(StoredDocument.class, key);
        if (stored == null) {
            throw new IllegalArgumentException("no document has this key");
        }
        return stored.content();
    }
}
