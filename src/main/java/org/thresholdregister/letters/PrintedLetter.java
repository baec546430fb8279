package org.thresholdregister.letters;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.wording.Language;

/**
 * A letter as it was printed.
 *
 * @param key the register's own
 * @param printedBy account of whoever printed it
 * @param givenOn the day on which its reader was given it, with {@code method}; empty until then
 */
public record PrintedLetter(
        long key,
        LetterOccasion occasion,
        String familyName,
        String givenName,
        String site,
        Language language,
        LocalDate printedOn,
        String printedBy,
        Optional<LocalDate> givenOn,
        Optional<LetterMethod> method) {}
