package org.thresholdregister.core.scheduling;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.QuietRule;

/**
 * A test that somebody is due for.
 *
 * @param lastDay the last day on which it is in time
 * @param basis the paragraph that makes it due, or where the practice is written down
 * @param department empty where none is given
 * @param shift empty where the worker's hours are not known
 * @param quiet what the site's rule set asks of the hours before a test
 * @param missed how often the worker was called to this test and did not come
 */
public record DueTest(
        String workerId,
        Occasion occasion,
        LocalDate lastDay,
        Citation basis,
        String department,
        Optional<WorkShift> shift,
        QuietRule quiet,
        int missed) {

    /** Retests first, then by the last day in time, then who has missed most. */
    public static final Comparator<DueTest> BY_URGENCY = Comparator.comparing(
                    (DueTest due) -> due.occasion != Occasion.RETEST)
            .thenComparing(DueTest::lastDay)
            .thenComparing(Comparator.comparingInt(DueTest::missed).reversed())
            .thenComparing(DueTest::workerId)
            .thenComparing(DueTest::occasion);

    /** Days from a day to the last one in time; negative once it has gone by. */
    public long daysLeft(LocalDate day) {
        return ChronoUnit.DAYS.between(day, lastDay);
    }

    public boolean needsQuiet() {
        return occasion.needsQuiet(quiet);
    }
}
