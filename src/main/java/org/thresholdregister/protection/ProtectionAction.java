package org.thresholdregister.protection;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of protectors and training. */
enum ProtectionAction implements AuditAction {
    PROTECTOR_ADDED,
    PROTECTOR_RETIRED,
    PROTECTION_METHOD_CHOSEN,
    PROTECTOR_ISSUED,
    PROTECTOR_ISSUE_ENDED,
    PROTECTOR_ISSUE_WITHDRAWN,
    PROTECTION_RECORD_OPENED,
    FIT_TEST_ENTERED,
    FIT_TEST_WITHDRAWN,
    FIT_TEST_DOCUMENT_FETCHED,
    TRAINING_ENTERED,
    TRAINING_SHEET_KEPT,
    TRAINING_SHEET_FETCHED,
    TRAINING_SHEET_PRINTED,
    ATTENDANCE_ENTERED,
    ATTENDANCE_WITHDRAWN,
    CASE_MOVED
}
