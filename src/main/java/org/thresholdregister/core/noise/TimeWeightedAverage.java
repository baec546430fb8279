package org.thresholdregister.core.noise;

import java.util.Optional;

/**
 * Eight-hour time-weighted average in dBA: the steady level that would give the same dose in eight hours, whatever the
 * length of the shift. Averages of 5 and 3 dB are different quantities and are never compared with each other.
 */
public record TimeWeightedAverage(double decibels, ExchangeRate exchange) {

    /** The action level of 29 CFR 1910.95(c), 30 CFR 62.101 and 49 CFR 227.5. */
    public static final double ACTION_LEVEL_DBA = 85;

    /** An average of 5 dB exchange, as the rules of the United States use it. */
    public static TimeWeightedAverage ofDba(double decibels) {
        return new TimeWeightedAverage(SoundLevel.ofDba(decibels).decibels(), ExchangeRate.FIVE_DB);
    }

    /**
     * TWA = 16.61 log10(D/100) + 90 (29 CFR 1910.95 Appendix A II), or with the factor and criterion of the dose's rule.
     * Empty for no dose at all, which has no average.
     */
    public static Optional<TimeWeightedAverage> of(NoiseDose dose) {
        if (dose.percent() == 0) {
            return Optional.empty();
        }
        DoseRule rule = dose.rule();
        return Optional.of(new TimeWeightedAverage(
                rule.exchange().factor() * Math.log10(dose.percent() / 100) + rule.criterionDba(), rule.exchange()));
    }

    /**
     * The dose that gives this average.
     *
     * @throws IllegalArgumentException for a rule of another exchange rate
     */
    public NoiseDose dose(DoseRule rule) {
        if (rule.exchange() != exchange) {
            throw new IllegalArgumentException("an average of one exchange rate has no dose of another");
        }
        return new NoiseDose(100 * Math.pow(10, (decibels - rule.criterionDba()) / exchange.factor()), rule);
    }

    /** Whether it is at least this high. */
    public boolean reaches(double dba) {
        return Tolerance.reaches(decibels, dba);
    }
}
