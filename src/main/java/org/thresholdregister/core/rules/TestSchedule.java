package org.thresholdregister.core.rules;

import java.time.LocalDate;

/**
 * When the next test is due.
 *
 * @param baseline from the first day of enrolment
 * @param early from the last test, in the first {@code earlyYears} after the first test
 * @param later from the last test, afterwards
 */
public record TestSchedule(Deadline baseline, Deadline early, int earlyYears, Deadline later) {

    static TestSchedule every(Deadline baseline, Deadline interval) {
        return new TestSchedule(baseline, interval, 0, interval);
    }

    public LocalDate baselineBy(LocalDate enrolledFrom, Holidays holidays) {
        return baseline.after(enrolledFrom, holidays);
    }

    public LocalDate nextBy(LocalDate firstTest, LocalDate lastTest, Holidays holidays) {
        Deadline interval = lastTest.isBefore(firstTest.plusYears(earlyYears)) ? early : later;
        return interval.after(lastTest, holidays);
    }
}
