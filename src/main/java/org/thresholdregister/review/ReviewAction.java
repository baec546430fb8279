package org.thresholdregister.review;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of reviewing. */
enum ReviewAction implements AuditAction {
    WORKER_RECORD_OPENED,
    DECISION_ENTERED,
    EVIDENCE_STORED,
    EVIDENCE_FETCHED,
    POSTPONED,
    BOARD_DOWNLOADED,
    JUDGED_ANEW,
    ALTERATION_ACKNOWLEDGED,
    RULES_COMPARED
}
