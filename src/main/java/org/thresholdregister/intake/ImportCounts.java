package org.thresholdregister.intake;

/**
 * What an import does, in rows. Rows that repeat an earlier row of their file are in none of the counts.
 *
 * @param rowsLeftOut rows of all files that have a problem that leaves them out
 */
public record ImportCounts(
        int newWorkers,
        int changedWorkers,
        int unchangedWorkers,
        int newTests,
        int unchangedTests,
        int newDecisions,
        int unchangedDecisions,
        int rowsLeftOut) {

    /** Whether there is anything to store. */
    public boolean changeNothing() {
        return newWorkers + changedWorkers + newTests + newDecisions == 0;
    }
}
