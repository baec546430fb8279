package org.thresholdregister.audiograms;

import java.time.LocalDate;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * Published within the transaction in which a test that was entered by hand came on record.
 *
 * @param testKey the register's own key of the test
 * @param workerKey the worker tested
 */
public record TestSigned(long testKey, long workerKey, LocalDate testDate, TestPurpose purpose) {}
