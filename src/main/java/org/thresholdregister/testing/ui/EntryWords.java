package org.thresholdregister.testing.ui;

import java.time.Clock;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.testing.EntryProblem;
import org.thresholdregister.testing.EntryProblem.Place;

/** What the page of a test says of a test that is typed. */
final class EntryWords {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM yyyy, HH:mm", Locale.ENGLISH);

    private EntryWords() {}

    /** What is wrong and how to mend it. */
    static String problem(EntryProblem problem) {
        return switch (problem.kind()) {
            case NO_THRESHOLD ->
                problem.threshold().map(EntryWords::place).orElse("A threshold")
                        + ": this is no hearing level. Type whole dB HL from " + HearingLevel.LOWEST_DB + " to "
                        + HearingLevel.HIGHEST_DB + ", n for no response, c where it could not be tested.";
            case NOTHING_TYPED -> "No threshold is typed yet.";
            case DATE_MISSING -> "Give the day of the test as 9 Mar 2026.";
            case DATE_TO_COME -> "This day has not come yet.";
            case DATE_BEFORE_BIRTH -> "This is before the worker was born. Look up both dates.";
            case PURPOSE_MISSING -> "Choose what the test is for.";
            case ON_RECORD ->
                "A test of this purpose and day is on record already. Choose another purpose or day, or correct the test"
                        + " on record from the worker's page.";
            case NO_HOURS -> "Type hours as a number, such as 14 or 14.5.";
            case TESTER_MISSING -> "Name who made the test.";
            case REASON_MISSING -> "Say why the test on record is wrong.";
            case SUPERSEDED_MEANWHILE ->
                "The test that this one was to take the place of counts no more. Go to the worker's page and look what"
                        + " took its place.";
        };
    }

    private static String place(Place place) {
        return Words.capitalised(Words.ear(place.ear())) + ", " + (place.isRepeat() ? "second reading at " : "")
                + place.frequency().hertz() + " Hz";
    }

    /** {@code annual test of 9 Mar 2026}. */
    static String name(RecordedTest test) {
        return Words.purpose(test.audiogram().purpose()) + " of "
                + Words.day(test.audiogram().date());
    }

    /** {@code 9 Mar 2026, 14:05}, by the clock's zone. */
    static String moment(Instant instant, Clock clock) {
        return MOMENT.format(instant.atZone(clock.getZone()));
    }
}
