package org.thresholdregister.instruments;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.calibration.DailyCheck;

/** A functional check without its readings. */
record CheckLine(
        long id, @Nullable Long corrects, boolean withdrawn, long unit, LocalDate day, DailyCheck.Verdict verdict) {

    long key() {
        return corrects == null ? id : corrects;
    }
}
