package org.thresholdregister.core.noise;

import java.math.BigDecimal;
import org.thresholdregister.core.regulation.Citation;

/** From when on a worker belongs to the programme: an eight-hour average of 85 dBA, or a dose of 50 percent. */
public final class ActionLevel {

    public static final Citation BASIS = new Citation("29 CFR 1910.95(c)(1)");

    /** That dose gathers over the whole of a long shift is OSHA's; the formula is that of a state plan's page. */
    public static final Citation LONG_SHIFTS =
            new Citation("OSHA letter of 26 March 1982; formula of a state plan's guidance page");

    private ActionLevel() {}

    /**
     * The steady level in dBA that gives a dose of 50 percent in a shift of these hours: 16.61 log10(50 / (12.5 h)) + 90.
     *
     * @param hours more than nothing, at most 24
     */
    public static double forShift(BigDecimal hours) {
        double length = new NoisePeriod(SoundLevel.ofDba(SoundLevel.LOWEST_DBA), hours)
                .hours()
                .doubleValue();
        return ExchangeRate.FIVE_DB.factor() * Math.log10(NoiseDose.ACTION_PERCENT / (12.5 * length)) + 90;
    }
}
