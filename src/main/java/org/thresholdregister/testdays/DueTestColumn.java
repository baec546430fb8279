package org.thresholdregister.testdays;

import java.util.Comparator;
import org.thresholdregister.core.scheduling.DueTest;
import org.thresholdregister.platform.query.SearchText;

/** What the list of due tests can be ordered by. */
public enum DueTestColumn {
    URGENCY(Comparator.comparing(DuePerson::due, DueTest.BY_URGENCY)),
    NAME(Comparator.comparing(person -> SearchText.fold(person.worker().familyName() + " "
            + person.worker().givenName() + " " + person.worker().workerId()))),
    DEPARTMENT(Comparator.comparing(person -> person.worker().department()));

    private final Comparator<DuePerson> comparator;

    DueTestColumn(Comparator<DuePerson> comparator) {
        this.comparator = comparator;
    }

    /** The order by this, the most urgent first among equals. */
    public Comparator<DuePerson> in(boolean descending) {
        return (descending ? comparator.reversed() : comparator).thenComparing(DuePerson::due, DueTest.BY_URGENCY);
    }
}
