package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;

/**
 * How much is open of each kind in each state on a day; a pair without any is absent.
 *
 * @param byKind by the word of a {@link TaskKind}, or the words of a feature's duty
 */
public record BoardCounts(LocalDate today, Map<String, Map<DueState, Integer>> byKind) {

    public int of(String kind, DueState state) {
        return byKind.getOrDefault(kind, Map.of()).getOrDefault(state, 0);
    }

    public int of(TaskKind kind, DueState state) {
        return of(kind.word(), state);
    }

    /** Of all kinds in all states together. */
    public int total() {
        return byKind.values().stream()
                .flatMap(states -> states.values().stream())
                .mapToInt(Integer::intValue)
                .sum();
    }

    /** Of all kinds together. */
    public int of(DueState state) {
        return byKind.values().stream()
                .mapToInt(states -> states.getOrDefault(state, 0))
                .sum();
    }

    /** The kinds of which anything is open, tasks before duties. */
    public Set<String> kinds() {
        return byKind.keySet();
    }
}
