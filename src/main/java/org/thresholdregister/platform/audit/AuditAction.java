package org.thresholdregister.platform.audit;

/**
 * Something worth a line in the audit trail. Each feature has an enum of its own that implements this; the constant's
 * name is what is stored, so it is never renamed.
 */
public interface AuditAction {
    String name();
}
