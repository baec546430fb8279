package org.thresholdregister.protection;

import java.time.LocalDate;
import java.util.Comparator;

/** What the list of those to be trained can be ordered by. */
public enum TrainingColumn {
    DUE(Comparator.comparing(TrainingRow::due)),
    NAME(Comparator.comparing(TrainingRow::name)),
    DEPARTMENT(Comparator.comparing(TrainingRow::department)),
    LAST(Comparator.comparing(row -> row.last().orElse(LocalDate.MIN)));

    private final Comparator<TrainingRow> comparator;

    TrainingColumn(Comparator<TrainingRow> comparator) {
        this.comparator = comparator;
    }

    public Comparator<TrainingRow> comparator(boolean descending) {
        return descending ? comparator.reversed() : comparator;
    }
}
