package org.thresholdregister.core.regulation;

/**
 * The place that a statement rests on, as a reader would look it up:
 * {@code 29 CFR 1910.95(g)(10)(i)}.
 */
public record Citation(String place) {

    /** The definition of a standard threshold shift. */
    public static final Citation STANDARD_THRESHOLD_SHIFT = new Citation("29 CFR 1910.95(g)(10)(i)");
    /** The optional allowance for aging. */
    public static final Citation AGE_ALLOWANCE = new Citation("29 CFR 1910.95(g)(10)(ii) and Appendix F");
    /** The comparison of each test with the baseline. */
    public static final Citation COMPARISON = new Citation("29 CFR 1910.95(g)(7)(i)");
    /** The retest that may stand as the annual test. */
    public static final Citation RETEST = new Citation("29 CFR 1910.95(g)(7)(ii)");
    /** Written notice of a shift. */
    public static final Citation NOTICE = new Citation("29 CFR 1910.95(g)(8)(i)");
    /** The first baseline. */
    public static final Citation BASELINE = new Citation("29 CFR 1910.95(g)(5)(i)");
    /** The yearly test. */
    public static final Citation ANNUAL_TEST = new Citation("29 CFR 1910.95(g)(6)");
    /** The revised baseline. */
    public static final Citation REVISED_BASELINE = new Citation("29 CFR 1910.95(g)(9)");
    /** The text of the professional guide on baseline revision, as the railroad agency adopted it. */
    public static final Citation REVISION_GUIDE = new Citation("49 CFR 227 Appendix C");
    /** The two tests of a recordable hearing loss. */
    public static final Citation RECORDABLE = new Citation("29 CFR 1904.10(a)");
    /** The audiogram that a shift is measured from for recording. */
    public static final Citation RECORDING_REFERENCE = new Citation("29 CFR 1904.10(b)(2)(i)");
    /** The other official reading of the reference, which takes the current baseline. */
    public static final Citation CURRENT_BASELINE_READING = new Citation("67 FR 77169, 17 December 2002");
    /** The level test, on the current audiogram. */
    public static final Citation RECORDING_LEVEL = new Citation("29 CFR 1904.10(b)(2)(ii)");
    /** The age allowance in recording. */
    public static final Citation RECORDING_AGE = new Citation("29 CFR 1904.10(b)(3)");
    /** Retest, entry within seven days, line-out. */
    public static final Citation RECORDING_RETEST = new Citation("29 CFR 1904.10(b)(4)");
    /** The finding that a loss is not work-related. */
    public static final Citation NOT_WORK_RELATED = new Citation("29 CFR 1904.10(b)(6)");

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
