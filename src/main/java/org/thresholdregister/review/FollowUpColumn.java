package org.thresholdregister.review;

/** What a list of follow-ups can be ordered by. */
public enum FollowUpColumn {
    DUE_DATE("f.dueDate"),
    KIND("f.kind"),
    NAME("w.search"),
    WORKER_ID("w.workerId"),
    SITE("w.site"),
    DEPARTMENT("w.department"),
    TEST_DATE("f.testDate");

    private final String path;

    FollowUpColumn(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }
}
