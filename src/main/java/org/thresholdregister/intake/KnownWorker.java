package org.thresholdregister.intake;

import java.util.Optional;
import org.thresholdregister.core.judging.WorkerFacts;

/** Finds the worker that a row is about. */
final class KnownWorker {

    private KnownWorker() {}

    /** The worker; a problem that leaves the row out where the cell is blank or names nobody on record. */
    static <C extends Enum<C> & Column> Optional<WorkerFacts> of(Row<C> row, C column, ExistingRecords existing) {
        row.requireCell(column);
        String workerId = row.workerId(column);
        if (workerId.isEmpty()) {
            return Optional.empty();
        }
        Optional<WorkerFacts> worker = existing.worker(workerId);
        if (worker.isEmpty()) {
            row.problem(column, ProblemKind.UNKNOWN_WORKER, "", Effect.ROW_LEFT_OUT);
        }
        return worker;
    }
}
