package org.thresholdregister.core.summary;

/** What the year is counted by. The order is that of files and screens. */
public enum Measure {
    /** People with a test that was judged, or that is their baseline. */
    WORKERS_TESTED("workers_tested", "Workers tested"),
    /** Annual tests and exit tests. */
    ANNUAL_TESTS("annual_tests", "Annual and exit tests"),
    /** Shifts that a test itself shows, or that its retest shows in its place. */
    SHIFTS_FOUND("shifts_found", "Shifts found"),
    SHIFTS_CONFIRMED("shifts_confirmed", "Shifts confirmed"),
    SHIFTS_NOT_CONFIRMED("shifts_not_confirmed", "Shifts not confirmed by retest"),
    SHIFTS_AWAITING_RETEST("shifts_awaiting_retest", "Shifts awaiting a retest"),
    /** Tests on which at least one ear could not be decided. */
    UNDECIDED_TESTS("undecided_tests", "Tests undecided"),
    RECORDABLE_CASES("recordable_cases", "Recordable cases");

    private final String word;
    private final String title;

    Measure(String word, String title) {
        this.word = word;
        this.title = title;
    }

    /** The word used in files. */
    public String word() {
        return word;
    }

    /** The heading used on screens and paper. */
    public String title() {
        return title;
    }
}
