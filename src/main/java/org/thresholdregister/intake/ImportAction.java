package org.thresholdregister.intake;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of imports. */
enum ImportAction implements AuditAction {
    FILES_IMPORTED,
    WORKER_CHANGED,
    PROBLEMS_DOWNLOADED,
    LATE_CHANGES_DOWNLOADED
}
