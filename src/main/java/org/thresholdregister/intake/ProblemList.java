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
        return problems.stream().sorted(RowProblem.FILE_ORDER).toList();
    }
}
