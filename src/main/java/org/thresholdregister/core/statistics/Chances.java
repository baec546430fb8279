package org.thresholdregister.core.statistics;

/** Chances of counts, from the logarithms of factorials. */
final class Chances {

    private static final int TABLED = 256;
    private static final double[] LOG_FACTORIAL = new double[TABLED];

    static {
        for (int n = 2; n < TABLED; n++) {
            LOG_FACTORIAL[n] = LOG_FACTORIAL[n - 1] + Math.log(n);
        }
    }

    private Chances() {}

    /** The natural logarithm of {@code n} factorial; beyond the table by Stirling's series, good to 1e-13. */
    static double logFactorial(int n) {
        if (n < TABLED) {
            return LOG_FACTORIAL[n];
        }
        double x = n;
        return x * Math.log(x)
                - x
                + 0.5 * Math.log(2 * Math.PI * x)
                + 1 / (12 * x)
                - 1 / (360 * x * x * x)
                + 1 / (1260 * Math.pow(x, 5));
    }

    static double logChoose(int n, int k) {
        return logFactorial(n) - logFactorial(k) - logFactorial(n - k);
    }

    static double binomial(int k, int n, double p) {
        if (p <= 0 || p >= 1) {
            return (p <= 0 ? k == 0 : k == n) ? 1 : 0;
        }
        return Math.exp(logChoose(n, k) + k * Math.log(p) + (n - k) * Math.log1p(-p));
    }

    static double binomialFrom(int k, int n, double p) {
        double sum = 0;
        for (int i = k; i <= n; i++) {
            sum += binomial(i, n, p);
        }
        return Math.min(1, sum);
    }

    static double binomialUpTo(int k, int n, double p) {
        double sum = 0;
        for (int i = 0; i <= k; i++) {
            sum += binomial(i, n, p);
        }
        return Math.min(1, sum);
    }
}
