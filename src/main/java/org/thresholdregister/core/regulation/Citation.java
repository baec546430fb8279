package org.thresholdregister.core.regulation;

/**
 * The place that a statement rests on, as a reader would look it up:
 * {@code 29 CFR 1910.95(g)(10)(i)}.
 */
public record Citation(String place) {

    /** The text of the professional guide on baseline revision, as the railroad agency adopted it. */
    public static final Citation REVISION_GUIDE = new Citation("49 CFR 227 Appendix C");
    /** The other official reading of the recording reference, which takes the current baseline. */
    public static final Citation CURRENT_BASELINE_READING = new Citation("67 FR 77169, 17 December 2002");

    public Citation {
        if (place.isBlank()) {
            throw new IllegalArgumentException("a citation names a place");
        }
    }

    @Override
    public String toString() {
        return place;
    }
}
