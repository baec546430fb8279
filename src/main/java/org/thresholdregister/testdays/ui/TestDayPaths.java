package org.thresholdregister.testdays.ui;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** Addresses of this feature's pages, relative to the application. */
final class TestDayPaths {

    static final String DAYS = "test-days";
    static final String DAY = "test-day";
    static final String DUE = "due-tests";
    static final String BOOK = "book-test";
    static final String SHIFTS = "work-shifts";
    static final String WAITING = "protectors-until-baseline";
    static final String CALENDAR = "test-calendar";

    private TestDayPaths() {}

    static String day(long key) {
        return DAY + "/" + key;
    }

    static String book(String workerId) {
        return BOOK + "/" + URLEncoder.encode(workerId, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
