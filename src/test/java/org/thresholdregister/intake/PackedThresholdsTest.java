package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

class PackedThresholdsTest {

    @Test
    void everyThresholdComesBackAtEveryFrequency() {
        List<Threshold> all = new ArrayList<>();
        for (int level = HearingLevel.LOWEST_DB; level <= HearingLevel.HIGHEST_DB; level++) {
            all.add(Threshold.measured(level));
            all.add(Threshold.noResponseAt(level));
        }
        all.add(Threshold.noResponse());
        for (Threshold.NotTested.Reason reason : Threshold.NotTested.Reason.values()) {
            all.add(Threshold.notTested(reason));
        }
        Random random = new Random(11);
        for (Threshold threshold : all) {
            for (Frequency frequency : Frequency.values()) {
                Audiogram.Builder builder = new Audiogram.Builder(LocalDate.EPOCH, TestPurpose.ANNUAL);
                for (Ear ear : Ear.values()) {
                    for (Frequency other : Frequency.values()) {
                        builder.set(ear, other, all.get(random.nextInt(all.size())));
                    }
                }
                Audiogram audiogram =
                        builder.set(Ear.LEFT, frequency, threshold).build();
                Audiogram.Builder unpacked = new Audiogram.Builder(LocalDate.EPOCH, TestPurpose.ANNUAL);
                for (Ear ear : Ear.values()) {
                    PackedThresholds.unpack(PackedThresholds.pack(audiogram, ear), ear, unpacked);
                }
                assertThat(unpacked.build()).isEqualTo(audiogram);
            }
        }
    }
}
