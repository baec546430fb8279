package org.thresholdregister.review;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.caselife.WorkerCases;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.RulesInForce;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.validity.TestConditions;
import org.thresholdregister.roster.WorkerDetails;

/** Judged records of an invented worker, born on 1 January 1990. */
final class Records {

    private final List<RecordedTest> tests = new ArrayList<>();
    private final List<Decision> decisions = new ArrayList<>();
    private Optional<LocalDate> endDate = Optional.empty();

    /** The same level at every frequency of an ear. */
    Records test(String day, TestPurpose purpose, int left, int right) {
        return test(day, purpose, Threshold.measured(left), Threshold.measured(right));
    }

    Records test(String day, TestPurpose purpose, Threshold left, Threshold right) {
        var builder = new Audiogram.Builder(LocalDate.parse(day), purpose);
        Arrays.stream(Frequency.values())
                .forEach(frequency -> builder.set(Ear.LEFT, frequency, left).set(Ear.RIGHT, frequency, right));
        var facts = new TestFacts(Optional.empty(), Optional.empty(), "", "", "", "", "", TestConditions.NO_REPEAT);
        tests.add(new RecordedTest(tests.size(), 1, builder.build(), facts));
        return this;
    }

    Records decision(Decision decision) {
        decisions.add(decision);
        return this;
    }

    Records leftOn(String day) {
        endDate = Optional.of(LocalDate.parse(day));
        return this;
    }

    WorkerRecord asOf(String day) {
        LocalDate today = LocalDate.parse(day);
        var worker = new WorkerDetails(
                "W-1",
                Optional.of(LocalDate.of(1990, 1, 1)),
                Optional.of(Sex.FEMALE),
                "Quill",
                "Cato",
                Optional.empty(),
                endDate,
                "Yard",
                "",
                "",
                "",
                Optional.empty(),
                Optional.of(LocalDate.of(2020, 1, 1)),
                "",
                "");
        var history = new WorkerHistory(
                worker.facts(), tests.stream().map(RecordedTest::audiogram).toList(), decisions);
        JudgingOptions options = JudgingOptions.asOf(today);
        WorkerJudgement judgement = Judge.judge(history, options);
        return new WorkerRecord(
                today,
                worker,
                List.copyOf(tests),
                decisions.stream()
                        .map(decision -> new RecordedDecision(decision, "tester", Instant.EPOCH))
                        .toList(),
                history,
                judgement,
                RulesInForce.always(options.ruleSet(), options.ageCorrection()),
                List.of(),
                WorkerCases.of(history, judgement, options));
    }
}
