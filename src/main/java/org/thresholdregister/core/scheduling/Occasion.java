package org.thresholdregister.core.scheduling;

import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.rules.QuietRule;

/** What somebody is called to a test for. */
public enum Occasion {
    /** To confirm or disprove a shift: it counts inside its window only, 29 CFR 1910.95(g)(7)(ii). */
    RETEST(TestPurpose.RETEST),
    /** The first test, which all later ones are compared with. */
    BASELINE(TestPurpose.BASELINE),
    /** Before the last day of employment; common practice. */
    EXIT(TestPurpose.EXIT),
    /** The next test in the rule set's interval. */
    ANNUAL(TestPurpose.ANNUAL);

    private final TestPurpose purpose;

    Occasion(TestPurpose purpose) {
        this.purpose = purpose;
    }

    public TestPurpose purpose() {
        return purpose;
    }

    /** Whether the test is worth nothing after its last day, rather than late. */
    public boolean endsWithItsLastDay() {
        return this == RETEST || this == EXIT;
    }

    /**
     * Whether people are to come rested from noise. The rule set says so of its tests. A retest needs it by common
     * practice, whatever the rule set: without it a passing shift would be confirmed.
     */
    public boolean needsQuiet(QuietRule rule) {
        return this == RETEST || rule.appliesBefore(purpose);
    }
}
