package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Map;
import org.thresholdregister.core.followup.FollowUpKind;

/** How many follow-ups of each kind are in each state on a day; a pair without any is absent. */
public record DueCounts(LocalDate today, Map<FollowUpKind, Map<FollowUpState, Integer>> byKind) {

    public int of(FollowUpKind kind, FollowUpState state) {
        return byKind.getOrDefault(kind, Map.of()).getOrDefault(state, 0);
    }

    /** Of all kinds in all states together. */
    public int total() {
        return byKind.values().stream()
                .flatMap(states -> states.values().stream())
                .mapToInt(Integer::intValue)
                .sum();
    }

    /** Of all kinds together. */
    public int of(FollowUpState state) {
        return byKind.values().stream()
                .mapToInt(states -> states.getOrDefault(state, 0))
                .sum();
    }
}
