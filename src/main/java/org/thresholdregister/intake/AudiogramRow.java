package org.thresholdregister.intake;

import java.math.BigDecimal;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.validity.TestConditions;
import org.thresholdregister.core.validity.Transducer;

/**
 * One test of an audiograms file. Texts are empty where nothing is given.
 *
 * @param hoursSinceNoise hours without workplace noise before the test
 * @param protectorsWorn whether protectors stood in for the quiet time
 * @param repeatAt1000Hz the second reading at 1000 Hz; not given where there was none
 * @param contentHash tells differing rows of one file apart; means nothing between files
 */
public record AudiogramRow(
        int line,
        String workerId,
        Audiogram audiogram,
        Optional<BigDecimal> hoursSinceNoise,
        Optional<Boolean> protectorsWorn,
        String tester,
        String instrument,
        String transducer,
        String remark,
        PerEar<Threshold> repeatAt1000Hz,
        long contentHash) {

    /** What a doubt about the test may rest on. */
    TestConditions conditions() {
        return new TestConditions(hoursSinceNoise, protectorsWorn, Transducer.in(transducer), repeatAt1000Hz);
    }

    /** The line only: the rest is personal and stays out of logs. */
    @Override
    public String toString() {
        return "audiogram row on line " + line;
    }
}
