package org.thresholdregister.review;

import java.util.Optional;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;

/**
 * Which shifts a list shows.
 *
 * @param year calendar year of the test
 * @param site only this site, or those without one where the text is empty
 * @param department likewise
 * @param text words that the worker's name or number must hold; empty for all
 */
public record ShiftFilter(
        int year,
        Optional<String> site,
        Optional<String> department,
        Optional<Outcome> outcome,
        Optional<Recordability> recordable,
        String text) {

    /** All shifts of a year. */
    public static ShiftFilter ofYear(int year) {
        return new ShiftFilter(year, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "");
    }
}
