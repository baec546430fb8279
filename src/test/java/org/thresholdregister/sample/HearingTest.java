package org.thresholdregister.sample;

import java.time.LocalDate;
import java.util.function.UnaryOperator;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * One row of {@code audiograms.csv}.
 *
 * @param hoursSinceNoise blank where not given, like the texts after it
 */
record HearingTest(
        Audiogram audiogram,
        String hoursSinceNoise,
        String protectorsWorn,
        String tester,
        String instrument,
        String transducer,
        String remark) {

    LocalDate date() {
        return audiogram.date();
    }

    TestPurpose purpose() {
        return audiogram.purpose();
    }

    HearingTest with(UnaryOperator<Audiogram> change) {
        return new HearingTest(
                change.apply(audiogram), hoursSinceNoise, protectorsWorn, tester, instrument, transducer, remark);
    }

    HearingTest withRemark(String newRemark) {
        return new HearingTest(audiogram, hoursSinceNoise, protectorsWorn, tester, instrument, transducer, newRemark);
    }
}
