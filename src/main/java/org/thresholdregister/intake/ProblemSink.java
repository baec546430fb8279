package org.thresholdregister.intake;

/**
 * Takes the problems of rows as they are found: file after file, and within a file by line, except that what only the
 * whole file can tell (duplicates) comes at its end. {@link ProblemList} and {@link ProblemSpool} bring them in order.
 */
@FunctionalInterface
public interface ProblemSink {

    void report(RowProblem problem);

    /** A sink for a second reading of a file whose problems are known. */
    static ProblemSink ignoring() {
        return problem -> {};
    }
}
