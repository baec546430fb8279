package org.thresholdregister.core.population;

/**
 * A-weighted noise exposure level normalised to eight hours, averaged over the years of exposure, in dB: LEX,8h, which
 * has a 3 dB exchange rate. Without hearing protectors: a nominal attenuation is not to be subtracted.
 *
 * @param origin what the number was before it came here
 */
public record ExposureLevel(double decibels, Origin origin) {

    /** Where a level comes from. */
    public enum Origin {
        /** It is LEX,8h. */
        LEX_8H,
        /**
         * It is an eight-hour time-weighted average of 5 dB exchange. For steady noise of eight hours the two are equal;
         * otherwise the estimate misstates what the noise would do, and carries a mark that says so.
         */
        TWA_OF_5_DB_EXCHANGE
    }

    public static ExposureLevel lex8h(double decibels) {
        return new ExposureLevel(decibels, Origin.LEX_8H);
    }

    /** A time-weighted average of 5 dB exchange, as 29 CFR 1910.95 Appendix A computes it, knowingly taken as LEX,8h. */
    public static ExposureLevel takingAsLex8h(double twaOf5DbExchange) {
        return new ExposureLevel(twaOf5DbExchange, Origin.TWA_OF_5_DB_EXCHANGE);
    }
}
