package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.QuietTime;
import org.thresholdregister.core.scheduling.TestPlan;

/** The words of test days. */
public final class SchedulingWords {

    private static final DateTimeFormatter WITH_WEEKDAY =
            DateTimeFormatter.ofPattern("EEEE d MMM uuuu", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

    private SchedulingWords() {}

    /** {@code Tuesday 1 Dec 2026}. */
    public static String day(LocalDate date) {
        return WITH_WEEKDAY.format(date);
    }

    /** {@code 06:10}. */
    public static String time(LocalTime time) {
        return TIME.format(time);
    }

    /** {@code retest}. */
    public static String occasion(Occasion occasion) {
        return Words.purpose(occasion.purpose());
    }

    /** {@code in time until 31 Mar 2026, 29 CFR 1910.95(g)(7)(ii)}. */
    public static String lastDay(LocalDate lastDay, Citation basis) {
        return "in time until " + Words.day(lastDay) + ", " + basis;
    }

    /** {@code 24 people on Tuesday 1 Dec 2026, 3 of them retests}. */
    public static String people(LocalDate day, int people, int retests) {
        if (people == 0) {
            return "Nobody is on the list for " + day(day);
        }
        String ofThem = retests == 0
                ? "none of them a retest"
                : retests + " of them " + (retests == 1 ? "a retest" : "retests");
        return Counted.of(people, "person", "people") + " on " + day(day) + ", " + ofThem;
    }

    /** {@code 2 due people did not fit}. */
    public static String leftOut(int number) {
        return Counted.of(number, "due person", "due people") + " did not fit";
    }

    /** Why somebody has no time in the plan. */
    public static String why(TestPlan.Why why) {
        return switch (why) {
            case NO_TIME_LEFT -> "more urgent people have every time that would do";
            case TOO_LATE -> "the test would come after the last day on which it counts";
            case NO_QUIET_TIME ->
                "no time of these days leaves the hours away from noise, and protectors may not stand in for them";
        };
    }

    /** What to ask of a person who is called to a test. */
    public static String quiet(QuietTime quiet, int hours) {
        return switch (quiet) {
            case RESTED -> "Come before the shift: no workplace noise in the " + hours + " hours before.";
            case PROTECTORS_INSTEAD ->
                "Wear hearing protectors in all workplace noise of the " + hours + " hours before.";
            case TO_BE_ASKED -> "Shift not known: ask for " + hours + " hours away from workplace noise.";
            case NOT_NEEDED -> "No quiet hours are required.";
        };
    }

    /** What holds for everybody: stands at the foot of a run sheet. */
    public static String quietForAll(int hours) {
        return "A baseline test and a retest follow " + hours
                + " hours without workplace noise; before a retest that is"
                + " common practice. Everybody is told to keep away from loud noise outside work as well in these hours"
                + " (29 CFR 1910.95(g)(5)(iv)).";
    }

    /** {@code did not come twice before}; empty for nobody missed. */
    public static String missed(int times) {
        return switch (times) {
            case 0 -> "";
            case 1 -> "did not come once before";
            case 2 -> "did not come twice before";
            default -> "did not come " + times + " times before";
        };
    }

    /** Counts for a calendar, which names nobody: {@code 3 retests due}. */
    public static String due(FollowUpKind kind, int number) {
        return switch (kind) {
            case RETEST -> Counted.of(number, "retest", "retests") + " due";
            case NOTICE, RECORD, ANNUAL_TEST, BASELINE_TEST -> Counted.followUps(kind, number) + " due";
        };
    }

    /** The reason that stands beside the decision that a retest is booked. */
    public static String bookedFor(LocalDate day, LocalTime time) {
        return "booked for " + Words.day(day) + ", " + time(time);
    }
}
