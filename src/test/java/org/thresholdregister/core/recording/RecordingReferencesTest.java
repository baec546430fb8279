package org.thresholdregister.core.recording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.recording.RecordingReference.Kind;

class RecordingReferencesTest {

    private static final Audiogram FIRST = annual("2020-04-01");
    private static final Audiogram SECOND = annual("2021-04-01");
    private static final Audiogram THIRD = annual("2022-04-01");

    private final RecordingReferences references = new RecordingReferences(FIRST);

    @Test
    void untilThereIsACaseItIsTheFirstBaseline() {
        assertThat(references.latest()).isEqualTo(new RecordingReference(Kind.FIRST_BASELINE, FIRST));
    }

    @Test
    void theLatestAudiogramCountsInWhateverOrderTheyWereAdded() {
        references.addCase(THIRD);
        references.addImprovedBaseline(SECOND);
        assertThat(references.latest()).isEqualTo(new RecordingReference(Kind.RECORDABLE_CASE, THIRD));
    }

    @Test
    void anAudiogramThatCameInTwiceIsWhatItBecameLast() {
        references.addImprovedBaseline(SECOND);
        references.addCase(SECOND);
        assertThat(references.latest()).isEqualTo(new RecordingReference(Kind.RECORDABLE_CASE, SECOND));
    }

    private static Audiogram annual(String date) {
        return Vectors.flat(LocalDate.parse(date), TestPurpose.ANNUAL, 10, 10);
    }
}
