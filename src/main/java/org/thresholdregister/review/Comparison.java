package org.thresholdregister.review;

import java.util.List;
import java.util.Map;
import org.thresholdregister.core.comparing.Difference;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.summary.Measure;

/**
 * One year's tests judged in two ways.
 *
 * @param counts by measure, the first way's count and the second's, over everybody in view
 * @param rows the tests that are answered differently, at most {@link #ROWS_AT_MOST}
 * @param differing how many tests of an ear are answered differently in all
 * @param workers how many workers that concerns
 * @param reasons how many differences come from what
 */
public record Comparison(
        int year,
        JudgingOptions one,
        JudgingOptions other,
        Map<Measure, Counts> counts,
        List<Row> rows,
        int differing,
        int workers,
        Map<Difference.Reason, Integer> reasons) {

    /** More rows than a person reads; the counts are of all. */
    public static final int ROWS_AT_MOST = 500;

    /** What each way counts. */
    public record Counts(int one, int other) {}

    /** One test of one ear that is answered differently. */
    public record Row(String workerId, String familyName, String givenName, String site, Difference difference) {}
}
