package org.thresholdregister.clinical;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of the clinical part: that something was entered, never what. */
enum ClinicalAction implements AuditAction {
    CLINICAL_ENTRY_MADE,
    CLINICAL_ENTRY_REPLACED,
    REFUSAL_ENTERED,
    REFUSAL_TAKEN_BACK,
    REFUSAL_SHEET_FETCHED
}
