package org.thresholdregister.core.population;

/** The standard normal distribution, by its series; StrictMath, so that every machine says the same. */
final class NormalDistribution {

    /** Beyond this the upper tail is smaller than anything asked for here. */
    private static final double FAR = 8;

    private static final double ROOT_OF_TWO_PI = StrictMath.sqrt(2 * StrictMath.PI);

    /** Halvings that bring an interval of 16 to the precision of a double. */
    private static final int HALVINGS = 60;

    private NormalDistribution() {}

    /** The share above {@code quantile}: P(Z &gt; z) = 1/2 - density(z) * (z + z^3/3 + z^5/(3*5) + ...). */
    static double shareAbove(double quantile) {
        double z = Math.clamp(quantile, -FAR, FAR);
        double term = z;
        double sum = z;
        for (int odd = 3; sum + term != sum; odd += 2) {
            term *= z * z / odd;
            sum += term;
        }
        return 0.5 - sum * StrictMath.exp(-z * z / 2) / ROOT_OF_TWO_PI;
    }

    /** The value that has this share above it. */
    static double quantileAbove(double share) {
        double below = -FAR;
        double above = FAR;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (below + above) / 2;
            if (shareAbove(middle) > share) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return share == 0.5 ? 0 : (below + above) / 2;
    }
}
