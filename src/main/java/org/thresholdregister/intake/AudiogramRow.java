package org.thresholdregister.intake;

import java.math.BigDecimal;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;

/**
 * One test of an audiograms file. Texts are empty where nothing is given.
 *
 * @param hoursSinceNoise hours without workplace noise before the test
 * @param protectorsWorn whether protectors stood in for the quiet time
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
        long contentHash) {

    /** The line only: the rest is personal and stays out of logs. */
    @Override
    public String toString() {
        return "audiogram row on line " + line;
    }
}
