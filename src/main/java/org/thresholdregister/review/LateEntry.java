package org.thresholdregister.review;

import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.roster.StoredWorker;

/**
 * Tests that may change what was determined about tests on record of their worker: some test there was made after one
 * of them, or one of them is a retest of a test there.
 *
 * @param facts what will be on record of the worker
 * @param tests at least one
 * @param decisions those that come with them
 */
public record LateEntry(StoredWorker worker, WorkerFacts facts, List<Audiogram> tests, List<Decision> decisions) {}
