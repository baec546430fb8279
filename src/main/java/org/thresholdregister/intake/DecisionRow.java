package org.thresholdregister.intake;

import org.thresholdregister.core.decision.Decision;

/**
 * One decision of a decisions file.
 *
 * @param contentHash tells differing rows of one file apart; means nothing between files
 */
public record DecisionRow(int line, String workerId, Decision decision, long contentHash) {

    /** The line only: the rest is personal and stays out of logs. */
    @Override
    public String toString() {
        return "decision row on line " + line;
    }
}
