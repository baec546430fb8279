package org.thresholdregister.core.watch;

/**
 * How closely is watched.
 *
 * @param biasDb the bias in dB that is to be found soon; half of it is taken off each test's difference
 * @param testsBetweenFalseSignals for how many tests of a faultless unit one false signal is accepted; from it each
 *     channel has its limit
 */
public record WatchSettings(double biasDb, int testsBetweenFalseSignals) {

    public static final WatchSettings USUAL = new WatchSettings(5, 2000);

    /** @throws IllegalArgumentException for a bias that is none, or less than 100 tests */
    public WatchSettings {
        if (!(biasDb > 0) || testsBetweenFalseSignals < 100) {
            throw new IllegalArgumentException(
                    "a bias above 0 dB is watched for, at one false signal in 100 tests or more");
        }
    }
}
