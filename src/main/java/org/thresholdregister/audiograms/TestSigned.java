package org.thresholdregister.audiograms;

import java.time.LocalDate;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * Published within the transaction in which a test that was entered by hand came on record.
 *
 * @param testKey the register's own key of the test
 * @param workerKey the worker tested
 * @param draftKey the key of the draft that it was signed from, which is deleted in the same transaction
 */
public record TestSigned(long testKey, long workerKey, LocalDate testDate, TestPurpose purpose, long draftKey) {}
