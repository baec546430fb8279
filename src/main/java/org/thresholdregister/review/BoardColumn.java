package org.thresholdregister.review;

/** What the board can be ordered by. By anything but the due date, what is about no worker stands last. */
public enum BoardColumn {
    DUE_DATE("f.dueDate"),
    OPEN_SINCE("f.openSince"),
    KIND("f.kind"),
    NAME("w.search"),
    WORKER_ID("w.workerId"),
    SITE("w.site"),
    DEPARTMENT("w.department"),
    TEST_DATE("f.testDate");

    private final String path;

    BoardColumn(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }
}
