package org.thresholdregister.intake;

import java.util.List;
import org.thresholdregister.review.DeterminationChange;
import org.thresholdregister.roster.WorkerDetails;

/** What is to be stored, and what there is to say about it. */
record ImportPlan(
        ImportCounts counts,
        List<WorkerChange> changes,
        List<RowProblem> problems,
        List<DeterminationChange> lateChanges,
        List<WorkerDetails> newWorkers,
        List<WorkerDetails> changedWorkers,
        List<AudiogramRow> newTests,
        List<DecisionRow> newDecisions) {

    /** Whether a person who agreed to the preview has agreed to this. */
    boolean isAsIn(ImportPreview preview) {
        return counts.equals(preview.counts())
                && changes.equals(preview.changes())
                && problems.equals(preview.problems())
                && lateChanges.equals(preview.lateChanges());
    }
}
