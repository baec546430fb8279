package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_DAY;

import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.regulation.Answer;

/**
 * One worker's judged tests in order, each compared with the first baseline; loaded anew for each worker. Here a test
 * is its place among them, from 0. It takes every judged test to be valid for both ears, and the baseline to stay.
 */
final class WorkerTests {

    /** In place of a test. */
    static final int NONE = -1;

    private static final int EARS = Ear.values().length;
    private static final int EXPECTED = 32;

    private final Population population;
    private final WorkerColumns workers;
    private final Limits limits;
    private final int asOf;
    private final boolean withAgeCorrection;
    /** Where the averaged frequencies of each ear stand among a test's thresholds. */
    private final int[][] averagedPlaces;

    private int size;
    private int baseline;
    /** No end where the allowance for aging is not known, else nothing: how much more it may be. */
    private int openAllowance;

    private int[] numbers = new int[EXPECTED];
    private int[] occasions = new int[EXPECTED];
    private int[] ageCorrections = new int[EXPECTED];
    private int[] resolved = new int[EXPECTED];
    private int[] lastRetests = new int[EXPECTED];
    /** Ends of the level sums and the shift from the baseline, for each test and ear. */
    private int[] lowest = new int[EXPECTED * EARS];

    private int[] highest = new int[EXPECTED * EARS];
    private Answer[] shifts = new Answer[EXPECTED * EARS];

    WorkerTests(Population population, JudgingOptions options, Limits limits) {
        this.population = population;
        this.workers = population.workers();
        this.limits = limits;
        this.asOf = Math.toIntExact(options.asOf().toEpochDay());
        this.withAgeCorrection = options.ageCorrection() == AgeCorrection.ON;
        this.averagedPlaces = limits.placesByEar();
    }

    void load(int worker) {
        int first = population.firstTest(worker);
        int end = population.endOfTests(worker);
        if (end - first > numbers.length) {
            makeRoom(end - first);
        }
        boolean ageIsKnown = workers.birthDay(worker) != NO_DAY && workers.sex(worker) != WorkerColumns.NO_SEX;
        boolean corrects = withAgeCorrection && ageIsKnown;
        openAllowance = withAgeCorrection && !ageIsKnown ? Ranges.UNBOUNDED : 0;
        int birth = corrects ? CalendarDays.monthAndDay(workers.birthDay(worker)) : 0;
        size = 0;
        baseline = NONE;
        for (int number = first; number < end; number++) {
            int occasion = population.occasion(number);
            TestPurpose purpose = Occasion.purpose(occasion);
            if (purpose.isJudged() && Occasion.day(occasion) <= asOf) {
                if (purpose == TestPurpose.BASELINE && baseline == NONE) {
                    baseline = size;
                }
                numbers[size] = number;
                occasions[size] = occasion;
                ageCorrections[size] = corrects
                        ? limits.ageCorrections()
                                .sum(
                                        workers.sex(worker),
                                        CalendarDays.completedYears(
                                                birth, CalendarDays.monthAndDay(Occasion.day(occasion))))
                        : 0;
                sumLevels(number, size * EARS);
                size++;
            }
        }
        baseline = Math.max(baseline, 0);
        compareAll();
    }

    private void makeRoom(int tests) {
        numbers = new int[tests];
        occasions = new int[tests];
        ageCorrections = new int[tests];
        resolved = new int[tests];
        lastRetests = new int[tests];
        lowest = new int[tests * EARS];
        highest = new int[tests * EARS];
        shifts = new Answer[tests * EARS];
    }

    private void sumLevels(int number, int row) {
        for (int ear = 0; ear < EARS; ear++) {
            int least = 0;
            int most = 0;
            for (int place : averagedPlaces[ear]) {
                short code = population.thresholdCode(number, place);
                least += Ranges.lowest(code);
                most += Ranges.highest(code);
            }
            lowest[row + ear] = least;
            highest[row + ear] = most;
        }
    }

    private void compareAll() {
        for (int test = 0; test < size; test++) {
            resolved[test] = NONE;
            lastRetests[test] = NONE;
            if (isCompared(test)) {
                for (int ear = 0; ear < EARS; ear++) {
                    shifts[test * EARS + ear] = shift(baseline, test, ear);
                }
                if (purpose(test) == TestPurpose.RETEST) {
                    resolve(test);
                }
            }
        }
    }

    /** A retest answers for the latest test whose window it falls in. */
    private void resolve(int retest) {
        int firstDay = day(retest) - limits.retestDays();
        for (int test = retest - 1; test > baseline && day(test) >= firstDay; test--) {
            if (opensWindow(test)) {
                resolved[retest] = test;
                lastRetests[test] = retest;
                return;
            }
        }
    }

    private boolean opensWindow(int test) {
        return resolved[test] == NONE && (shift(test, 0) == Answer.YES || shift(test, 1) == Answer.YES);
    }

    int size() {
        return size;
    }

    /** The first baseline. */
    int baseline() {
        return baseline;
    }

    boolean isCompared(int test) {
        return test > baseline;
    }

    /** The test's number in the population. */
    int number(int test) {
        return numbers[test];
    }

    int day(int test) {
        return Occasion.day(occasions[test]);
    }

    private TestPurpose purpose(int test) {
        return Occasion.purpose(occasions[test]);
    }

    /** The test whose place this retest may take, or {@link #NONE}. */
    int resolved(int test) {
        return resolved[test];
    }

    /** The last retest that may take this test's place, or {@link #NONE}. */
    int lastRetest(int test) {
        return lastRetests[test];
    }

    /** Whether a compared test shows a standard threshold shift from the baseline. */
    Answer shift(int test, int ear) {
        return shifts[test * EARS + ear];
    }

    /** Whether there is a standard threshold shift from the one test to the other. */
    Answer shift(int earlier, int later, int ear) {
        int before = earlier * EARS + ear;
        int now = later * EARS + ear;
        int allowance = ageCorrections[later] - ageCorrections[earlier];
        return Ranges.isAtLeast(
                lowest[now] - highest[before] - allowance - openAllowance,
                highest[now] - lowest[before] - allowance,
                limits.shiftSumDb());
    }

    /** Whether the level is high enough for the log. */
    Answer levelReached(int test, int ear) {
        int row = test * EARS + ear;
        return Ranges.isAtLeast(lowest[row], highest[row], limits.levelSumDb());
    }
}
