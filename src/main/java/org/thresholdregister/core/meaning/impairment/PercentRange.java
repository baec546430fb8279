package org.thresholdregister.core.meaning.impairment;

import java.util.Optional;

/** All the percentages that remain possible, from the least to the most; the same one twice where just one does. */
public record PercentRange(Percent least, Percent most) {

    public PercentRange {
        if (least.compareTo(most) > 0) {
            throw new IllegalArgumentException("the least is more than the most");
        }
    }

    /** The plain percentage, where there is just one. */
    public Optional<Percent> exact() {
        return least.equals(most) ? Optional.of(least) : Optional.empty();
    }
}
