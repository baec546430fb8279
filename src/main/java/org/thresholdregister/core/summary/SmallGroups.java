package org.thresholdregister.core.summary;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.thresholdregister.core.summary.Count.Hidden;
import org.thresholdregister.core.summary.Count.Number;

/**
 * Hides all counts of groups in which so few workers were tested that a count tells of a person, and of the groups that
 * would give them away: a total less all its parts but one is that part. What remains cannot be subtracted to any
 * hidden count, nor to the counts of fewer than {@value #SMALLEST_SHOWN} workers.
 *
 * <p>Source: a smallest shown group of five, and hiding the next smallest beside a group that stands alone, are common
 * practice in publishing tables. Only a group's size hides it: a shown group's counts may be small.
 */
public final class SmallGroups {

    /** The fewest tested workers of a group that is shown. */
    public static final int SMALLEST_SHOWN = 5;

    /** What would hold of the hidden parts of a total, if the total less the shown parts gave nothing away. */
    private enum Total {
        /** One hidden part would be the difference. */
        SHOWN(2),
        /** The shown parts must not add up to it. */
        HIDDEN(1);

        private final int fewestHiddenParts;

        Total(int fewestHiddenParts) {
            this.fewestHiddenParts = fewestHiddenParts;
        }
    }

    private final Map<Group, Integer> tested;
    private final Set<Group> hidden = new HashSet<>();

    private SmallGroups(Map<Group, Integer> tested) {
        this.tested = tested;
        tested.forEach((group, workers) -> {
            if (workers < SMALLEST_SHOWN) {
                hidden.add(group);
            }
        });
    }

    /**
     * The same rows, with the counts of small groups and of those that would give them away hidden.
     *
     * @param rows all rows of the years they are about, as {@link YearSummary} gives them
     * @throws IllegalArgumentException where a row is hidden already
     */
    public static List<SummaryRow> hide(List<SummaryRow> rows) {
        Map<Integer, Map<Group, Integer>> testedByYear = new TreeMap<>();
        for (SummaryRow row : rows) {
            if (row.measure() == Measure.WORKERS_TESTED) {
                testedByYear
                        .computeIfAbsent(row.year(), year -> new LinkedHashMap<>())
                        .put(row.group(), number(row.count()));
            }
        }
        Map<Integer, Set<Group>> hiddenByYear = new TreeMap<>();
        testedByYear.forEach((year, tested) -> hiddenByYear.put(year, new SmallGroups(tested).hiddenGroups()));
        return rows.stream()
                .map(row -> hiddenByYear.getOrDefault(row.year(), Set.of()).contains(row.group())
                        ? new SummaryRow(row.year(), row.group(), row.measure(), Count.hidden())
                        : row)
                .toList();
    }

    private static int number(Count count) {
        return switch (count) {
            case Number(int value) -> value;
            case Hidden() -> throw new IllegalArgumentException("a count that is hidden already");
        };
    }

    private Set<Group> hiddenGroups() {
        List<Group> sites = tested.keySet().stream().filter(Group::isWholeSite).toList();
        if (sites.stream().anyMatch(hidden::contains)) {
            hideAmong(sites, Total.SHOWN);
        }
        for (Group site : sites) {
            List<Group> departments = tested.keySet().stream()
                    .filter(group -> !group.isTotal() && group.wholeSite().equals(site))
                    .toList();
            if (hidden.contains(site)) {
                hideAmong(departments, Total.HIDDEN);
            } else if (departments.stream().anyMatch(hidden::contains)) {
                hideAmong(departments, Total.SHOWN);
            }
        }
        return hidden;
    }

    /** Hides the next smallest until enough are hidden, and those are together no small group; else all. */
    private void hideAmong(Collection<Group> parts, Total total) {
        List<Group> bySize = parts.stream()
                .sorted(Comparator.comparingInt(this::workersTested))
                .toList();
        int hiddenParts = 0;
        int hiddenWorkers = 0;
        for (Group part : bySize) {
            boolean enough = hiddenParts >= total.fewestHiddenParts && hiddenWorkers >= SMALLEST_SHOWN;
            if (enough && !hidden.contains(part)) {
                break;
            }
            hidden.add(part);
            hiddenParts++;
            hiddenWorkers += workersTested(part);
        }
    }

    private int workersTested(Group group) {
        return tested.getOrDefault(group, 0);
    }
}
