package org.thresholdregister.audiograms;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * How a test was made, as far as the record says. Texts that are not given are empty.
 *
 * @param hoursSinceNoise hours away from workplace noise before the test
 * @param protectorsWorn whether hearing protectors stood in for the quiet time
 */
public record TestFacts(
        Optional<BigDecimal> hoursSinceNoise,
        Optional<Boolean> protectorsWorn,
        String tester,
        String instrument,
        String transducer,
        String remark) {

    /** The same without the remark, which may be a clinical note. */
    public TestFacts withoutRemark() {
        return new TestFacts(hoursSinceNoise, protectorsWorn, tester, instrument, transducer, "");
    }
}
