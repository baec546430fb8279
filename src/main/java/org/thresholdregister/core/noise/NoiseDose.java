package org.thresholdregister.core.noise;

/**
 * Noise dose of a day in percent, as a rule counts it. A dose of another rule is another quantity: the threshold and the
 * criterion belong to the number.
 *
 * @param percent nothing or more
 */
public record NoiseDose(double percent, DoseRule rule) {

    /** The dose that corresponds to the action level of 85 dBA, where the criterion is 90 dBA and the rate 5 dB. */
    public static final double ACTION_PERCENT = 50;

    /** @throws IllegalArgumentException for less than nothing */
    public NoiseDose {
        if (!(percent >= 0) || Double.isInfinite(percent)) {
            throw new IllegalArgumentException("a dose is a number, nothing or more");
        }
    }

    /** D = 100 (C1/T1 + C2/T2 + ... + Cn/Tn), over the levels that the rule counts (29 CFR 1910.95 Appendix A I). */
    public static NoiseDose of(NoiseDay day, DoseRule rule) {
        double sum = 0;
        for (var spent : day.hoursByLevel().entrySet()) {
            if (rule.counts(spent.getKey())) {
                sum += spent.getValue().doubleValue() / rule.referenceHours(spent.getKey());
            }
        }
        return new NoiseDose(100 * sum, rule);
    }

    public boolean reaches(double limitPercent) {
        return Tolerance.reaches(percent, limitPercent);
    }

    public boolean exceeds(double limitPercent) {
        return Tolerance.exceeds(percent, limitPercent);
    }
}
