package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_DAY;

import org.jspecify.annotations.Nullable;
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
    private final AppliedRules rules;
    private final int asOf;
    private final @Nullable AgeCorrections ages;
    private final boolean isFirstRetestCounted;
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
    private int[] countingRetests = new int[EXPECTED];
    /** Ends of the level sums and the shift from the baseline, for each test and ear. */
    private int[] lowest = new int[EXPECTED * EARS];

    private int[] highest = new int[EXPECTED * EARS];
    private Answer[] shifts = new Answer[EXPECTED * EARS];

    WorkerTests(Population population, JudgingOptions options, AppliedRules rules) {
        this.population = population;
        this.workers = population.workers();
        this.rules = rules;
        this.asOf = Math.toIntExact(options.asOf().toEpochDay());
        this.ages = rules.ageCorrections().orElse(null);
        this.isFirstRetestCounted = rules.isFirstRetestCounted();
        this.averagedPlaces = AppliedRules.averagedPlaces();
    }

    void load(int worker) {
        int first = population.firstTest(worker);
        int end = population.endOfTests(worker);
        if (end - first > numbers.length) {
            makeRoom(end - first);
        }
        boolean ageIsKnown = workers.birthDay(worker) != NO_DAY && workers.sex(worker) != WorkerColumns.NO_SEX;
        int birth = ageIsKnown ? CalendarDays.monthAndDay(workers.birthDay(worker)) : 0;
        openAllowance = ages != null && !ageIsKnown ? Ranges.UNBOUNDED : 0;
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
                ageCorrections[size] = ages != null && ageIsKnown
                        ? ages.sum(
                                workers.sex(worker),
                                CalendarDays.completedYears(birth, CalendarDays.monthAndDay(Occasion.day(occasion))))
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
        countingRetests = new int[tests];
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
            countingRetests[test] = NONE;
            if (isCompared(test)) {
                for (int ear = 0; ear < EARS; ear++) {
                    shifts[test * EARS + ear] = changeReaches(rules.shiftSumDb(), baseline, test, ear);
                }
                if (purpose(test) == TestPurpose.RETEST) {
                    resolve(test);
                }
            }
        }
    }

    /** A retest answers for the latest test that opens a window and whose window it falls in. */
    private void resolve(int retest) {
        for (int test = retest - 1; test > baseline && isInWindow(retest, test); test--) {
            if (opensWindow(test)) {
                resolved[retest] = test;
                if (!isFirstRetestCounted || countingRetests[test] == NONE) {
                    countingRetests[test] = retest;
                }
                return;
            }
        }
    }

    /** Whether a test is so soon after an earlier one that it may be its retest. */
    boolean isInWindow(int later, int test) {
        return day(later) <= rules.lastRetestDay(day(test));
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

    /** The retest that takes this test's place where it can answer, or {@link #NONE}. */
    int countingRetest(int test) {
        return countingRetests[test];
    }

    /** Whether a compared test shows a shift from the baseline. */
    Answer shift(int test, int ear) {
        return shifts[test * EARS + ear];
    }

    /** Whether the one test shows a shift from the other that is large enough for a case. */
    Answer caseShift(int earlier, int later, int ear) {
        return changeReaches(rules.caseShiftSumDb(), earlier, later, ear);
    }

    /** Whether the level is high enough for a case. */
    Answer caseLevel(int test, int ear) {
        int row = test * EARS + ear;
        return Ranges.isAtLeast(lowest[row], highest[row], rules.caseLevelSumDb());
    }

    private Answer changeReaches(int sumDb, int earlier, int later, int ear) {
        int before = earlier * EARS + ear;
        int now = later * EARS + ear;
        int allowance = ageCorrections[later] - ageCorrections[earlier];
        return Ranges.isAtLeast(
                lowest[now] - highest[before] - allowance - openAllowance,
                highest[now] - lowest[before] - allowance,
                sumDb);
    }

    /** Whether no test is found to show a shift from the baseline. */
    boolean showNoShift() {
        for (int row = (baseline + 1) * EARS; row < size * EARS; row++) {
            if (shifts[row] == Answer.YES) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether an ear may get another baseline by revision, for which it needs two tests that are clearly better than the
     * first baseline or two that show a shift from it.
     */
    boolean mayRevise() {
        for (int ear = 0; ear < EARS; ear++) {
            int better = 0;
            int worse = 0;
            for (int test = baseline + 1; test < size; test++) {
                better += isImproved(test, ear) ? 1 : 0;
                worse += shift(test, ear) == Answer.YES ? 1 : 0;
            }
            if (better > 1 || worse > 1) {
                return true;
            }
        }
        return false;
    }

    private boolean isImproved(int test, int ear) {
        int before = baseline * EARS + ear;
        int now = test * EARS + ear;
        return Ranges.isPlain(lowest[before], highest[before])
                && Ranges.isPlain(lowest[now], highest[now])
                && lowest[before] - lowest[now] >= rules.improvementSumDb();
    }
}
