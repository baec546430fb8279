package org.thresholdregister.core.meaning.impairment;

import java.util.List;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.meaning.Basis;

/**
 * A published formula for the percentage of hearing handicap. Both formulas here take the mean of 500, 1000, 2000 and
 * 3000 Hz, 1.5 % for each dB over 25 dB HL, and count the better ear five times. Neither corrects for age.
 *
 * @param id who published it
 * @param version which version
 * @param limit what happens to single thresholds before they are added up
 * @param givesWholePerson whether the formula goes on to an impairment of the whole person
 */
public record HandicapFormula(String id, String version, ThresholdLimit limit, boolean givesWholePerson, Basis basis) {

    /** The frequencies of both formulas. */
    public static final List<Frequency> FREQUENCIES =
            List.of(Frequency.HZ_500, Frequency.HZ_1000, Frequency.HZ_2000, Frequency.HZ_3000);

    /** The formula of the American Academy of Otolaryngology, thresholds as they were measured. */
    public static final HandicapFormula AAO_HNS_1979 = new HandicapFormula(
            "AAO-HNS",
            "1979",
            ThresholdLimit.AS_MEASURED,
            false,
            Basis.lookedUp("AAO-HNS 1979, Guide for the evaluation of hearing handicap"));

    /**
     * The same formula as the American Medical Association's guides use it. The limit of 0 to 100 dB and the 35 % for
     * the whole person are not verified against the text.
     */
    public static final HandicapFormula AMA_GUIDES = new HandicapFormula(
            "AMA Guides",
            "6th edition",
            ThresholdLimit.FROM_0_TO_100,
            true,
            Basis.unverified("AMA Guides to the Evaluation of Permanent Impairment, 6th edition, section 11.2a"));

    /** What counts for a threshold outside 0 to 100 dB HL. */
    public enum ThresholdLimit {
        /** The threshold itself. */
        AS_MEASURED,
        /** 0 below 0 dB HL, 100 above 100 dB HL; a missing threshold then counts as something from 0 to 100. */
        FROM_0_TO_100
    }

    /** This formula with another limit. */
    public HandicapFormula with(ThresholdLimit other) {
        return new HandicapFormula(id, version, other, givesWholePerson, basis);
    }

    DecibelRange counted(Threshold threshold) {
        return switch (limit) {
            case AS_MEASURED -> threshold.range();
            case FROM_0_TO_100 -> threshold.range().limitedTo(0, 100);
        };
    }
}
