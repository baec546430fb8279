package org.thresholdregister.letters;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.RulesInForce;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.validity.TestConditions;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.review.RecordedDecision;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.roster.WorkerDetails;

/** An invented worker with a shift in the right ear, to show what a text will look like. */
final class ExampleRecord {

    private static final int[] BASELINE = {10, 5, 10, 10, 15, 15, 10};
    private static final int[] RIGHT_NOW = {10, 10, 20, 25, 35, 30, 20};
    private static final int[] LEFT_NOW = {10, 5, 10, 15, 15, 20, 10};

    private ExampleRecord() {}

    static WorkerRecord of(String site, LocalDate today, LetterKind kind) {
        LocalDate testDay = today.minusDays(3);
        List<RecordedTest> tests = List.of(
                test(1, testDay.minusYears(2), TestPurpose.BASELINE, BASELINE, BASELINE),
                test(2, testDay, TestPurpose.ANNUAL, RIGHT_NOW, LEFT_NOW));
        List<Decision> decisions = switch (kind) {
            case BASELINE_REVISION -> List.of(decision(testDay, DecisionKind.BASELINE, today));
            case NOT_WORK_RELATED -> List.of(decision(testDay, DecisionKind.NOT_WORK_RELATED, today));
            case RESULT, SHIFT_NOTICE, RETEST_INVITATION, REFERRAL -> List.of();
        };
        var details = new WorkerDetails(
                "00000",
                Optional.of(LocalDate.of(1985, 4, 12)),
                Optional.of(Sex.FEMALE),
                "Sample",
                "Robin",
                Optional.empty(),
                Optional.empty(),
                site,
                "Hot End",
                "Press operator",
                "",
                Optional.of(new BigDecimal("91.5")),
                Optional.of(testDay.minusYears(2)),
                "",
                "");
        var history = new WorkerHistory(
                details.facts(), tests.stream().map(RecordedTest::audiogram).toList(), decisions);
        RulesInForce rules = RulesInForce.always(RuleSets.OSHA, AgeCorrection.OFF);
        WorkerJudgement judgement = rules.judge(history, today, BaselineRevision.PROPOSE);
        JudgingOptions options = rules.optionsOn(today, today, BaselineRevision.PROPOSE);
        return new WorkerRecord(
                today,
                details,
                tests,
                decisions.stream()
                        .map(decision -> new RecordedDecision(decision, "", Instant.EPOCH))
                        .toList(),
                history,
                judgement,
                rules,
                List.of(),
                WorkerCases.of(history, judgement, options));
    }

    static LetterOccasion occasion(WorkerRecord record, LetterKind kind) {
        RecordedTest test = record.tests().getLast();
        return new LetterOccasion(
                record.details().workerId(), kind, test.key(), test.audiogram().date(), Ears.RIGHT);
    }

    private static Decision decision(LocalDate testDay, DecisionKind kind, LocalDate day) {
        return new Decision(Ears.RIGHT, testDay, kind, day, "Dr. Example, physician", "");
    }

    private static RecordedTest test(long key, LocalDate day, TestPurpose purpose, int[] right, int[] left) {
        var builder = new Audiogram.Builder(day, purpose);
        Frequency[] frequencies = Frequency.values();
        for (int i = 0; i < frequencies.length; i++) {
            builder.set(Ear.RIGHT, frequencies[i], Threshold.measured(right[i]))
                    .set(Ear.LEFT, frequencies[i], Threshold.measured(left[i]));
        }
        return new RecordedTest(
                key,
                0,
                builder.build(),
                new TestFacts(Optional.empty(), Optional.empty(), "", "", "", "", "", TestConditions.NO_REPEAT));
    }
}
