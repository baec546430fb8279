package org.thresholdregister.protection;

import java.math.BigDecimal;
import java.util.Comparator;

/** What the list of those who have to wear protectors can be ordered by. */
public enum WearingColumn {
    STATE(Comparator.comparing(WearingRow::state)),
    NAME(Comparator.comparing(WearingRow::name)),
    DEPARTMENT(Comparator.comparing(WearingRow::department)),
    LEVEL(Comparator.comparing(row -> row.twaDba().orElse(BigDecimal.ZERO)));

    private final Comparator<WearingRow> comparator;

    WearingColumn(Comparator<WearingRow> comparator) {
        this.comparator = comparator;
    }

    public Comparator<WearingRow> comparator(boolean descending) {
        return descending ? comparator.reversed() : comparator;
    }
}
