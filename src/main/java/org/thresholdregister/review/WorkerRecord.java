package org.thresholdregister.review;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.OpenProposals;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.roster.WorkerDetails;

/**
 * All there is about one worker, judged as of a day.
 *
 * @param asOf the day the judgement is as of, which is today
 * @param tests in order of time, those that are never judged among them
 * @param decisions in order of the day of decision
 */
public record WorkerRecord(
        LocalDate asOf,
        WorkerDetails details,
        List<RecordedTest> tests,
        List<RecordedDecision> decisions,
        WorkerHistory history,
        WorkerJudgement judgement) {

    /** A stored history, judged as of a day. */
    static WorkerRecord of(StoredHistory stored, LocalDate asOf) {
        return new WorkerRecord(
                asOf,
                stored.worker().details(),
                stored.tests(),
                stored.decisions(),
                stored.history(),
                Judge.judge(stored.history(), RegisterOptions.asOf(asOf)));
    }

    /** This record with one more decision, judged anew. */
    WorkerRecord with(RecordedDecision decision) {
        List<RecordedDecision> all =
                Stream.concat(decisions.stream(), Stream.of(decision)).toList();
        WorkerHistory longer = new WorkerHistory(
                history.worker(),
                history.audiograms(),
                all.stream().map(RecordedDecision::decision).toList());
        return new WorkerRecord(asOf, details, tests, all, longer, Judge.judge(longer, RegisterOptions.asOf(asOf)));
    }

    /** This record with other tests to show. */
    WorkerRecord showing(List<RecordedTest> shown) {
        return new WorkerRecord(asOf, details, shown, decisions, history, judgement);
    }

    /** The baseline revisions that wait for a professional, at most one for each ear. */
    public List<BaselineChange> openProposals() {
        return OpenProposals.of(history, judgement);
    }

    /** Every test with what became of it, in order of time. */
    public List<TestStory> stories() {
        return TestStory.allOf(this);
    }

    /** Completed years today, where the birth date is on record. */
    public OptionalInt ageToday() {
        return details.birthDate()
                .map(birth -> OptionalInt.of(Period.between(birth, asOf).getYears()))
                .orElse(OptionalInt.empty());
    }
}
