package org.thresholdregister.letters;

import java.util.List;

/**
 * What came of marking letters as given.
 *
 * @param letters how many are marked now
 * @param notes what could not be done, and why, a sentence each
 */
public record GivenResult(int letters, List<String> notes) {
    public GivenResult {
        notes = List.copyOf(notes);
    }
}
