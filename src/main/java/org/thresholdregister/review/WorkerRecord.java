package org.thresholdregister.review;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.OpenProposals;
import org.thresholdregister.core.judging.RulesInForce;
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
 * @param rules what the worker's site answers to
 * @param validity what there is to doubt about each of the tests
 * @param cases what became of each shift and what may come next
 */
public record WorkerRecord(
        LocalDate asOf,
        WorkerDetails details,
        List<RecordedTest> tests,
        List<RecordedDecision> decisions,
        WorkerHistory history,
        WorkerJudgement judgement,
        RulesInForce rules,
        List<TestFlags> validity,
        WorkerCases cases) {

    /** The rule set in force at the worker's site today. */
    public RuleSet ruleSet() {
        return rules.on(asOf).ruleSet();
    }

    /** How a test of today would be judged. */
    JudgingOptions options() {
        return rules.optionsOn(asOf, asOf, RegisterRules.REVISION);
    }

    /** This record with one more decision, judged anew. */
    WorkerRecord with(RecordedDecision decision) {
        List<RecordedDecision> all =
                Stream.concat(decisions.stream(), Stream.of(decision)).toList();
        WorkerHistory longer = new WorkerHistory(
                history.worker(),
                history.audiograms(),
                all.stream().map(RecordedDecision::decision).toList());
        WorkerJudgement anew = rules.judge(longer, asOf, RegisterRules.REVISION);
        return new WorkerRecord(
                asOf, details, tests, all, longer, anew, rules, validity, WorkerCases.of(longer, anew, options()));
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
