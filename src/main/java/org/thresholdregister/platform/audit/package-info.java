/**
 * The audit trail: who did what to which record, and when. Entries are added and never changed.
 *
 * <p>A feature that changes a record has an enum of its own that implements {@link
 * org.thresholdregister.platform.audit.AuditAction}, and its service, inside the transaction of the change, calls
 * {@code auditTrail.record(RosterAction.WORKER_CHANGED, "worker", workerId, "site changed")}. Names and thresholds stay
 * out of the detail; refusals and sign-ins are noted without the feature's doing.
 */
@NullMarked
package org.thresholdregister.platform.audit;

import org.jspecify.annotations.NullMarked;
