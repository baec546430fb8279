package org.thresholdregister.letters;

import java.util.Optional;
import org.thresholdregister.core.wording.LetterKind;

/**
 * Which printed letters to show.
 *
 * @param given whether they were given to their readers
 */
public record LetterFilter(String text, Optional<LetterKind> kind, Optional<Boolean> given) {

    public static final LetterFilter EVERYTHING = new LetterFilter("", Optional.empty(), Optional.empty());
}
