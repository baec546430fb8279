package org.thresholdregister.core.summary;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All counts of one group in one year: a line of a table. */
public record SummaryLine(int year, Group group, Map<Measure, Count> counts) {

    private record Key(int year, Group group) {}

    public SummaryLine {
        counts = Map.copyOf(counts);
    }

    /** Gathers rows into lines, in the order in which their groups first appear. */
    public static List<SummaryLine> of(List<SummaryRow> rows) {
        Map<Key, Map<Measure, Count>> lines = new LinkedHashMap<>();
        for (SummaryRow row : rows) {
            lines.computeIfAbsent(new Key(row.year(), row.group()), key -> new EnumMap<>(Measure.class))
                    .put(row.measure(), row.count());
        }
        List<SummaryLine> result = new ArrayList<>();
        lines.forEach((key, counts) -> result.add(new SummaryLine(key.year(), key.group(), counts)));
        return result;
    }

    /** @throws IllegalArgumentException where the rows did not tell this measure */
    public Count count(Measure measure) {
        Count count = counts.get(measure);
        if (count == null) {
            throw new IllegalArgumentException("not counted: " + measure);
        }
        return count;
    }
}
