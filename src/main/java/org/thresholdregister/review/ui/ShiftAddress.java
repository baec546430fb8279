package org.thresholdregister.review.ui;

import java.util.Optional;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.review.ShiftFilter;

/** The filter of the shifts in the address. What was typed to search stays out of it, since it may be a name. */
final class ShiftAddress {

    static final String ROUTE = "shifts";
    static final String YEAR = "year";
    static final String OUTCOME = "outcome";
    static final String RECORDABLE = "recordable";
    static final String SITE = "site";
    static final String DEPARTMENT = "department";

    private ShiftAddress() {}

    static ShiftFilter filter(FilterParameters parameters, int yearUnlessGiven, String text) {
        return new ShiftFilter(
                parameters.year(YEAR).orElse(yearUnlessGiven),
                parameters.text(SITE),
                parameters.text(DEPARTMENT),
                parameters.choice(OUTCOME, Outcome.class),
                parameters.choice(RECORDABLE, Recordability.class),
                text);
    }

    /** The shifts of the same year, site and department, of whatever outcome. */
    static ShiftFilter withoutOutcome(ShiftFilter filter) {
        return new ShiftFilter(
                filter.year(), filter.site(), filter.department(), Optional.empty(), Optional.empty(), "");
    }

    static String of(ShiftFilter filter, Optional<Outcome> outcome, Optional<Recordability> recordable) {
        return FilterParameters.NONE
                .with(YEAR, Optional.of(Integer.toString(filter.year())))
                .withChoice(OUTCOME, outcome)
                .withChoice(RECORDABLE, recordable)
                .with(SITE, filter.site())
                .with(DEPARTMENT, filter.department())
                .pathOf(ROUTE);
    }
}
