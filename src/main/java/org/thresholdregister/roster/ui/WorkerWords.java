package org.thresholdregister.roster.ui;

import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.ui.FilterBar;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.roster.WorkerFilter;
import org.thresholdregister.roster.WorkerFilter.Status;

/** The words of the list of workers. */
final class WorkerWords {

    private WorkerWords() {}

    static String status(Status status) {
        return switch (status) {
            case ACTIVE -> "employed";
            case LEFT -> "left";
            case ALL -> "all";
        };
    }

    /** How many are employed and have left, within the site, the department and the search; each number a link. */
    static LeadSentence sentence(WorkerFilter filter, int active, int left) {
        int all = active + left;
        return new LeadSentence()
                .link(Counted.of(all, "worker", "workers"), WorkerAddress.of(filter, Status.ALL))
                .text((all == 1 ? " is" : " are") + " on the roster" + where(filter) + ": ")
                .link(Counted.of(active, "is employed", "are employed"), WorkerAddress.of(filter, Status.ACTIVE))
                .text(", ")
                .link(Counted.of(left, "has left", "have left"), WorkerAddress.of(filter, Status.LEFT))
                .text(".");
    }

    private static String where(WorkerFilter filter) {
        return filter.site()
                        .map(site -> ", site: " + FilterBar.nameInWords(site))
                        .orElse("")
                + filter.department()
                        .map(department -> ", department: " + FilterBar.nameInWords(department))
                        .orElse("")
                + (filter.text().isBlank() ? "" : ", matching the search");
    }
}
