package org.thresholdregister.review;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.thresholdregister.core.comparing.Difference;
import org.thresholdregister.core.summary.Measure;

/**
 * One year's tests judged in two ways.
 *
 * @param site empty for all that are in view
 * @param counts by measure, over all workers in view
 * @param rows the tests that are answered differently, at most {@link #ROWS_AT_MOST}
 * @param differing how many tests of an ear are answered differently in all
 * @param workers how many workers that concerns
 * @param judged how many workers were judged
 * @param reasons how many differences come from what
 */
public record RuleComparison(
        int year,
        Optional<String> site,
        Way one,
        Way other,
        Map<Measure, Counts> counts,
        List<Row> rows,
        int differing,
        int workers,
        int judged,
        Map<Difference.Reason, Integer> reasons) {

    /** More than a person reads; the counts are of all. */
    public static final int ROWS_AT_MOST = 500;

    /** What each way counts of a measure. */
    public Counts countsOf(Measure measure) {
        return Objects.requireNonNull(counts.get(measure));
    }

    /** What each way counts. */
    public record Counts(int one, int other) {}

    /** One test of one ear that is answered differently. */
    public record Row(String workerId, String familyName, String givenName, String site, Difference difference) {}
}
