package org.thresholdregister.review;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.OptionalInt;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.validity.TestFlags;
import org.thresholdregister.roster.WorkerDetails;

/**
 * All there is about one worker, judged as of a day.
 *
 * @param asOf the day the judgement is as of, which is today
 * @param tests in order of time, those that are never judged among them
 * @param decisions in order of the day of decision
 * @param ruleSet the one in force at the worker's site today
 * @param validity what there is to doubt about each of the tests
 */
public record WorkerRecord(
        LocalDate asOf,
        WorkerDetails details,
        List<RecordedTest> tests,
        List<RecordedDecision> decisions,
        WorkerHistory history,
        WorkerJudgement judgement,
        RuleSet ruleSet,
        List<TestFlags> validity) {

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
