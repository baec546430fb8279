package org.thresholdregister.platform.audit;

import jakarta.persistence.EntityManager;
import java.time.InstantSource;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.SignedInUser;

/**
 * Adds to the audit trail; there is no way to change or remove what stands there. An entry is part of the caller's
 * transaction: it stands if the change stands, and a call outside a transaction is refused.
 *
 * <p>The time is the system's own even where the register's date is pinned. Entries name workers and accounts by id,
 * never by name, and quote no threshold: administrators read the trail.
 */
@Service
public class AuditTrail {

    /** Who acts where nobody is signed in. */
    public static final String NOBODY_SIGNED_IN = "(nobody signed in)";

    private final EntityManager entityManager;
    private final CurrentUser currentUser;
    private final InstantSource systemTime = InstantSource.system();

    AuditTrail(EntityManager entityManager, CurrentUser currentUser) {
        this.entityManager = entityManager;
        this.currentUser = currentUser;
    }

    /**
     * Notes what the signed-in user does.
     *
     * @param subjectType kind of record, such as {@code worker}
     * @param subjectId id of the record
     * @param detail what was done, in words, with ids only; may be empty
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public void record(AuditAction action, String subjectType, String subjectId, String detail) {
        String actor = currentUser.find().map(SignedInUser::getUsername).orElse(NOBODY_SIGNED_IN);
        recordAs(actor, action, subjectType, subjectId, detail);
    }

    /** Notes what was done before sign-in or by the program itself, such as {@code (first set-up)}. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void recordAs(String actor, AuditAction action, String subjectType, String subjectId, String detail) {
        entityManager.persist(
                new AuditEvent(systemTime.instant(), actor, action.name(), subjectType, subjectId, detail));
    }
}
