package org.thresholdregister.core.columnar;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;

/**
 * Collects workers, tests and decisions in any order and puts them together once. Workers and tests get numbers in the
 * order in which they are added, which are other numbers than those of the {@link Population}: see
 * {@link Population#numberInBuilder}. Days are counted as {@link LocalDate#toEpochDay} counts them. For one thread.
 */
public final class PopulationBuilder {

    /** In place of a worker's number: there is none with this id. */
    public static final int NO_WORKER = -1;

    /** Thresholds are kept in blocks of so many tests, so that growing copies nothing. */
    private static final int BLOCK_TESTS = 1 << 13;

    private final WorkerColumns workers = new WorkerColumns();
    private final BitSet removed = new BitSet();
    /** Numbers of workers, found by the hash of their ids, each plus one; 0 is free. */
    private int[] slots = new int[1024];

    private int testCount;
    private int[] workersOfTests = new int[1024];
    private int[] occasions = new int[1024];
    private final List<short[]> codes = new ArrayList<>();
    private final BitSet dropped = new BitSet();
    private @Nullable TestOrder order;

    private final List<Decision> decisions = new ArrayList<>();
    private int[] workersOfDecisions = new int[16];

    /** The number of the worker with this id in UTF-8, who is added if not there. */
    public int worker(byte[] text, int from, int to) {
        int slot = slotOf(text, from, to);
        int found = slots[slot] - 1;
        if (found >= 0 && !removed.get(found)) {
            return found;
        }
        int worker = workers.add(text, from, to);
        slots[slot] = worker + 1;
        if (workers.size() > slots.length / 2) {
            growSlots();
        }
        return worker;
    }

    /** The number of the worker with this id, who is added if not there. */
    public int worker(String id) {
        byte[] text = id.getBytes(StandardCharsets.UTF_8);
        return worker(text, 0, text.length);
    }

    /** The number of the worker with this id in UTF-8, or {@link #NO_WORKER}. */
    public int findWorker(byte[] text, int from, int to) {
        int found = slots[slotOf(text, from, to)] - 1;
        return found >= 0 && removed.get(found) ? NO_WORKER : found;
    }

    /** How many workers were ever added: their numbers are less. */
    public int workersAdded() {
        return workers.size();
    }

    public String workerId(int worker) {
        return workers.id(worker);
    }

    public void setBirthDay(int worker, int epochDay) {
        workers.setBirthDay(worker, known(epochDay));
    }

    public void setSex(int worker, Sex sex) {
        workers.setSex(worker, sex);
    }

    /** The first day at or above the action level. */
    public void setEnrolledFrom(int worker, int epochDay) {
        workers.setEnrolledFrom(worker, known(epochDay));
    }

    /** The last day of employment. */
    public void setEndDay(int worker, int epochDay) {
        workers.setEndDay(worker, known(epochDay));
    }

    private static int known(int epochDay) {
        if (epochDay == Population.NO_DAY) {
            throw new IllegalArgumentException("leave out a day that is not known");
        }
        return epochDay;
    }

    /** Sets all that is known of the worker. */
    public void setFacts(int worker, WorkerFacts facts) {
        facts.birthDate().ifPresent(date -> setBirthDay(worker, day(date)));
        facts.sex().ifPresent(sex -> setSex(worker, sex));
        facts.enrolledFrom().ifPresent(date -> setEnrolledFrom(worker, day(date)));
        facts.endDate().ifPresent(date -> setEndDay(worker, day(date)));
    }

    public WorkerFacts facts(int worker) {
        return workers.facts(worker);
    }

    /** Whether the worker is known to have been born after this day. */
    public boolean isBornAfter(int worker, int epochDay) {
        return workers.birthDay(worker) > epochDay;
    }

    /** Takes a worker out again, who must have no tests and no decisions; the number is not used again. */
    public void removeWorker(int worker) {
        removed.set(worker);
    }

    /**
     * Adds a test, and gives its number.
     *
     * @param codes by {@link ThresholdCode}, at the places of {@link ThresholdCode#place}; they are copied
     */
    public int addTest(int worker, int epochDay, TestPurpose purpose, short[] codes) {
        requireWorker(worker);
        requireCodes(codes);
        if (testCount == occasions.length) {
            int capacity = testCount + (testCount >> 1);
            workersOfTests = Arrays.copyOf(workersOfTests, capacity);
            occasions = Arrays.copyOf(occasions, capacity);
        }
        workersOfTests[testCount] = worker;
        occasions[testCount] = Occasion.of(epochDay, purpose);
        if (testCount % BLOCK_TESTS == 0) {
            this.codes.add(new short[BLOCK_TESTS * ThresholdCode.PER_AUDIOGRAM]);
        }
        System.arraycopy(codes, 0, this.codes.getLast(), placeInBlock(testCount), ThresholdCode.PER_AUDIOGRAM);
        order = null;
        return testCount++;
    }

    private static void requireCodes(short[] codes) {
        if (codes.length != ThresholdCode.PER_AUDIOGRAM) {
            throw new IllegalArgumentException("an audiogram has " + ThresholdCode.PER_AUDIOGRAM + " thresholds");
        }
        for (short code : codes) {
            if (!ThresholdCode.isCode(code)) {
                throw new IllegalArgumentException("no threshold code");
            }
        }
    }

    private void requireWorker(int worker) {
        if (worker < 0 || worker >= workers.size() || removed.get(worker)) {
            throw new IllegalArgumentException("no worker has this number");
        }
    }

    /** How many tests were ever added: their numbers are less. */
    public int testsAdded() {
        return testCount;
    }

    public int workerOfTest(int test) {
        return workersOfTests[test];
    }

    public int day(int test) {
        return Occasion.day(occasions[test]);
    }

    public TestPurpose purpose(int test) {
        return Occasion.purpose(occasions[test]);
    }

    /** Takes a test out again; its number is not used again. */
    public void dropTest(int test) {
        dropped.set(test);
        order = null;
    }

    public boolean isDropped(int test) {
        return dropped.get(test);
    }

    /**
     * The tests that are of one worker, day and purpose, by their numbers in the order in which they were added: one
     * array for each such group, in no particular order. At most one of each group may stay.
     */
    public List<int[]> repeatedTests() {
        return order().repeated();
    }

    /** Whether the worker has a test on this day that was not dropped. Best asked when all tests have been added. */
    public boolean hasTestOn(int worker, int epochDay) {
        return order().hasTestOn(worker, epochDay);
    }

    /** Adds what was decided about a worker's test. */
    public void addDecision(int worker, Decision decision) {
        requireWorker(worker);
        if (decisions.size() == workersOfDecisions.length) {
            workersOfDecisions = Arrays.copyOf(workersOfDecisions, 2 * workersOfDecisions.length);
        }
        workersOfDecisions[decisions.size()] = worker;
        decisions.add(decision);
    }

    /** Adds a worker with all that is on record. */
    public void addHistory(WorkerHistory history) {
        int worker = worker(history.worker().workerId());
        setFacts(worker, history.worker());
        history.audiograms().forEach(audiogram -> addTest(worker, audiogram));
        history.decisions().forEach(decision -> addDecision(worker, decision));
    }

    /** Adds a test, and gives its number. */
    public int addTest(int worker, Audiogram audiogram) {
        short[] found = new short[ThresholdCode.PER_AUDIOGRAM];
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                found[ThresholdCode.place(ear, frequency)] = ThresholdCode.of(audiogram.threshold(ear, frequency));
            }
        }
        return addTest(worker, day(audiogram.date()), audiogram.purpose(), found);
    }

    private static int day(LocalDate date) {
        return Math.toIntExact(date.toEpochDay());
    }

    /**
     * Puts the population together; the builder can be let go of.
     *
     * @throws IllegalStateException if a worker has two tests of one purpose on one day, or was removed and has some
     */
    public Population build() {
        int[] byId = workersById();
        int[] firstTests = new int[byId.length + 1];
        TestOrder sorted = order();
        if (!sorted.repeated().isEmpty()) {
            throw new IllegalStateException("a worker has two tests of one purpose on one day");
        }
        for (int i = 0; i < byId.length; i++) {
            firstTests[i + 1] = firstTests[i] + sorted.count(byId[i]);
        }
        int kept = firstTests[byId.length];
        if (kept != testCount - dropped.cardinality()) {
            throw new IllegalStateException("a worker who was removed has tests");
        }
        int[] keptOccasions = new int[kept];
        short[] keptCodes = new short[Math.multiplyExact(kept, ThresholdCode.PER_AUDIOGRAM)];
        int next = 0;
        for (int worker : byId) {
            for (int i = sorted.start(worker); i < sorted.end(worker); i++) {
                int test = sorted.test(i);
                keptOccasions[next] = occasions[test];
                System.arraycopy(
                        codes.get(test / BLOCK_TESTS),
                        placeInBlock(test),
                        keptCodes,
                        next * ThresholdCode.PER_AUDIOGRAM,
                        ThresholdCode.PER_AUDIOGRAM);
                next++;
            }
        }
        return withDecisions(byId, firstTests, keptOccasions, keptCodes);
    }

    private Population withDecisions(int[] byId, int[] firstTests, int[] keptOccasions, short[] keptCodes) {
        int[] places = new int[workers.size()];
        Arrays.fill(places, NO_WORKER);
        for (int i = 0; i < byId.length; i++) {
            places[byId[i]] = i;
        }
        int[] firstDecisions = new int[byId.length + 1];
        for (int i = 0; i < decisions.size(); i++) {
            int place = places[workersOfDecisions[i]];
            if (place == NO_WORKER) {
                throw new IllegalStateException("a worker who was removed has decisions");
            }
            firstDecisions[place + 1]++;
        }
        for (int i = 0; i < byId.length; i++) {
            firstDecisions[i + 1] += firstDecisions[i];
        }
        Decision[] sorted = new Decision[decisions.size()];
        int[] next = firstDecisions.clone();
        for (int i = 0; i < sorted.length; i++) {
            sorted[next[places[workersOfDecisions[i]]]++] = decisions.get(i);
        }
        return new Population(
                workers.inOrder(byId), byId, firstTests, keptOccasions, keptCodes, firstDecisions, sorted);
    }

    private int[] workersById() {
        int[] numbers = IntStream.range(0, workers.size())
                .filter(worker -> !removed.get(worker))
                .toArray();
        MergeSort.sort(numbers, workers::compareIds);
        return numbers;
    }

    private TestOrder order() {
        TestOrder current = order;
        if (current == null) {
            current = TestOrder.of(workers.size(), testCount, workersOfTests, occasions, dropped);
            order = current;
        }
        return current;
    }

    private static int placeInBlock(int test) {
        return test % BLOCK_TESTS * ThresholdCode.PER_AUDIOGRAM;
    }

    /** Where the worker of this id stands, or the free place where one would. */
    private int slotOf(byte[] text, int from, int to) {
        int slot = WorkerColumns.hash(text, from, to) & slots.length - 1;
        while (slots[slot] != 0 && !workers.hasId(slots[slot] - 1, text, from, to)) {
            slot = slot + 1 & slots.length - 1;
        }
        return slot;
    }

    private void growSlots() {
        slots = new int[2 * slots.length];
        for (int worker = 0; worker < workers.size(); worker++) {
            int slot = workers.idHash(worker) & slots.length - 1;
            while (slots[slot] != 0 && !workers.haveSameId(slots[slot] - 1, worker)) {
                slot = slot + 1 & slots.length - 1;
            }
            slots[slot] = worker + 1;
        }
    }
}
