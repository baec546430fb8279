package org.thresholdregister.core.columnar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;

class ThresholdCodeTest {

    @Test
    void everyThresholdComesBackFromItsCode() {
        Set<Threshold> all = new HashSet<>();
        for (int level = -10; level <= 120; level++) {
            all.add(Threshold.measured(level));
            all.add(Threshold.noResponseAt(level));
        }
        all.add(Threshold.noResponse());
        for (Reason reason : Reason.values()) {
            all.add(Threshold.notTested(reason));
        }

        Set<Short> codes = new HashSet<>();
        for (Threshold threshold : all) {
            short code = ThresholdCode.of(threshold);
            assertThat(ThresholdCode.threshold(code)).isEqualTo(threshold);
            codes.add(code);
        }
        assertThat(codes).hasSize(all.size()).hasSize(ThresholdCode.COUNT);
    }

    @Test
    void anArrayThatNobodyFilledHoldsNoLevel() {
        assertThat(ThresholdCode.threshold((short) 0)).isEqualTo(Threshold.notGiven());
    }

    @Test
    void theNamedCodesAreThoseOfTheirThresholds() {
        assertThat(ThresholdCode.of(Threshold.noResponse())).isEqualTo(ThresholdCode.NO_RESPONSE);
        assertThat(ThresholdCode.of(Threshold.notTested(Reason.DID_NOT_TEST))).isEqualTo(ThresholdCode.DID_NOT_TEST);
        assertThat(ThresholdCode.of(Threshold.notTested(Reason.COULD_NOT_TEST)))
                .isEqualTo(ThresholdCode.COULD_NOT_TEST);
        assertThat(ThresholdCode.of(Threshold.measured(35))).isEqualTo(ThresholdCode.measured(35));
        assertThat(ThresholdCode.of(Threshold.noResponseAt(95))).isEqualTo(ThresholdCode.noResponseAt(95));
    }

    @Test
    void whatIsNoLevelHasNoCode() {
        assertThatIllegalArgumentException().isThrownBy(() -> ThresholdCode.measured(-11));
        assertThatIllegalArgumentException().isThrownBy(() -> ThresholdCode.measured(121));
        assertThatIllegalArgumentException().isThrownBy(() -> ThresholdCode.noResponseAt(121));
    }

    @Test
    void whatIsNoCodeIsNoThreshold() {
        assertThatIllegalArgumentException().isThrownBy(() -> ThresholdCode.threshold((short) -1));
        assertThatIllegalArgumentException().isThrownBy(() -> ThresholdCode.threshold((short) ThresholdCode.COUNT));
    }

    @Test
    void everyEarAndFrequencyHasAPlaceOfItsOwn() {
        Set<Integer> places = new HashSet<>();
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                places.add(ThresholdCode.place(ear, frequency));
            }
        }
        assertThat(places).hasSize(14).allMatch(place -> place >= 0 && place < ThresholdCode.PER_AUDIOGRAM);
    }
}
