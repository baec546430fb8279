package org.thresholdregister.employment;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of working lives. */
enum EmploymentAction implements AuditAction {
    WORK_EVENT_ENTERED,
    WORK_EVENT_CORRECTED,
    WORK_EVENT_TAKEN_BACK,
    PLANT_SOLD,
    RECORDS_HANDED_OVER
}
