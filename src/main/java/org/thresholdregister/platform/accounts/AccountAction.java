package org.thresholdregister.platform.accounts;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of accounts. */
enum AccountAction implements AuditAction {
    SIGNED_IN,
    SIGN_IN_FAILED,
    SIGNED_OUT,
    ACCOUNT_ADDED,
    ACCOUNT_DEACTIVATED,
    ACCOUNT_REACTIVATED,
    PASSWORD_SET
}
