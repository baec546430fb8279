package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

/** A worker of over 60, for whom the age tables allow nothing, with as many tests and decisions as a test needs. */
public final class Case {

    private final List<Audiogram> audiograms = new ArrayList<>();
    private final List<Decision> decisions = new ArrayList<>();
    private Optional<LocalDate> enrolledFrom = Optional.empty();
    private Optional<LocalDate> endDate = Optional.empty();
    private BaselineRevision baselineRevision = BaselineRevision.OFF;
    private RuleSet ruleSet = RuleSets.OSHA;

    public Case enrolledFrom(String date) {
        enrolledFrom = Optional.of(LocalDate.parse(date));
        return this;
    }

    public Case left(String endDate) {
        this.endDate = Optional.of(LocalDate.parse(endDate));
        return this;
    }

    public Case with(BaselineRevision revision) {
        baselineRevision = revision;
        return this;
    }

    public Case by(String ruleSetWord) {
        ruleSet = RuleSets.find(ruleSetWord).orElseThrow();
        return this;
    }

    /** A test with these levels at 2000, 3000 and 4000 Hz alike. */
    public Case test(String date, TestPurpose purpose, int left, int right) {
        audiograms.add(Vectors.flat(LocalDate.parse(date), purpose, left, right));
        return this;
    }

    /** A test with these cells at 2000, 3000 and 4000 Hz. */
    public Case test(String date, TestPurpose purpose, String left, String right) {
        audiograms.add(
                Vectors.audiogram(LocalDate.parse(date), purpose, List.of(left.split(" ")), List.of(right.split(" "))));
        return this;
    }

    public Case decided(String testDate, Ears ears, DecisionKind kind, String on) {
        decisions.add(new Decision(
                ears, LocalDate.parse(testDate), kind, LocalDate.parse(on), "Dr Invented", "as the test says"));
        return this;
    }

    public WorkerJudgement asOf(String day) {
        return Judge.judge(
                history(), new JudgingOptions(LocalDate.parse(day), ruleSet, AgeCorrection.ON, baselineRevision));
    }

    public WorkerHistory history() {
        WorkerFacts worker = new WorkerFacts(
                "C1", Optional.of(LocalDate.parse("1950-01-01")), Optional.of(Sex.MALE), enrolledFrom, endDate);
        return new WorkerHistory(worker, audiograms, decisions);
    }

    /** The row of this ear's first test on the day. */
    public static Determination row(WorkerJudgement judgement, String date, Ear ear) {
        return judgement.determinations().stream()
                .filter(row -> row.test().date().equals(LocalDate.parse(date)) && row.ear() == ear)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row on " + date + ", " + ear));
    }

    public static Judged judged(WorkerJudgement judgement, String date, Ear ear) {
        return (Judged) row(judgement, date, ear);
    }

    public static Optional<FollowUp> owed(WorkerJudgement judgement, FollowUpKind kind) {
        List<FollowUp> found = judgement.followUps().stream()
                .filter(followUp -> followUp.kind() == kind)
                .toList();
        if (found.size() > 1) {
            throw new AssertionError("more than one: " + found);
        }
        return found.stream().findFirst();
    }
}
