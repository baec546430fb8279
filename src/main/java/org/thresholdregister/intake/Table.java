package org.thresholdregister.intake;

import java.util.List;

/** The kinds of file that are read, in the order in which they are read and reported. */
public enum Table {
    ROSTER(RosterColumn.values()),
    AUDIOGRAMS(AudiogramColumn.values()),
    DECISIONS(DecisionColumn.values());

    private final List<Column> columns;

    Table(Column[] columns) {
        this.columns = List.of(columns);
    }

    /** All the columns that a file of this kind may have. */
    public List<Column> columns() {
        return columns;
    }
}
