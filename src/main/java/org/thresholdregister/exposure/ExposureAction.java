package org.thresholdregister.exposure;

import org.thresholdregister.platform.audit.AuditAction;

/** What the audit trail says of noise. */
enum ExposureAction implements AuditAction {
    NOISE_MEASURED,
    NOISE_MEASUREMENT_WITHDRAWN,
    NOISE_RESULT_TOLD
}
