package org.thresholdregister.core.validity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.calibration.EquipmentDoubt;

/**
 * How a test was made, as far as the record says.
 *
 * @param hoursSinceNoise hours away from workplace noise before the test
 * @param protectorsWorn whether hearing protectors stood in for the quiet time
 * @param repeatAt1000Hz the second reading at 1000 Hz; not given where there was none
 * @param equipment what was not in order with equipment, room and tester; none where nobody looked
 */
public record TestConditions(
        Optional<BigDecimal> hoursSinceNoise,
        Optional<Boolean> protectorsWorn,
        Transducer transducer,
        PerEar<Threshold> repeatAt1000Hz,
        List<EquipmentDoubt> equipment) {

    /** No second reading at 1000 Hz. */
    public static final PerEar<Threshold> NO_REPEAT = PerEar.from(ear -> Threshold.notGiven());

    /** The record says nothing. */
    public static final TestConditions NOT_ON_RECORD =
            new TestConditions(Optional.empty(), Optional.empty(), Transducer.NOT_KNOWN, NO_REPEAT);

    public TestConditions {
        equipment = List.copyOf(equipment);
    }

    /** As far as the record of the test itself says; of its equipment nothing is known. */
    public TestConditions(
            Optional<BigDecimal> hoursSinceNoise,
            Optional<Boolean> protectorsWorn,
            Transducer transducer,
            PerEar<Threshold> repeatAt1000Hz) {
        this(hoursSinceNoise, protectorsWorn, transducer, repeatAt1000Hz, List.of());
    }

    /** The same with a second reading at 1000 Hz. */
    public TestConditions withRepeat(PerEar<Threshold> repeat) {
        return new TestConditions(hoursSinceNoise, protectorsWorn, transducer, repeat, equipment);
    }

    /** The same with what was not in order with equipment, room and tester. */
    public TestConditions withEquipment(List<EquipmentDoubt> doubts) {
        return new TestConditions(hoursSinceNoise, protectorsWorn, transducer, repeatAt1000Hz, doubts);
    }

    boolean protectorsStoodIn() {
        return protectorsWorn.orElse(false);
    }
}
