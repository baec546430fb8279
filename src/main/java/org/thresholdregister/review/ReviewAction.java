package org.thresholdregister.review;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of reviewing. */
enum ReviewAction implements AuditAction {
    WORKER_RECORD_OPENED,
    DECISION_ENTERED,
    JUDGED_ANEW,
    ALTERATION_ACKNOWLEDGED,
    RULES_COMPARED
}
