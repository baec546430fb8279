package org.thresholdregister.core.judging;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.rules.RuleSets;

class NextChangePropertiesTest {

    private static final LocalDate FIRST_TEST = LocalDate.of(2024, 1, 10);

    /** A worker with some tests a few weeks apart, shifts likely, and now and then a decision and a last day. */
    private static WorkerHistory someHistory(Random random) {
        List<Audiogram> tests = new ArrayList<>();
        List<Decision> decisions = new ArrayList<>();
        LocalDate day = FIRST_TEST;
        for (int i = 0; i < 1 + random.nextInt(5); i++) {
            TestPurpose purpose =
                    i == 0 ? TestPurpose.BASELINE : TestPurpose.values()[random.nextInt(TestPurpose.values().length)];
            tests.add(flat(day, purpose, 10 + 5 * random.nextInt(6), 10 + 5 * random.nextInt(6)));
            if (random.nextInt(4) == 0) {
                DecisionKind kind = DecisionKind.values()[random.nextInt(DecisionKind.values().length)];
                decisions.add(new Decision(
                        Ears.values()[random.nextInt(3)], day, kind, day.plusDays(random.nextInt(60)), "", ""));
            }
            day = day.plusDays(5 + random.nextInt(40));
        }
        return new WorkerHistory(
                new WorkerFacts(
                        "1",
                        Optional.of(LocalDate.of(1980, 1, 1)),
                        Optional.of(Sex.FEMALE),
                        Optional.of(FIRST_TEST),
                        random.nextInt(3) == 0
                                ? Optional.of(FIRST_TEST.plusDays(random.nextInt(500)))
                                : Optional.empty()),
                tests,
                decisions);
    }

    private static Audiogram flat(LocalDate day, TestPurpose purpose, int left, int right) {
        Audiogram.Builder audiogram = new Audiogram.Builder(day, purpose);
        for (Frequency frequency : Frequency.values()) {
            audiogram.set(Ear.LEFT, frequency, Threshold.measured(left));
            audiogram.set(Ear.RIGHT, frequency, Threshold.measured(right));
        }
        return audiogram.build();
    }

    @Test
    void nothingChangesBeforeTheNextChange() {
        int changes = 0;
        Random random = new Random(1910_95);
        for (int i = 0; i < 150; i++) {
            WorkerHistory history = someHistory(random);
            for (BaselineRevision revision : BaselineRevision.values()) {
                LocalDate asOf = FIRST_TEST.plusDays(random.nextInt(200));
                WorkerJudgement judgement = judge(history, asOf, revision);
                LocalDate change = NextChange.after(asOf, history, judgement).orElse(LocalDate.MAX);
                assertThat(change).isAfter(asOf);
                LocalDate last = FIRST_TEST.plusDays(700);
                for (LocalDate day = asOf; day.isBefore(change) && day.isBefore(last); day = day.plusDays(1)) {
                    assertThat(judge(history, day, revision)).isEqualTo(judgement);
                }
                if (change.isBefore(last) && !judge(history, change, revision).equals(judgement)) {
                    changes++;
                }
            }
        }
        assertThat(changes).as("cases in which the day did bring a change").isGreaterThan(50);
    }

    private static WorkerJudgement judge(WorkerHistory history, LocalDate day, BaselineRevision revision) {
        return Judge.judge(history, new JudgingOptions(day, RuleSets.OSHA, AgeCorrection.ON, revision));
    }
}
