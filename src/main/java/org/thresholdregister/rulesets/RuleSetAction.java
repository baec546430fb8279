package org.thresholdregister.rulesets;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of rule sets. */
enum RuleSetAction implements AuditAction {
    RULE_SET_CHOSEN,
    HOLIDAY_ADDED,
    HOLIDAY_REMOVED
}
