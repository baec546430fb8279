package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.rules.Finding;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSet;

/**
 * Which rule set a workplace answers to, from which day on. A test is judged by the rule set in force on its day; what
 * was determined before a change stays as the rule set of its day has it.
 *
 * @param choices in order of their days; the first counts from the beginning of time
 */
public record RulesInForce(List<Choice> choices, Holidays holidays) {

    /** A rule set, whether it makes the allowance for aging, and its first day. */
    public record Choice(LocalDate from, RuleSet ruleSet, AgeCorrection ageCorrection) {}

    /** @throws IllegalArgumentException without any choice, or with two of one day */
    public RulesInForce {
        if (choices.isEmpty()) {
            throw new IllegalArgumentException("a workplace answers to some rule set");
        }
        choices = choices.stream().sorted(Comparator.comparing(Choice::from)).toList();
        if (choices.stream().map(Choice::from).distinct().count() < choices.size()) {
            throw new IllegalArgumentException("a workplace answers to one rule set on a day");
        }
    }

    /** One rule set for all time. */
    public static RulesInForce always(RuleSet ruleSet, AgeCorrection ageCorrection) {
        return new RulesInForce(List.of(new Choice(LocalDate.MIN, ruleSet, ageCorrection)), Holidays.NONE);
    }

    /** What is in force on a day. */
    public Choice on(LocalDate day) {
        Choice inForce = choices.getFirst();
        for (Choice choice : choices) {
            if (!choice.from.isAfter(day)) {
                inForce = choice;
            }
        }
        return inForce;
    }

    /** Judges a history, each test by the rule set of its day. */
    public WorkerJudgement judge(WorkerHistory history, LocalDate asOf, BaselineRevision revision) {
        if (choices.size() == 1) {
            return Judge.judge(history, options(choices.getFirst(), asOf, revision));
        }
        List<Determination> determinations = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        List<FollowUp> followUps = new ArrayList<>();
        WorkerJudgement current = Judge.judge(history, options(on(asOf), asOf, revision));
        for (Choice choice : choices) {
            WorkerJudgement judgement =
                    choice.equals(on(asOf)) ? current : Judge.judge(history, options(choice, asOf, revision));
            judgement.determinations().stream()
                    .filter(determination -> on(determination.test().date()).equals(choice))
                    .forEach(determinations::add);
            judgement.findings().stream()
                    .filter(finding -> on(finding.test().date()).equals(choice))
                    .forEach(findings::add);
            judgement.followUps().stream()
                    .filter(followUp -> by(followUp, asOf).equals(choice))
                    .forEach(followUps::add);
        }
        followUps.sort(FollowUps.BY_DATE_AND_KIND);
        return new WorkerJudgement(determinations, findings, followUps, current.proposals());
    }

    /** The choice by which something is owed: that of today for the next test, else that of the test it follows. */
    public Choice by(FollowUp followUp, LocalDate asOf) {
        return switch (followUp.kind()) {
            case ANNUAL_TEST, BASELINE_TEST -> on(asOf);
            case RETEST, NOTICE, RECORD -> on(followUp.testDate().orElse(asOf));
        };
    }

    /** How a test of this day is judged. */
    public JudgingOptions optionsOn(LocalDate day, LocalDate asOf, BaselineRevision revision) {
        return options(on(day), asOf, revision);
    }

    private JudgingOptions options(Choice choice, LocalDate asOf, BaselineRevision revision) {
        return new JudgingOptions(asOf, choice.ruleSet, choice.ageCorrection, revision, holidays);
    }
}
