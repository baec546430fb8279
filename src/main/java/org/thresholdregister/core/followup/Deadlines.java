package org.thresholdregister.core.followup;

import java.time.LocalDate;

/** The periods of 29 CFR 1910.95 and 1904.10, counted in calendar days and months from a test or a first exposure. */
public final class Deadlines {

    /** 29 CFR 1910.95(g)(7)(ii) and 1904.10(b)(4); from the test, not from its results: letter of 4 March 2004. */
    public static final int RETEST_DAYS = 30;

    /** 29 CFR 1910.95(g)(8)(i), calendar days: letter of 25 June 1986. */
    public static final int NOTICE_DAYS = 21;

    /** After a retest that confirms, 29 CFR 1904.10(b)(4). */
    public static final int RECORD_AFTER_RETEST_DAYS = 7;

    /**
     * After a test that nobody retested. The rule leaves this open; the last day of the retest option is taken, and
     * seven days from the test is the earliest reading.
     */
    public static final int RECORD_WITHOUT_RETEST_DAYS = 30;

    /** 29 CFR 1910.95(g)(6). */
    public static final int ANNUAL_TEST_MONTHS = 12;

    /** 29 CFR 1910.95(g)(5)(i). */
    public static final int BASELINE_TEST_MONTHS = 6;

    private Deadlines() {}

    /** The last day on which a retest may take the place of a test of this day: day 30 counts, day 31 does not. */
    public static LocalDate lastRetestDay(LocalDate testDate) {
        return testDate.plusDays(RETEST_DAYS);
    }

    /** The test date is taken as the day of determination, which is the cautious reading. */
    public static LocalDate noticeBy(LocalDate settlingTestDate) {
        return settlingTestDate.plusDays(NOTICE_DAYS);
    }

    public static LocalDate recordAfterRetestBy(LocalDate retestDate) {
        return retestDate.plusDays(RECORD_AFTER_RETEST_DAYS);
    }

    public static LocalDate recordWithoutRetestBy(LocalDate testDate) {
        return testDate.plusDays(RECORD_WITHOUT_RETEST_DAYS);
    }

    public static LocalDate annualTestBy(LocalDate lastTestDate) {
        return lastTestDate.plusMonths(ANNUAL_TEST_MONTHS);
    }

    public static LocalDate baselineTestBy(LocalDate enrolledFrom) {
        return enrolledFrom.plusMonths(BASELINE_TEST_MONTHS);
    }
}
