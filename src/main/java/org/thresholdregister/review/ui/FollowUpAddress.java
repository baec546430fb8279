package org.thresholdregister.review.ui;

import java.util.Optional;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.review.FollowUpFilter;
import org.thresholdregister.review.FollowUpState;

/** The filter of the follow-ups in the address. What was typed to search stays out of it, since it may be a name. */
final class FollowUpAddress {

    static final String ROUTE = "follow-ups";
    static final String KIND = "kind";
    static final String STATE = "state";
    static final String SITE = "site";
    static final String DEPARTMENT = "department";

    private FollowUpAddress() {}

    static FollowUpFilter filter(FilterParameters parameters, String text) {
        return new FollowUpFilter(
                parameters.choice(KIND, FollowUpKind.class),
                parameters.choice(STATE, FollowUpState.class),
                parameters.text(SITE),
                parameters.text(DEPARTMENT),
                text);
    }

    static String of(Optional<FollowUpKind> kind, Optional<FollowUpState> state) {
        return FilterParameters.NONE
                .withChoice(KIND, kind)
                .withChoice(STATE, state)
                .pathOf(ROUTE);
    }
}
