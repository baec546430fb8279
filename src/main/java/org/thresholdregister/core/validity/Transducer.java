package org.thresholdregister.core.validity;

import java.util.Locale;

/** What the tones were heard through, as far as it decides how much of a tone crosses to the other ear. */
public enum Transducer {
    SUPRA_AURAL(40, FlagSource.CROSS_HEARING_SUPRA_AURAL),
    INSERT(55, FlagSource.CROSS_HEARING_INSERT),
    /** Not said; the smaller difference is taken, which flags more. */
    NOT_KNOWN(40, FlagSource.CROSS_HEARING_SUPRA_AURAL);

    private final int crossHearingFromDecibels;
    private final FlagSource source;

    Transducer(int crossHearingFromDecibels, FlagSource source) {
        this.crossHearingFromDecibels = crossHearingFromDecibels;
        this.source = source;
    }

    /** What a record's free text says: it holds the word {@code insert} or {@code supra}, or nothing is known. */
    public static Transducer in(String text) {
        String words = text.toLowerCase(Locale.ROOT);
        boolean insert = words.contains("insert");
        boolean supraAural = words.contains("supra");
        if (insert == supraAural) {
            return NOT_KNOWN;
        }
        return insert ? INSERT : SUPRA_AURAL;
    }

    /** From this difference between the ears on, in dB, the better ear may have heard the worse ear's tone. */
    public int crossHearingFromDecibels() {
        return crossHearingFromDecibels;
    }

    FlagSource source() {
        return source;
    }
}
