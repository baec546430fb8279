package org.thresholdregister.platform.ui;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Dates as people read them and as files carry them. */
public final class Dates {

    private static final DateTimeFormatter ON_SCREEN = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private Dates() {}

    /** As on screen and paper: {@code 9 Mar 2026}. */
    public static String onScreen(LocalDate date) {
        return ON_SCREEN.format(date);
    }

    /** As in files: {@code 2026-03-09}. */
    public static String inFile(LocalDate date) {
        return DateTimeFormatter.ISO_LOCAL_DATE.format(date);
    }
}
