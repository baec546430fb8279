package org.thresholdregister.letters;

import java.util.Optional;
import org.thresholdregister.core.wording.Language;

/**
 * A letter to be printed.
 *
 * @param language empty for the worker's own
 * @param booked when and where a retest is, as the nurse writes it; empty for what is booked, or room to write
 */
public record LetterRequest(LetterOccasion occasion, Optional<Language> language, String booked) {

    public static final int LONGEST_BOOKED = 120;

    /** In the worker's own language. */
    public static LetterRequest of(LetterOccasion occasion) {
        return new LetterRequest(occasion, Optional.empty(), "");
    }
}
