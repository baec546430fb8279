package org.thresholdregister.review;

/** What a list of shifts can be ordered by. */
public enum ShiftColumn {
    TEST_DATE("d.testDate"),
    NAME("w.search"),
    WORKER_ID("w.workerId"),
    SITE("w.site"),
    DEPARTMENT("w.department"),
    EAR("d.ear"),
    SHIFT("d.shiftSum"),
    LEVEL("d.levelSum"),
    OUTCOME("d.outcome"),
    RECORDABLE("d.recordable"),
    RETEST_BY("d.retestBy"),
    NOTIFY_BY("d.notifyBy"),
    RECORD_BY("d.recordBy"),
    SETTLED_ON("d.settledOn");

    private final String path;

    ShiftColumn(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }
}
