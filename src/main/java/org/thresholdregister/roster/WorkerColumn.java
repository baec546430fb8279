package org.thresholdregister.roster;

/** What a list of workers can be ordered by. */
public enum WorkerColumn {
    NAME("w.search"),
    WORKER_ID("w.workerId"),
    SITE("w.site"),
    DEPARTMENT("w.department"),
    JOB_TITLE("w.jobTitle"),
    HIRE_DATE("w.hireDate"),
    END_DATE("w.endDate");

    private final String path;

    WorkerColumn(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }
}
