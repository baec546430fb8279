package org.thresholdregister.review;

import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.review.HistoryStore.StoredHistory;

/**
 * A worker's record with its judgement as of today.
 *
 * @param options how a test of today is judged
 */
record JudgedWorker(StoredHistory stored, WorkerJudgement judgement, JudgingOptions options) {}
