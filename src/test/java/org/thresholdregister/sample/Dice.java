package org.thresholdregister.sample;

import java.util.List;
import java.util.Random;

/**
 * Chance that falls the same way every time. Each worker and topic has dice of its own, so that a change in one story
 * leaves all the others as they were. {@link Random} is used because its algorithm is specified.
 */
final class Dice {

    private static final long SEED = 20_161_101L;

    private final Random random;

    private Dice(long seed) {
        this.random = new Random(seed);
    }

    static Dice of(int workerNumber, String topic) {
        return new Dice(mixed(mixed(SEED + workerNumber) + topic.hashCode()));
    }

    /** Spreads neighbouring seeds apart; the finishing steps of the SplitMix64 generator. */
    private static long mixed(long seed) {
        long bits = seed + 0x9E3779B97F4A7C15L;
        bits = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
        bits = (bits ^ (bits >>> 27)) * 0x94D049BB133111EBL;
        return bits ^ (bits >>> 31);
    }

    boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    /** A whole number, both ends included. */
    int between(int lowest, int highest) {
        return lowest + random.nextInt(highest - lowest + 1);
    }

    double between(double lowest, double highest) {
        return lowest + (highest - lowest) * random.nextDouble();
    }

    double normal(double mean, double standardDeviation) {
        return mean + standardDeviation * random.nextGaussian();
    }

    <T> T pick(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
