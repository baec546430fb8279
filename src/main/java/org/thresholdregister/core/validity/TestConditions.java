package org.thresholdregister.core.validity;

import java.math.BigDecimal;
import java.util.Optional;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;

/**
 * How a test was made, as far as the record says.
 *
 * @param hoursSinceNoise hours away from workplace noise before the test
 * @param protectorsWorn whether hearing protectors stood in for the quiet time
 * @param repeatAt1000Hz the second reading at 1000 Hz; not given where there was none
 */
public record TestConditions(
        Optional<BigDecimal> hoursSinceNoise,
        Optional<Boolean> protectorsWorn,
        Transducer transducer,
        PerEar<Threshold> repeatAt1000Hz) {

    /** No second reading at 1000 Hz. */
    public static final PerEar<Threshold> NO_REPEAT = PerEar.from(ear -> Threshold.notGiven());

    /** The record says nothing. */
    public static final TestConditions NOT_ON_RECORD =
            new TestConditions(Optional.empty(), Optional.empty(), Transducer.NOT_KNOWN, NO_REPEAT);

    /** The same with a second reading at 1000 Hz. */
    public TestConditions withRepeat(PerEar<Threshold> repeat) {
        return new TestConditions(hoursSinceNoise, protectorsWorn, transducer, repeat);
    }

    boolean protectorsStoodIn() {
        return protectorsWorn.orElse(false);
    }
}
