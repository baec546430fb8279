package org.thresholdregister.letters;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.wording.Language;

/**
 * A letter that is due and not printed.
 *
 * @param dueDate the last day for it where a rule set names one
 * @param language by the roster
 */
public record WaitingLetter(
        LetterOccasion occasion,
        String familyName,
        String givenName,
        String site,
        Optional<LocalDate> dueDate,
        Language language) {}
