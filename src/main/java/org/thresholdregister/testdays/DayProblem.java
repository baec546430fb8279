package org.thresholdregister.testdays;

/** What stands against a test day that somebody plans, beside which field. */
public record DayProblem(Field field, String words) {

    /** The fields of a test day. */
    public enum Field {
        SITE,
        PLACE,
        FIRST_DAY,
        LAST_DAY,
        FROM,
        TO,
        PER_HOUR,
        BREAKS,
        NURSE
    }
}
