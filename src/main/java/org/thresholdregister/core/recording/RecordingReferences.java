package org.thresholdregister.core.recording;

import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;

/** The references that one ear has had, as its tests are judged in order. */
public final class RecordingReferences {

    private final List<RecordingReference> references = new ArrayList<>();

    public RecordingReferences(Audiogram firstBaseline) {
        references.add(new RecordingReference(RecordingReference.Kind.FIRST_BASELINE, firstBaseline));
    }

    public void addImprovedBaseline(Audiogram baseline) {
        references.add(new RecordingReference(RecordingReference.Kind.IMPROVED_BASELINE, baseline));
    }

    public void addCase(Audiogram audiogram) {
        references.add(new RecordingReference(RecordingReference.Kind.RECORDABLE_CASE, audiogram));
    }

    /** The one with the latest audiogram. */
    public RecordingReference latest() {
        RecordingReference latest = references.getFirst();
        for (RecordingReference reference : references) {
            if (Audiogram.CHRONOLOGICAL.compare(reference.audiogram(), latest.audiogram()) >= 0) {
                latest = reference;
            }
        }
        return latest;
    }
}
