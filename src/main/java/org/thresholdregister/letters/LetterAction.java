package org.thresholdregister.letters;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of letters. */
enum LetterAction implements AuditAction {
    LETTER_PRINTED,
    LETTER_REPRINTED,
    LETTER_GIVEN,
    LETTER_TEXT_SAVED
}
