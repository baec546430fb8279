package org.thresholdregister.core.population;

import org.thresholdregister.core.meaning.Basis;

/**
 * Which edition of ISO 7029 the age component comes from. They differ much at high frequencies (men of 60 at 4000 Hz:
 * 28 dB or 20 dB), so that every result names its edition.
 */
public enum AgeEdition {
    /** The data that ISO 1999:2013 was written with, for reproducing its annex; 18 to 70 years. */
    ISO_7029_2000(Basis.unverified("ISO 7029:2000"), 70),
    /** The current edition, for new work; 18 to 80 years, above 70 years for information from 3000 Hz up. */
    ISO_7029_2017(Basis.lookedUp("ISO 7029:2017"), 80);

    private final Basis basis;
    private final int oldestYears;

    AgeEdition(Basis basis, int oldestYears) {
        this.basis = basis;
        this.oldestYears = oldestYears;
    }

    public Basis basis() {
        return basis;
    }

    /** The greatest age in years that the edition covers. */
    public int oldestYears() {
        return oldestYears;
    }
}
