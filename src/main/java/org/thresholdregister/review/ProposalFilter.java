package org.thresholdregister.review;

import java.util.Optional;
import org.thresholdregister.core.baseline.BaselineChange;

/**
 * Which baseline proposals a list shows.
 *
 * @param site only this site, or those without one where the text is empty
 * @param department likewise
 * @param text words that the worker's name or number must hold; empty for all
 */
public record ProposalFilter(
        Optional<BaselineChange.Kind> kind, Optional<String> site, Optional<String> department, String text) {

    public static final ProposalFilter EVERYTHING =
            new ProposalFilter(Optional.empty(), Optional.empty(), Optional.empty(), "");
}
