package org.thresholdregister.core.columnar;

import java.time.LocalDate;
import java.util.Random;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;

/**
 * An invented plant of any size: a baseline and nine yearly tests for each worker, of whom some lose hearing, with a
 * retest after every second larger loss in place of a yearly test. Those who lose hearing have been told of one test, and
 * its case was recorded. The same plant for the same seed.
 */
final class SyntheticPopulation {

    static final int TESTS_PER_WORKER = 10;
    static final LocalDate AS_OF = LocalDate.of(2025, 12, 31);

    private static final int FIRST_YEAR = 2016;
    private static final int SPREAD_DB = 3;

    private final Random random = new Random(20);
    private final PopulationBuilder builder = new PopulationBuilder();
    private final short[] codes = new short[ThresholdCode.PER_AUDIOGRAM];

    private SyntheticPopulation() {}

    static Population of(int tests) {
        SyntheticPopulation synthetic = new SyntheticPopulation();
        for (int worker = 0; worker < tests / TESTS_PER_WORKER; worker++) {
            synthetic.addWorker("FG-%07d".formatted(worker));
        }
        return synthetic.builder.build();
    }

    private void addWorker(String id) {
        int worker = builder.worker(id);
        LocalDate test = LocalDate.of(FIRST_YEAR, 1, 1).plusDays(random.nextInt(300));
        if (random.nextInt(100) > 0) {
            builder.setBirthDay(
                    worker, day(test.minusYears(random.nextInt(18, 60)).minusDays(random.nextInt(365))));
        }
        if (random.nextInt(100) > 0) {
            builder.setSex(worker, random.nextInt(4) == 0 ? Sex.FEMALE : Sex.MALE);
        }
        if (random.nextInt(10) == 0) {
            builder.setEndDay(worker, day(AS_OF) - random.nextInt(3000));
        }
        boolean losesHearing = random.nextInt(5) == 0;
        int[] levels = {random.nextInt(0, 20), random.nextInt(0, 20)};
        TestPurpose purpose = TestPurpose.BASELINE;
        for (int i = 0; i < TESTS_PER_WORKER; i++) {
            addTest(worker, test, purpose, levels);
            if (losesHearing && i == TESTS_PER_WORKER / 2) {
                LocalDate told = test.plusDays(random.nextInt(20));
                builder.addDecision(
                        worker, new Decision(Ears.BOTH, test, DecisionKind.NOTICE_GIVEN, told, "J. Invented", ""));
                builder.addDecision(
                        worker, new Decision(Ears.BOTH, test, DecisionKind.RECORDED, told, "J. Invented", ""));
            }
            boolean lost = losesHearing && random.nextInt(3) == 0;
            if (lost && random.nextBoolean() && purpose == TestPurpose.ANNUAL) {
                purpose = TestPurpose.RETEST;
                test = test.plusDays(random.nextInt(40));
            } else {
                purpose = TestPurpose.ANNUAL;
                test = test.plusDays(random.nextInt(340, 390));
                for (int ear = 0; ear < levels.length; ear++) {
                    levels[ear] += lost ? random.nextInt(0, 12) : random.nextInt(0, 2);
                }
            }
        }
    }

    private void addTest(int worker, LocalDate date, TestPurpose purpose, int[] levels) {
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                codes[ThresholdCode.place(ear, frequency)] = code(levels[ear.ordinal()]);
            }
        }
        builder.addTest(worker, day(date), purpose, codes);
    }

    private short code(int level) {
        return switch (random.nextInt(200)) {
            case 0 -> ThresholdCode.NOT_GIVEN;
            case 1 -> ThresholdCode.noResponseAt(90);
            default -> ThresholdCode.measured(Math.min(level + random.nextInt(-SPREAD_DB, SPREAD_DB + 1), 120));
        };
    }

    private static int day(LocalDate date) {
        return Math.toIntExact(date.toEpochDay());
    }
}
