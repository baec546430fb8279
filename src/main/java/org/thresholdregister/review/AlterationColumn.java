package org.thresholdregister.review;

/** What a list of alterations can be ordered by. */
public enum AlterationColumn {
    ALTERED_ON("a.alteredOn"),
    NAME("w.search"),
    WORKER_ID("w.workerId"),
    SITE("w.site"),
    DEPARTMENT("w.department"),
    TEST_DATE("a.testDate");

    private final String path;

    AlterationColumn(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }
}
