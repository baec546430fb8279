package org.thresholdregister.testing;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of tests entered by hand. */
enum TestingAction implements AuditAction {
    TEST_SIGNED,
    TEST_SUPERSEDED,
    TEST_WITHDRAWN,
    TEST_DRAFT_DISCARDED
}
