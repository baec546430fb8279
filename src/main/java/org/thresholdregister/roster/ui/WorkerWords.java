package org.thresholdregister.roster.ui;

import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Place;
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
        String where = Place.phrase(filter.site(), filter.department());
        String matching = all == 1 ? " matches the search: " : " match the search: ";
        return new LeadSentence()
                .link(Counted.of(all, "worker", "workers"), WorkerAddress.of(filter, Status.ALL))
                .text(where + (filter.text().isBlank() ? " " + Counted.isOrAre(all) + " on the roster: " : matching))
                .link(Counted.of(active, "is employed", "are employed"), WorkerAddress.of(filter, Status.ACTIVE))
                .text(", ")
                .link(Counted.of(left, "has left", "have left"), WorkerAddress.of(filter, Status.LEFT))
                .text(".");
    }
}
