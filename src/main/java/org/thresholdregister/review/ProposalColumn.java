package org.thresholdregister.review;

/** What a list of baseline proposals can be ordered by. */
public enum ProposalColumn {
    OPEN_SINCE("p.secondTestDate"),
    NAME("w.search"),
    WORKER_ID("w.workerId"),
    SITE("w.site"),
    DEPARTMENT("w.department"),
    EAR("p.ear"),
    KIND("p.kind"),
    FROM("p.fromDate"),
    TO("p.toDate");

    private final String path;

    ProposalColumn(String path) {
        this.path = path;
    }

    String path() {
        return path;
    }
}
