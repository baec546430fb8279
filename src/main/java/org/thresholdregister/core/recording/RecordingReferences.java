package org.thresholdregister.core.recording;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;

/** The references that one ear has had, as its tests are judged in order. */
public final class RecordingReferences {

    private final List<RecordingReference> references = new ArrayList<>();

    public RecordingReferences(Audiogram firstBaseline) {
        references.add(new RecordingReference(RecordingReference.Kind.FIRST_BASELINE, firstBaseline, Optional.empty()));
    }

    public void addImprovedBaseline(Audiogram baseline) {
        references.add(new RecordingReference(RecordingReference.Kind.IMPROVED_BASELINE, baseline, Optional.empty()));
    }

    /** @param endsOn the day on which the case was lined out, from which it is no reference any more */
    public void addCase(Audiogram audiogram, Optional<LocalDate> endsOn) {
        references.add(new RecordingReference(RecordingReference.Kind.RECORDABLE_CASE, audiogram, endsOn));
    }

    /** The reference with the latest audiogram among those that count on this day. */
    public RecordingReference on(LocalDate day) {
        RecordingReference latest = references.getFirst();
        for (RecordingReference reference : references) {
            if (reference.countsOn(day)
                    && Audiogram.CHRONOLOGICAL.compare(reference.audiogram(), latest.audiogram()) >= 0) {
                latest = reference;
            }
        }
        return latest;
    }
}
