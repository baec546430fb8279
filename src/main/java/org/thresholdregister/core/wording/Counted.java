package org.thresholdregister.core.wording;

import java.util.List;
import java.util.Locale;
import org.thresholdregister.core.followup.FollowUpKind;

/** Numbers with what they count, and days to go: {@code 1 written notice}, {@code 5 days overdue}. */
public final class Counted {

    private Counted() {}

    /** The number with its noun; thousands are set apart by a comma. */
    public static String of(int number, String one, String many) {
        return String.format(Locale.ENGLISH, "%,d %s", number, number == 1 ? one : many);
    }

    /** {@code 3 optional retests}: a retest is the employer's choice, 29 CFR 1910.95(g)(7)(ii), and the word says so. */
    public static String followUps(FollowUpKind kind, int number) {
        return switch (kind) {
            case RETEST -> of(number, "optional retest", "optional retests");
            case NOTICE -> of(number, "written notice", "written notices");
            case RECORD -> of(number, "entry on the injury log", "entries on the injury log");
            case ANNUAL_TEST -> of(number, "annual test", "annual tests");
            case BASELINE_TEST -> of(number, "baseline test", "baseline tests");
        };
    }

    /** @param days days from today to the date; negative once it has gone by */
    public static String daysLeft(long days) {
        if (days == 0) {
            return "due today";
        }
        long number = Math.abs(days);
        return number + (number == 1 ? " day " : " days ") + (days > 0 ? "left" : "overdue");
    }

    /** {@code is} or {@code are}. */
    public static String isOrAre(int number) {
        return number == 1 ? "is" : "are";
    }

    /** What stands between the parts of a listing: a comma, {@code and}, or nothing after the last. */
    public static String joint(int part, List<?> parts) {
        int after = parts.size() - 1 - part;
        return after == 0 ? "" : after == 1 ? " and " : ", ";
    }
}
