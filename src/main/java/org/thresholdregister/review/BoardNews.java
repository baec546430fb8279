package org.thresholdregister.review;

import java.time.LocalDate;

/**
 * What came since yesterday.
 *
 * @param yesterday the day before today
 * @param overdue how much fell due yesterday and is still open
 * @param shifts how many tests of the last twelve months were found to show a shift since then
 */
public record BoardNews(LocalDate yesterday, int overdue, int shifts) {}
