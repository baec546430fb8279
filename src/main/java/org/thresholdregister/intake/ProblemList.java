package org.thresholdregister.intake;

import java.util.ArrayList;
import java.util.List;

/** Keeps problems in memory. For files of unknown size take {@link ProblemSpool}. */
public final class ProblemList implements ProblemSink {

    private final List<RowProblem> problems = new ArrayList<>();

    @Override
    public void report(RowProblem problem) {
        problems.add(problem);
    }

    /** All problems, file by file and line by line. */
    public List<RowProblem> inFileOrder() {
        List<RowProblem> settled = new ArrayList<>(problems.size());
        RowProblem.RowByRow rows = new RowProblem.RowByRow(settled::add);
        problems.stream().sorted(RowProblem.FILE_ORDER).forEach(rows);
        rows.finish();
        return List.copyOf(settled);
    }
}
