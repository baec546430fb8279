package org.thresholdregister.intake;

import java.util.List;
import java.util.Map;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.review.DeterminationChange;

/**
 * What importing some files would do. Nothing has been stored.
 *
 * @param token names this preview when it is confirmed
 * @param changes the workers whose facts would change
 * @param problems what is wrong with rows, in the order of the files
 * @param lateChanges the determinations on record that would come out otherwise, because a test comes that is older or
 *     answers for a test on record; worker by worker
 * @param doubts how many of the new tests have each kind of flag; they are stored like any other
 */
public record ImportPreview(
        String token,
        List<UploadedFile> files,
        ImportCounts counts,
        List<WorkerChange> changes,
        List<RowProblem> problems,
        List<DeterminationChange> lateChanges,
        Map<FlagKind, Integer> doubts) {

    /** How many rows of this file have a problem that leaves them out. */
    public int rowsLeftOut(Table table) {
        return Math.toIntExact(RowProblem.linesLeftOut(problems, table));
    }
}
