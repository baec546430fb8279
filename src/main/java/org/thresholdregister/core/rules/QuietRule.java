package org.thresholdregister.core.rules;

import java.math.BigDecimal;
import java.util.Set;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/**
 * How long before a test a worker is to be away from workplace noise.
 *
 * @param protectorsMayStandIn whether hearing protectors may be worn instead
 * @param before the tests that it is asked for
 */
public record QuietRule(
        int hours, boolean protectorsMayStandIn, Set<TestPurpose> before, Citation source, Provenance provenance) {

    public QuietRule {
        before = Set.copyOf(before);
    }

    static QuietRule beforeBaseline(int hours, boolean protectorsMayStandIn, String source, Provenance provenance) {
        return new QuietRule(
                hours, protectorsMayStandIn, Set.of(TestPurpose.BASELINE), new Citation(source), provenance);
    }

    public boolean appliesBefore(TestPurpose purpose) {
        return before.contains(purpose);
    }

    public boolean isKept(BigDecimal hoursSinceNoise) {
        return hoursSinceNoise.compareTo(BigDecimal.valueOf(hours)) >= 0;
    }
}
