package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
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

/** Invented histories with everything in them that judging looks at, the same ones for the same seed. */
public final class RandomHistories {

    /** Levels stay this far under the end of the scale, so that a test may raise them. */
    private static final int HIGHEST_LEVEL = 110;

    private final Random random;
    private final boolean withDecisions;

    private RandomHistories(long seed, boolean withDecisions) {
        this.random = new Random(seed);
        this.withDecisions = withDecisions;
    }

    /** Hands each of so many histories to the check, with options for it. */
    public static void check(
            long seed, int count, boolean withDecisions, BiConsumer<WorkerHistory, JudgingOptions> check) {
        RandomHistories histories = new RandomHistories(seed, withDecisions);
        for (int i = 0; i < count; i++) {
            WorkerHistory history = histories.next();
            check.accept(history, histories.optionsFor(history));
        }
    }

    private JudgingOptions optionsFor(WorkerHistory history) {
        LocalDate last = history.audiograms().stream()
                .map(Audiogram::date)
                .max(LocalDate::compareTo)
                .orElseThrow();
        return new JudgingOptions(
                last.plusDays(random.nextInt(45)),
                RuleSets.OSHA,
                pick(AgeCorrection.values()),
                pick(BaselineRevision.values()));
    }

    private WorkerHistory next() {
        List<Audiogram> audiograms = audiograms();
        LocalDate first = audiograms.getFirst().date();
        WorkerFacts worker = new WorkerFacts(
                "R1",
                random.nextInt(10) == 0
                        ? Optional.empty()
                        : Optional.of(first.minusYears(random.nextInt(17, 65)).minusDays(random.nextInt(365))),
                random.nextInt(10) == 0 ? Optional.empty() : Optional.of(pick(Sex.values())),
                random.nextBoolean() ? Optional.empty() : Optional.of(first.minusDays(random.nextInt(300))),
                random.nextInt(4) == 0
                        ? Optional.of(audiograms.getLast().date().plusDays(random.nextInt(500)))
                        : Optional.empty());
        return new WorkerHistory(worker, audiograms, withDecisions ? decisions(audiograms) : List.of());
    }

    private List<Audiogram> audiograms() {
        List<Audiogram> audiograms = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        LocalDate date = LocalDate.of(2015, 1, 1).plusDays(random.nextInt(365));
        int[] level = {random.nextInt(1, 7) * 5, random.nextInt(1, 7) * 5};
        TestPurpose purpose = random.nextInt(4) == 0 ? TestPurpose.ANNUAL : TestPurpose.BASELINE;
        int tests = random.nextInt(1, 10);
        while (audiograms.size() < tests) {
            if (taken.add(date + " " + purpose)) {
                audiograms.add(audiogram(date, purpose, level));
            }
            if (random.nextInt(10) < 4) {
                date = date.plusDays(random.nextInt(40));
                purpose = random.nextInt(5) == 0 ? pick(TestPurpose.values()) : TestPurpose.RETEST;
                move(level, -5, 5);
            } else {
                date = date.plusDays(random.nextInt(150, 500));
                purpose = random.nextInt(5) == 0 ? pick(TestPurpose.values()) : TestPurpose.ANNUAL;
                move(level, -10, 15);
            }
        }
        return audiograms;
    }

    private void move(int[] level, int least, int most) {
        for (int ear = 0; ear < level.length; ear++) {
            level[ear] = Math.clamp(level[ear] + random.nextInt(least, most + 1), 0, 60);
        }
    }

    private Audiogram audiogram(LocalDate date, TestPurpose purpose, int[] level) {
        Audiogram.Builder builder = new Audiogram.Builder(date, purpose);
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(ear, frequency, threshold(level[ear.ordinal()] + random.nextInt(-6, 7)));
            }
        }
        return builder.build();
    }

    private Threshold threshold(int about) {
        return switch (random.nextInt(60)) {
            case 0 -> Threshold.notGiven();
            case 1 -> Threshold.noResponse();
            case 2 -> Threshold.noResponseAt(random.nextInt(30, HIGHEST_LEVEL));
            default -> Threshold.measured(Math.max(about, -10));
        };
    }

    private List<Decision> decisions(List<Audiogram> audiograms) {
        List<Decision> decisions = new ArrayList<>();
        for (int i = random.nextInt(5); i > 0; i--) {
            LocalDate testDate = pick(audiograms.toArray(Audiogram[]::new)).date();
            long daysLeft =
                    ChronoUnit.DAYS.between(testDate, audiograms.getLast().date());
            decisions.add(new Decision(
                    pick(Ears.values()),
                    testDate,
                    pick(DecisionKind.values()),
                    testDate.plusDays(random.nextLong(daysLeft + 1)),
                    "Dr Invented",
                    "decision " + i));
        }
        return decisions;
    }

    private <E> E pick(E[] values) {
        return values[random.nextInt(values.length)];
    }
}
