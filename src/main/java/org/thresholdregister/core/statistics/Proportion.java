package org.thresholdregister.core.statistics;

/**
 * So many of so many.
 *
 * @param count of those in question, 0 to {@code of}
 * @param of how many there are in all, at least 1
 */
public record Proportion(int count, int of) {

    /** The standard normal deviate that leaves 2.5 % on each side. */
    static final double Z_95 = 1.959963984540054;

    /** @throws IllegalArgumentException for counts outside their ranges */
    public Proportion {
        if (of < 1 || count < 0 || count > of) {
            throw new IllegalArgumentException("a proportion is of at least one, and of no more than there are");
        }
    }

    /** 0 to 1. */
    public double rate() {
        return (double) count / of;
    }

    /** In per cent, 0 to 100. */
    public double percent() {
        return 100 * rate();
    }

    /**
     * The score interval of Wilson (1927), 0 to 1, of 95 %. It holds also for none and for all, and stays between 0 and
     * 1. Like every interval here it takes the people for independent of each other.
     */
    public Interval wilson() {
        double n = of;
        double p = rate();
        double z2 = Z_95 * Z_95;
        double centre = (p + z2 / (2 * n)) / (1 + z2 / n);
        double half = Z_95 * Math.sqrt(p * (1 - p) / n + z2 / (4 * n * n)) / (1 + z2 / n);
        return new Interval(count == 0 ? 0 : centre - half, count == of ? 1 : centre + half);
    }

    /** The chance of this count or more where each of them is in question with chance {@code rate}, 0 to 1. */
    public double chanceOfAsManyOrMore(double rate) {
        return Chances.binomialFrom(count, of, rate);
    }

    /** The chance of this count or fewer where each of them is in question with chance {@code rate}, 0 to 1. */
    public double chanceOfAsManyOrFewer(double rate) {
        return Chances.binomialUpTo(count, of, rate);
    }
}
