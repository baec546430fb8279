package org.thresholdregister.intake;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.intake.CellReader.Words;

/** Reads a decisions file row by row. Whether a row stands in it twice is for the receiver of the rows to see. */
public final class DecisionReader {

    private static final Words<Ears> EARS = new Words<>(List.of(Ears.values()), Ears::word);
    private static final Words<DecisionKind> KINDS = new Words<>(List.of(DecisionKind.values()), DecisionKind::word);

    private final LocalDate asOf;
    private final ExistingRecords existing;
    private final ProblemSink problems;

    /**
     * @param asOf the last day of which decisions are taken
     * @param existing the workers and tests that decisions can be about
     */
    public DecisionReader(LocalDate asOf, ExistingRecords existing, ProblemSink problems) {
        this.asOf = asOf;
        this.existing = existing;
        this.problems = problems;
    }

    /**
     * Reads the whole file and hands on every row that is not left out, in the order of the file.
     *
     * @return how many rows the file has, blank ones not counted
     */
    public int read(SourceFile file, Consumer<DecisionRow> rows) throws IOException, UnusableFileException {
        return new TableReader<>(Table.DECISIONS, DecisionColumn.values(), file, problems).read(row -> {
            Optional<DecisionRow> decision = parse(row);
            row.reportTo(problems);
            decision.ifPresent(rows);
        });
    }

    private Optional<DecisionRow> parse(Row<DecisionColumn> row) {
        Optional<WorkerFacts> worker = KnownWorker.of(row, DecisionColumn.WORKER_ID, existing);
        Optional<Ears> ears = row.requiredWord(DecisionColumn.EAR, EARS);
        Optional<LocalDate> testDate = row.requiredDate(DecisionColumn.TEST_DATE);
        Optional<DecisionKind> kind = row.requiredWord(DecisionColumn.KIND, KINDS);
        Optional<LocalDate> decidedOn = row.requiredDate(DecisionColumn.DATE);
        if (decidedOn.isPresent()) {
            checkDate(row, decidedOn.get(), testDate);
        }
        if (worker.isPresent()
                && testDate.isPresent()
                && !existing.hasTestOn(worker.get().workerId(), testDate.get())) {
            row.problem(DecisionColumn.TEST_DATE, ProblemKind.NO_SUCH_TEST, "", Effect.NOTE);
        }
        String by = row.text(DecisionColumn.BY);
        String reason = row.text(DecisionColumn.REASON);
        if (row.isLeftOut()) {
            return Optional.empty();
        }
        Decision decision = new Decision(
                ears.orElseThrow(), testDate.orElseThrow(), kind.orElseThrow(), decidedOn.orElseThrow(), by, reason);
        return Optional.of(
                new DecisionRow(row.line(), row.workerId(DecisionColumn.WORKER_ID), decision, row.contentHash()));
    }

    private void checkDate(Row<DecisionColumn> row, LocalDate decidedOn, Optional<LocalDate> testDate) {
        if (decidedOn.isAfter(asOf)) {
            row.problem(DecisionColumn.DATE, ProblemKind.DECIDED_AFTER_AS_OF, asOf.toString(), Effect.ROW_LEFT_OUT);
        }
        if (testDate.isPresent() && decidedOn.isBefore(testDate.get())) {
            row.problem(DecisionColumn.DATE, ProblemKind.DECIDED_BEFORE_TEST, "", Effect.NOTE);
        }
    }
}
