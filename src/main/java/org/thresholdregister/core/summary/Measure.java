package org.thresholdregister.core.summary;

/** What the year is counted by. The order is that of files and screens. */
public enum Measure {
    WORKERS_TESTED(
            "workers_tested",
            "Workers tested",
            "Workers with at least one test in the year that was judged or is their baseline."),
    ANNUAL_TESTS("annual_tests", "Annual and exit tests", "Annual tests and exit tests, one for both ears."),
    SHIFTS_FOUND(
            "shifts_found",
            "Shifts found",
            "Tests that show a standard threshold shift in at least one ear, or whose retest shows one in their place."),
    SHIFTS_CONFIRMED(
            "shifts_confirmed",
            "Shifts confirmed",
            "Shifts found that a retest showed as well, or that no retest answered within 30 days."),
    SHIFTS_NOT_CONFIRMED(
            "shifts_not_confirmed", "Shifts not confirmed by retest", "Shifts found that the retest did not show."),
    SHIFTS_AWAITING_RETEST(
            "shifts_awaiting_retest",
            "Shifts awaiting a retest",
            "Shifts found whose 30 days for a retest are not over."),
    UNDECIDED_TESTS(
            "undecided_tests",
            "Tests undecided",
            "Tests on which at least one ear could not be decided from what is on record."),
    RECORDABLE_CASES(
            "recordable_cases",
            "Recordable cases",
            "Confirmed shifts that the record makes recordable, one per person and date.");

    private final String word;
    private final String title;
    private final String meaning;

    Measure(String word, String title, String meaning) {
        this.word = word;
        this.title = title;
        this.meaning = meaning;
    }

    /** The word used in files. */
    public String word() {
        return word;
    }

    /** The heading used on screens and paper. */
    public String title() {
        return title;
    }

    /** What is counted, as a sentence. */
    public String meaning() {
        return meaning;
    }
}
