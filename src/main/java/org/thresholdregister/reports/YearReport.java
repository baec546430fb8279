package org.thresholdregister.reports;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.summary.SummaryRow;

/**
 * A year in counts.
 *
 * @param rows of the year, by site, department and measure; none where nobody was tested
 * @param yearsBefore the totals of some earlier years, latest first
 * @param onlySites the sites that all counts are of, where these are not all of the register's
 */
public record YearReport(
        int year, List<SummaryRow> rows, List<SummaryRow> yearsBefore, Optional<Set<String>> onlySites) {}
