package org.thresholdregister.instruments;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of instruments, rooms and testers. */
enum InstrumentAction implements AuditAction {
    EQUIPMENT_ENTERED,
    EQUIPMENT_CORRECTED,
    EQUIPMENT_WITHDRAWN
}
