package org.thresholdregister.core.wording;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.thresholdregister.core.summary.Count;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SmallGroups;
import org.thresholdregister.core.summary.SummaryRow;

/** The words of the year's summary, on screen and on paper. */
public final class SummaryWords {

    /** The footnote of a table in which something is hidden. */
    public static final String WHAT_HIDDEN_MEANS = Count.HIDDEN_WORD + ": fewer than " + SmallGroups.SMALLEST_SHOWN
            + " workers of this group were tested, or its counts would give such a group away.";

    /**
     * A stretch of a sentence.
     *
     * @param tells what it counts, so that a screen can link it; empty for the words between
     */
    public record Phrase(String text, Optional<Measure> tells) {}

    private SummaryWords() {}

    /** The site in words. */
    public static String site(Group group) {
        return switch (group.site()) {
            case Group.ALL -> "all sites";
            case Group.NONE -> "no site given";
            default -> group.site();
        };
    }

    /** The department in words. */
    public static String department(Group group) {
        return switch (group.department()) {
            case Group.ALL -> "all departments";
            case Group.NONE -> "no department given";
            default -> group.department();
        };
    }

    /** {@code 1,371}, or that it is hidden. */
    public static String count(Count count) {
        return switch (count) {
            case Count.Number(int value) -> digits(value);
            case Count.Hidden() -> Count.HIDDEN_WORD;
        };
    }

    /** Says of what the totals are, where they are not of the whole register. */
    public static String onlySites(Set<String> sites) {
        return sites.isEmpty()
                ? "No site is in view, so that nothing is counted."
                : "The totals are of " + sites.stream().sorted().collect(Collectors.joining(", "))
                        + (sites.size() == 1 ? ", the only site in view." : ", the only sites in view.");
    }

    /** The year in a sentence. */
    public static String sentence(int year, List<SummaryRow> rows) {
        return phrases(year, rows).stream().map(Phrase::text).collect(Collectors.joining());
    }

    /**
     * The year in a sentence, piece by piece.
     *
     * @param rows all rows of the year
     */
    public static List<Phrase> phrases(int year, List<SummaryRow> rows) {
        Map<Measure, Integer> totals = new EnumMap<>(Measure.class);
        for (SummaryRow row : rows) {
            if (row.group().equals(Group.EVERYBODY) && row.count() instanceof Count.Number(int value)) {
                totals.put(row.measure(), value);
            }
        }
        List<Phrase> phrases = new ArrayList<>();
        if (rows.isEmpty()) {
            add(phrases, "In " + year + ", no worker was tested.");
        } else if (totals.isEmpty()) {
            add(
                    phrases,
                    "In " + year + ", fewer than " + SmallGroups.SMALLEST_SHOWN
                            + " workers were tested, and groups as small as that are not shown.");
        } else {
            tell(phrases, year, totals, namedSites(rows));
        }
        return phrases;
    }

    private static void tell(List<Phrase> phrases, int year, Map<Measure, Integer> totals, long sites) {
        int tested = totals.getOrDefault(Measure.WORKERS_TESTED, 0);
        int found = totals.getOrDefault(Measure.SHIFTS_FOUND, 0);
        int confirmed = totals.getOrDefault(Measure.SHIFTS_CONFIRMED, 0);
        int recordable = totals.getOrDefault(Measure.RECORDABLE_CASES, 0);
        add(phrases, "In " + year + ", ");
        add(phrases, some(tested, "worker"), Measure.WORKERS_TESTED);
        add(phrases, (isOne(tested) ? " was" : " were") + " tested");
        add(phrases, sites == 0 ? "; " : " at " + some(sites, "site") + "; ");
        add(phrases, some(found, "shift"), Measure.SHIFTS_FOUND);
        add(phrases, (isOne(found) ? " was" : " were") + " found");
        if (found > 0) {
            add(phrases, ", ");
            add(phrases, (confirmed == 0 ? "none" : digits(confirmed)) + " confirmed", Measure.SHIFTS_CONFIRMED);
        }
        add(phrases, "; ");
        add(phrases, some(recordable, "case"), Measure.RECORDABLE_CASES);
        add(phrases, (isOne(recordable) ? " is" : " are") + " recordable.");
    }

    private static long namedSites(List<SummaryRow> rows) {
        return rows.stream()
                .map(SummaryRow::group)
                .filter(group -> group.isWholeSite() && !group.site().equals(Group.NONE))
                .distinct()
                .count();
    }

    private static String some(long number, String thing) {
        return (number == 0 ? "no" : digits(number)) + " " + thing + (isOne(number) ? "" : "s");
    }

    /** Whether it takes the singular, as "no" does too. */
    private static boolean isOne(long number) {
        return number <= 1;
    }

    private static String digits(long number) {
        return String.format(Locale.ENGLISH, "%,d", number);
    }

    private static void add(List<Phrase> phrases, String text) {
        phrases.add(new Phrase(text, Optional.empty()));
    }

    private static void add(List<Phrase> phrases, String text, Measure tells) {
        phrases.add(new Phrase(text, Optional.of(tells)));
    }
}
