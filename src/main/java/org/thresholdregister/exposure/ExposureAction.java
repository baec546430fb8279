package org.thresholdregister.exposure;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of noise. */
enum ExposureAction implements AuditAction {
    NOISE_MEASURED,
    NOISE_MEASUREMENT_WITHDRAWN,
    NOISE_REPORT_FETCHED,
    NOISE_RESULT_TOLD,
    NOISE_NOTICES_PRINTED,
    PROGRAMME_ENTERED,
    PROGRAMME_LEFT,
    EXPOSURE_TAKEN_OVER,
    PROCESS_CHANGED,
    PROCESS_CHANGE_SETTLED,
    NOISE_CONTROL_LISTED,
    NOISE_CONTROL_DONE,
    STANDARD_SEEN,
    NOISE_INTERVAL_SET
}
