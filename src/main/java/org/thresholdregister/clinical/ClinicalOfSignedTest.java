package org.thresholdregister.clinical;

import jakarta.persistence.EntityManager;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.TestSigned;
import org.thresholdregister.platform.audit.AuditTrail;

/** What was typed beside a test becomes an entry of the test's day, in the transaction that signs the test. */
@Component
class ClinicalOfSignedTest {

    private final EntityManager entityManager;
    private final ClinicalStore clinical;
    private final AuditTrail auditTrail;

    ClinicalOfSignedTest(EntityManager entityManager, ClinicalStore clinical, AuditTrail auditTrail) {
        this.entityManager = entityManager;
        this.clinical = clinical;
        this.auditTrail = auditTrail;
    }

    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    void keep(TestSigned signed) {
        StoredClinicalDraft draft = entityManager.find(StoredClinicalDraft.class, signed.draftKey());
        if (draft == null || draft.workerKey() != signed.workerKey()) {
            return;
        }
        if (!draft.facts().isEmpty()) {
            boolean replaces =
                    clinical.on(signed.workerKey(), signed.testDate()).isPresent();
            clinical.keep(
                    signed.workerKey(),
                    signed.testDate(),
                    draft.facts(),
                    replaces ? "Taken down anew with a test of the same day" : "",
                    draft.typedBy());
            auditTrail.record(
                    replaces ? ClinicalAction.CLINICAL_ENTRY_REPLACED : ClinicalAction.CLINICAL_ENTRY_MADE,
                    "test",
                    Long.toString(signed.testKey()),
                    "as of " + signed.testDate());
        }
        entityManager.remove(draft);
    }
}
