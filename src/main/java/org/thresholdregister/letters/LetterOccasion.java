package org.thresholdregister.letters;

import java.time.LocalDate;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.wording.LetterKind;

/**
 * What a letter is due for.
 *
 * @param testKey the register's own key of the test that it is about
 */
public record LetterOccasion(String workerId, LetterKind kind, long testKey, LocalDate testDate, Ears ears) {}
