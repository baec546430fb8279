package org.thresholdregister.audiograms;

import java.math.BigDecimal;
import java.util.Optional;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.validity.TestConditions;
import org.thresholdregister.core.validity.Transducer;

/**
 * How a test was made, as far as the record says. Texts that are not given are empty.
 *
 * @param hoursSinceNoise hours away from workplace noise before the test
 * @param protectorsWorn whether hearing protectors stood in for the quiet time
 * @param repeatAt1000Hz the second reading at 1000 Hz; not given where there was none
 */
public record TestFacts(
        Optional<BigDecimal> hoursSinceNoise,
        Optional<Boolean> protectorsWorn,
        String tester,
        String instrument,
        String transducer,
        String room,
        String remark,
        PerEar<Threshold> repeatAt1000Hz) {

    /** What a doubt about the test may rest on. */
    public TestConditions conditions() {
        return new TestConditions(hoursSinceNoise, protectorsWorn, Transducer.in(transducer), repeatAt1000Hz);
    }

    /** The same without the remark, which may be a clinical note. */
    public TestFacts withoutRemark() {
        return new TestFacts(hoursSinceNoise, protectorsWorn, tester, instrument, transducer, room, "", repeatAt1000Hz);
    }
}
