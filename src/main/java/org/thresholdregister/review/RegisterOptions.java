package org.thresholdregister.review;

import java.time.LocalDate;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.JudgingOptions;

/** How the register judges: baseline revisions are proposed, and a professional decides. */
final class RegisterOptions {

    private RegisterOptions() {}

    static JudgingOptions asOf(LocalDate today) {
        return JudgingOptions.asOf(today).withBaselineRevision(BaselineRevision.PROPOSE);
    }
}
