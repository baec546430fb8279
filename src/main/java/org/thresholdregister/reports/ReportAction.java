package org.thresholdregister.reports;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of reports. */
enum ReportAction implements AuditAction {
    SUMMARY_DOWNLOADED
}
