package org.thresholdregister.roster.ui;

import java.util.Optional;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.roster.WorkerFilter;
import org.thresholdregister.roster.WorkerFilter.Status;

/** The filter of the workers in the address. What was typed to search stays out of it, since it may be a name. */
final class WorkerAddress {

    static final String ROUTE = "workers";
    static final String STATUS = "status";
    static final String SITE = "site";
    static final String DEPARTMENT = "department";

    private WorkerAddress() {}

    static WorkerFilter filter(FilterParameters parameters, String text) {
        return new WorkerFilter(
                text,
                parameters.text(SITE),
                parameters.text(DEPARTMENT),
                parameters.choice(STATUS, Status.class).orElse(Status.ALL));
    }

    static WorkerFilter withStatus(WorkerFilter filter, Status status) {
        return new WorkerFilter(filter.text(), filter.site(), filter.department(), status);
    }

    static String of(WorkerFilter filter, Status status) {
        return FilterParameters.NONE
                .withChoice(STATUS, Optional.of(status).filter(choice -> choice != Status.ALL))
                .with(SITE, filter.site())
                .with(DEPARTMENT, filter.department())
                .pathOf(ROUTE);
    }
}
