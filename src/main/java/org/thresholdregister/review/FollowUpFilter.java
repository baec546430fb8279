package org.thresholdregister.review;

import java.util.Optional;
import org.thresholdregister.core.followup.FollowUpKind;

/**
 * Which follow-ups a list shows.
 *
 * @param site only this site, or those without one where the text is empty
 * @param department likewise
 * @param text words that the worker's name or number must hold; empty for all
 */
public record FollowUpFilter(
        Optional<FollowUpKind> kind,
        Optional<FollowUpState> state,
        Optional<String> site,
        Optional<String> department,
        String text) {

    public static final FollowUpFilter EVERYTHING =
            new FollowUpFilter(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "");
}
