package org.thresholdregister.core.columnar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.RandomHistories;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;

class PopulationBuilderTest {

    private static final short[] NOTHING_FOUND = new short[ThresholdCode.PER_AUDIOGRAM];

    private final PopulationBuilder builder = new PopulationBuilder();

    private int addTest(int worker, int day, TestPurpose purpose) {
        return builder.addTest(worker, day, purpose, NOTHING_FOUND);
    }

    private int find(String id) {
        byte[] text = ("<" + id + ">").getBytes(StandardCharsets.UTF_8);
        return builder.findWorker(text, 1, text.length - 1);
    }

    private static List<String> ids(Population population) {
        List<String> ids = new ArrayList<>();
        for (int worker = 0; worker < population.workerCount(); worker++) {
            ids.add(population.workerId(worker));
        }
        return ids;
    }

    /** All tests are added one by one, those of different workers mixed, in random order. */
    @Test
    void whatWasAddedInAnyOrderComesBackInOrder() {
        record Added(int worker, Audiogram audiogram) {}
        List<WorkerHistory> histories = new ArrayList<>();
        RandomHistories.check(3, 700, true, (history, options) -> {
            WorkerFacts facts = history.worker();
            histories.add(new WorkerHistory(
                    new WorkerFacts(
                            "W" + histories.size() * 7919 % 100_003,
                            facts.birthDate(),
                            facts.sex(),
                            facts.enrolledFrom(),
                            facts.endDate()),
                    history.audiograms(),
                    history.decisions()));
        });
        histories.add(new WorkerHistory(
                new WorkerFacts(
                        "W5 is not tested", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                List.of(),
                List.of()));
        List<Added> tests = new ArrayList<>();
        for (WorkerHistory history : histories) {
            builder.addHistory(new WorkerHistory(history.worker(), List.of(), history.decisions()));
            int worker = find(history.worker().workerId());
            history.audiograms().forEach(audiogram -> tests.add(new Added(worker, audiogram)));
        }
        Collections.shuffle(tests, new Random(3));
        tests.forEach(test -> builder.addTest(test.worker(), test.audiogram()));

        Population population = builder.build();

        histories.sort(Comparator.comparing(history -> history.worker().workerId()));
        assertThat(population.workerCount()).isEqualTo(histories.size());
        assertThat(population.testCount()).isEqualTo(tests.size());
        for (int worker = 0; worker < histories.size(); worker++) {
            WorkerHistory expected = histories.get(worker);
            assertThat(population.history(worker))
                    .isEqualTo(new WorkerHistory(
                            expected.worker(),
                            expected.audiograms().stream()
                                    .sorted(Audiogram.CHRONOLOGICAL)
                                    .toList(),
                            expected.decisions()));
            for (int test = population.firstTest(worker); test < population.endOfTests(worker); test++) {
                assertThat(population.workerOf(test)).isEqualTo(worker);
            }
            assertThat(population.numberInBuilder(worker))
                    .isEqualTo(find(expected.worker().workerId()));
        }
    }

    /** In UTF-16, the letter beyond the first plane would come before the full-width one. */
    @Test
    void workersStandInTheOrderOfCodePoints() {
        List.of("b", "\uFF21", "\uD835\uDC00", "a", "B", "é", "a1", "").forEach(builder::worker);

        assertThat(ids(builder.build())).containsExactly("", "B", "a", "a1", "b", "é", "\uFF21", "\uD835\uDC00");
    }

    @Test
    void manyWorkersAreFoundByTheirIds() {
        for (int i = 0; i < 5000; i++) {
            assertThat(builder.worker("W" + i)).isEqualTo(i);
        }
        for (int i = 0; i < 5000; i++) {
            assertThat(find("W" + i)).isEqualTo(i);
            assertThat(builder.worker("W" + i)).isEqualTo(i);
        }
        assertThat(find("W5000")).isEqualTo(PopulationBuilder.NO_WORKER);
        assertThat(builder.workersAdded()).isEqualTo(5000);
    }

    @Test
    void anIdIsCopiedAsItsBytes() {
        builder.worker("Zoë");
        Population population = builder.build();
        byte[] text = new byte[7];
        Arrays.fill(text, (byte) '.');

        assertThat(population.idLength(0)).isEqualTo(4);
        assertThat(population.copyId(0, text, 1)).isEqualTo(5);
        assertThat(new String(text, StandardCharsets.UTF_8)).isEqualTo(".Zoë..");
    }

    @Test
    void whatIsNotKnownOfAWorkerStaysUnknown() {
        builder.worker("A");

        assertThat(builder.build().facts(0))
                .isEqualTo(
                        new WorkerFacts("A", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    @Test
    void whatIsKnownOfAWorkerComesBack() {
        int worker = builder.worker("A");
        builder.setBirthDay(worker, -3000);
        builder.setSex(worker, Sex.FEMALE);
        builder.setEnrolledFrom(worker, 11_000);
        builder.setEndDay(worker, 20_000);

        assertThat(builder.build().facts(0))
                .isEqualTo(new WorkerFacts(
                        "A",
                        Optional.of(LocalDate.ofEpochDay(-3000)),
                        Optional.of(Sex.FEMALE),
                        Optional.of(LocalDate.ofEpochDay(11_000)),
                        Optional.of(LocalDate.ofEpochDay(20_000))));
    }

    @Test
    void someoneIsBornAfterADayOnlyWhereTheBirthdayIsKnown() {
        int worker = builder.worker("A");
        assertThat(builder.isBornAfter(worker, 99)).isFalse();

        builder.setBirthDay(worker, 100);

        assertThat(builder.isBornAfter(worker, 99)).isTrue();
        assertThat(builder.isBornAfter(worker, 100)).isFalse();
    }

    @Test
    void aRemovedWorkerIsNotFoundAndNotThere() {
        builder.worker("A");
        int removed = builder.worker("B");
        builder.removeWorker(removed);

        assertThat(find("B")).isEqualTo(PopulationBuilder.NO_WORKER);
        assertThatIllegalArgumentException().isThrownBy(() -> addTest(removed, 1, TestPurpose.ANNUAL));
        assertThat(ids(builder.build())).containsExactly("A");
    }

    @Test
    void aRemovedWorkerMayBeAddedAnew() {
        int removed = builder.worker("A");
        builder.setSex(removed, Sex.MALE);
        builder.removeWorker(removed);
        int added = builder.worker("A");
        for (int i = 0; i < 2000; i++) {
            builder.worker("W" + i);
        }

        assertThat(added).isNotEqualTo(removed);
        assertThat(find("A")).isEqualTo(added);
        assertThat(builder.build().facts(0).sex()).isEmpty();
    }

    @Test
    void testsOfARemovedWorkerAreNotLost() {
        int worker = builder.worker("A");
        addTest(worker, 1, TestPurpose.ANNUAL);
        builder.removeWorker(worker);

        assertThatIllegalStateException().isThrownBy(builder::build);
    }

    @Test
    void testsOfOneWorkerDayAndPurposeAreNamedTogetherInTheOrderInWhichTheyCame() {
        int one = builder.worker("A");
        int other = builder.worker("B");
        int first = addTest(one, 7, TestPurpose.ANNUAL);
        addTest(other, 7, TestPurpose.ANNUAL);
        addTest(one, 7, TestPurpose.RETEST);
        int second = addTest(one, 7, TestPurpose.ANNUAL);
        addTest(one, 8, TestPurpose.ANNUAL);
        int third = addTest(one, 7, TestPurpose.ANNUAL);

        assertThat(builder.repeatedTests()).containsExactly(new int[] {first, second, third});
        assertThatIllegalStateException().isThrownBy(builder::build);
    }

    @Test
    void aDroppedTestIsNotThere() {
        int worker = builder.worker("A");
        int dropped = addTest(worker, 7, TestPurpose.ANNUAL);
        addTest(worker, 7, TestPurpose.ANNUAL);
        addTest(worker, 5, TestPurpose.EXIT);
        int alsoDropped = addTest(worker, 4, TestPurpose.EXIT);
        builder.dropTest(dropped);
        builder.dropTest(alsoDropped);

        assertThat(builder.isDropped(dropped)).isTrue();
        assertThat(builder.repeatedTests()).isEmpty();
        assertThat(builder.hasTestOn(worker, 7)).isTrue();
        assertThat(builder.hasTestOn(worker, 4)).isFalse();
        Population population = builder.build();
        assertThat(population.testCount()).isEqualTo(2);
        assertThat(population.day(0)).isEqualTo(5);
        assertThat(population.purpose(0)).isEqualTo(TestPurpose.EXIT);
        assertThat(population.day(1)).isEqualTo(7);
    }

    @Test
    void aTestOfADayIsFoundOfItsWorkerOnly() {
        int one = builder.worker("A");
        int other = builder.worker("B");
        int test = addTest(one, -40, TestPurpose.OTHER);

        assertThat(builder.hasTestOn(one, -40)).isTrue();
        assertThat(builder.hasTestOn(one, -41)).isFalse();
        assertThat(builder.hasTestOn(other, -40)).isFalse();
        assertThat(builder.workerOfTest(test)).isEqualTo(one);
        assertThat(builder.day(test)).isEqualTo(-40);
        assertThat(builder.purpose(test)).isEqualTo(TestPurpose.OTHER);
        assertThat(builder.testsAdded()).isEqualTo(1);
    }

    @Test
    void decisionsStayWithTheirWorker() {
        int second = builder.worker("B");
        int first = builder.worker("A");
        List<Decision> decisions = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            LocalDate day = LocalDate.of(2020, 1, 1).plusDays(i);
            decisions.add(new Decision(Ears.LEFT, day, DecisionKind.NOTICE_GIVEN, day, "", ""));
            builder.addDecision(i % 2 == 0 ? second : first, decisions.get(i));
        }

        Population population = builder.build();

        assertThat(population.decisions(0)).hasSize(20).startsWith(decisions.get(1), decisions.get(3));
        assertThat(population.decisions(1)).hasSize(20).startsWith(decisions.get(0), decisions.get(2));
    }

    @Test
    void anAudiogramThatIsNoneIsRefused() {
        int worker = builder.worker("A");
        short[] wrong = NOTHING_FOUND.clone();
        wrong[13] = (short) ThresholdCode.COUNT;

        assertThatIllegalArgumentException()
                .isThrownBy(() -> builder.addTest(worker, 1, TestPurpose.ANNUAL, new short[13]));
        assertThatIllegalArgumentException().isThrownBy(() -> builder.addTest(worker, 1, TestPurpose.ANNUAL, wrong));
        assertThatIllegalArgumentException().isThrownBy(() -> addTest(worker, Integer.MAX_VALUE, TestPurpose.ANNUAL));
        assertThatIllegalArgumentException().isThrownBy(() -> addTest(worker + 1, 1, TestPurpose.ANNUAL));
    }

    @Test
    void nobodyIsAPopulationToo() {
        Population population = builder.build();

        assertThat(population.workerCount()).isZero();
        assertThat(population.testCount()).isZero();
        assertThatIllegalArgumentException().isThrownBy(() -> population.workerOf(0));
    }
}
