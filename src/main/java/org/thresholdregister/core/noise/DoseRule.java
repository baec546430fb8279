package org.thresholdregister.core.noise;

import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/**
 * How a rule counts noise: a day of eight hours at the criterion level is a dose of 100 percent. The same day has another
 * dose for each threshold.
 *
 * @param criterionDba the level that fills the dose in eight hours
 * @param fromDba levels under this threshold are left out
 * @param toDba the rule asks for levels up to here; higher ones are counted too, by the same formula, and said to be so
 */
public record DoseRule(
        double criterionDba,
        ExchangeRate exchange,
        double fromDba,
        double toDba,
        Citation basis,
        Provenance provenance) {

    /** For the action level: 80 to 130 dBA. */
    public static final DoseRule OSHA_ACTION = new DoseRule(
            90,
            ExchangeRate.FIVE_DB,
            80,
            130,
            new Citation("29 CFR 1910.95(c)(1), (d)(2)(i) and Appendix A"),
            Provenance.LOOKED_UP);

    /** For the limit: Table G-16 has nothing under 90 dBA. */
    public static final DoseRule OSHA_LIMIT = new DoseRule(
            90,
            ExchangeRate.FIVE_DB,
            90,
            130,
            new Citation("29 CFR 1910.95(b)(1) and Table G-16"),
            Provenance.LOOKED_UP);

    public static final DoseRule MSHA_ACTION =
            new DoseRule(90, ExchangeRate.FIVE_DB, 80, 130, new Citation("30 CFR 62.101"), Provenance.LOOKED_UP);

    public static final DoseRule MSHA_LIMIT =
            new DoseRule(90, ExchangeRate.FIVE_DB, 90, 140, new Citation("30 CFR 62.101"), Provenance.FROM_MEMORY);

    public static final DoseRule FRA_ACTION = new DoseRule(
            90, ExchangeRate.FIVE_DB, 80, 140, new Citation("49 CFR 227.5 and 227.103"), Provenance.LOOKED_UP);

    /** A recommendation, not a rule; the range of levels is from memory, the formulas are looked up. */
    public static final DoseRule NIOSH = new DoseRule(
            85, ExchangeRate.THREE_DB, 80, 140, new Citation("NIOSH Publication 98-126"), Provenance.FROM_MEMORY);

    /**
     * The hours at this level that fill the dose: T = 8 / 2^((L - criterion) / exchange rate), which is Table G-16a for a
     * criterion of 90 dBA and 5 dB.
     */
    public double referenceHours(SoundLevel level) {
        return 8 / Math.pow(2, (level.decibels() - criterionDba) / exchange.decibels());
    }

    /** Whether a level is counted at all. */
    public boolean counts(SoundLevel level) {
        return level.reaches(fromDba);
    }
}
