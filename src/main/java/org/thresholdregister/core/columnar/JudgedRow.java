package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_DAY;
import static org.thresholdregister.core.columnar.Population.NO_TEST;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

/**
 * Reads the determinations of a {@link JudgedPopulation} one at a time, without an object for each: {@link #moveTo} a
 * test and ear, then ask. It holds a place and belongs to one thread. Whatever is neither stored nor asked is not
 * computed. Days are counted as {@link java.time.LocalDate#toEpochDay} counts them.
 */
public final class JudgedRow {

    /** In place of a number that is not plain: unknown, not needed, or with an open end. */
    public static final int NO_NUMBER = Integer.MIN_VALUE;

    private static final List<Optional<Recordability>> RECORDABILITIES =
            Arrays.stream(Recordability.values()).map(Optional::of).toList();
    private static final List<Optional<Answer>> ANSWERS =
            Arrays.stream(Answer.values()).map(Optional::of).toList();

    private final Population population;
    private final WorkerColumns workers;
    private final AppliedRules rules;
    private final Answers answers;
    private final @Nullable AgeCorrections ages;
    /** Where the averaged frequencies of each ear stand among a test's thresholds. */
    private final int[][] averagedPlaces;

    private int test;
    private Ear ear = Ear.LEFT;
    private int row;
    private int baseline;
    /** The ordinal of the worker's sex, or {@link WorkerColumns#NO_SEX}. */
    private int sex;
    /** As {@link CalendarDays#monthAndDay} gives it; none where no age is needed or known. */
    private int birth;

    private int ageAtBaseline;
    private int ageAtTest;
    /** The ends of the sums of the averaged levels, and of the shifts there. */
    private int lowestLevelSum;

    private int highestLevelSum;
    private int lowestShiftSum;
    private int highestShiftSum;

    JudgedRow(Population population, AppliedRules rules, Answers answers) {
        this.population = population;
        this.workers = population.workers();
        this.rules = rules;
        this.averagedPlaces = AppliedRules.averagedPlaces();
        this.answers = answers;
        this.ages = rules.ageCorrections().orElse(null);
    }

    /**
     * Moves to a test of this worker.
     *
     * @return whether there is a determination; where there is none, nothing may be asked
     */
    public boolean moveTo(int worker, int test, Ear ear) {
        this.test = test;
        this.ear = ear;
        row = Answers.row(test, ear.ordinal());
        if (!answers.hasRow(row)) {
            return false;
        }
        baseline = answers.baseline(row);
        sex = workers.sex(worker);
        boolean needsAge = ages != null && isCompared() && workers.birthDay(worker) != NO_DAY;
        birth = needsAge ? CalendarDays.monthAndDay(workers.birthDay(worker)) : NO_NUMBER;
        ageAtBaseline = needsAge ? age(baseline) : NO_NUMBER;
        ageAtTest = needsAge ? age(test) : NO_NUMBER;
        sumUp();
        return true;
    }

    private int age(int ofTest) {
        return CalendarDays.completedYears(birth, CalendarDays.monthAndDay(population.day(ofTest)));
    }

    private void sumUp() {
        lowestLevelSum = lowestLevelSum(test);
        highestLevelSum = highestLevelSum(test);
        if (isCompared()) {
            int allowance = leastAllowanceSum(ageAtBaseline, ageAtTest);
            lowestShiftSum = lowestLevelSum - highestLevelSum(baseline) - allowance - openAllowance();
            highestShiftSum = highestLevelSum - lowestLevelSum(baseline) - allowance;
        }
    }

    private int lowestLevelSum(int ofTest) {
        int sum = 0;
        for (int place : averagedPlaces[ear.ordinal()]) {
            sum += Ranges.lowest(population.thresholdCode(ofTest, place));
        }
        return sum;
    }

    private int highestLevelSum(int ofTest) {
        int sum = 0;
        for (int place : averagedPlaces[ear.ordinal()]) {
            sum += Ranges.highest(population.thresholdCode(ofTest, place));
        }
        return sum;
    }

    /** Where birth date or sex is not on record, the allowance is nothing or more. */
    private int leastAllowanceSum(int ageBefore, int ageNow) {
        return ages != null && isAllowanceKnown() ? ages.sum(sex, ageNow) - ages.sum(sex, ageBefore) : 0;
    }

    /** How much more than its least the allowance may be. */
    private int openAllowance() {
        return isAllowanceKnown() ? 0 : Ranges.UNBOUNDED;
    }

    private boolean isAllowanceKnown() {
        return ages == null || birth != NO_NUMBER && sex != WorkerColumns.NO_SEX;
    }

    public int test() {
        return test;
    }

    public Ear ear() {
        return ear;
    }

    public Outcome outcome() {
        return answers.outcome(row);
    }

    /** The answer for the injury log; empty where the question is not asked. */
    public Optional<Recordability> recordable() {
        return answers.hasRecordability(row)
                ? RECORDABILITIES.get(answers.recordability(row).ordinal())
                : Optional.empty();
    }

    /** Whether the test is compared with a baseline. */
    public boolean isCompared() {
        return baseline != NO_TEST;
    }

    /** The number of the test that this one is compared with, or {@link Population#NO_TEST}. */
    public int baseline() {
        return baseline;
    }

    /** Or {@link Population#NO_DAY}. */
    public int baselineDay() {
        return isCompared() ? population.day(baseline) : NO_DAY;
    }

    /** In completed years, or {@link #NO_NUMBER} where unknown or not needed. */
    public int ageAtBaseline() {
        return ageAtBaseline;
    }

    /** In completed years, or {@link #NO_NUMBER} where unknown or not needed. */
    public int ageAtTest() {
        return ageAtTest;
    }

    /** The shift in dB before any allowance, or {@link #NO_NUMBER}. */
    public int shift(Frequency frequency) {
        if (!isCompared()) {
            return NO_NUMBER;
        }
        int place = ThresholdCode.place(ear, frequency);
        short before = population.thresholdCode(baseline, place);
        short now = population.thresholdCode(test, place);
        return plain(Ranges.lowest(now) - Ranges.highest(before), Ranges.highest(now) - Ranges.lowest(before));
    }

    /** What is taken off the shift for aging at one of the averaged frequencies, in dB, or {@link #NO_NUMBER}. */
    public int allowance(Frequency frequency) {
        if (!isCompared() || !isAllowanceKnown()) {
            return NO_NUMBER;
        }
        return ages == null ? 0 : ages.at(sex, ageAtTest, frequency) - ages.at(sex, ageAtBaseline, frequency);
    }

    /** The sum of the three shifts in dB after the allowance, or {@link #NO_NUMBER}. */
    public int shiftSum() {
        return isCompared() ? plain(lowestShiftSum, highestShiftSum) : NO_NUMBER;
    }

    /** Whether the test itself shows what the rule set calls a shift; empty where it is compared with nothing. */
    public Optional<Answer> standardShift() {
        return isCompared() ? ANSWERS.get(answers.shift(row).ordinal()) : Optional.empty();
    }

    /** The sum of the levels that are averaged, in dB HL, never age-corrected, or {@link #NO_NUMBER}. */
    public int levelSum() {
        return plain(lowestLevelSum, highestLevelSum);
    }

    /** The last day on which a retest may settle the question, or {@link Population#NO_DAY}. */
    public int retestByDay() {
        boolean waits = outcome() == Outcome.AWAITING_RETEST || isRecordable(Recordability.AWAITING_RETEST);
        return waits ? rules.lastRetestDay(population.day(test)) : NO_DAY;
    }

    /** By when the worker is to be told, or {@link Population#NO_DAY}. */
    public int notifyByDay() {
        int settling = answers.settlingTest(row);
        return settling == NO_TEST ? NO_DAY : rules.notifyByDay(outcome(), population.day(settling));
    }

    /** By when the case is to be recorded, or {@link Population#NO_DAY}. */
    public int recordByDay() {
        int deciding = answers.decidingTest(row);
        return isRecordable(Recordability.YES) ? rules.recordByDay(population.day(deciding), deciding != test) : NO_DAY;
    }

    private boolean isRecordable(Recordability answer) {
        return answers.hasRecordability(row) && answers.recordability(row) == answer;
    }

    /**
     * The number of the test that the shift is measured from for the log, or {@link Population#NO_TEST}. Kept only
     * where revisions of the baseline are applied.
     */
    public int reference() {
        return answers.reference(row);
    }

    /** The day of the {@link #reference}, or {@link Population#NO_DAY}. */
    public int referenceDay() {
        return reference() == NO_TEST ? NO_DAY : population.day(reference());
    }

    /**
     * The sum of the three shifts in dB after the allowance, from the {@link #reference} to the test that the question
     * of the log was asked of, or {@link #NO_NUMBER}.
     */
    public int referenceShiftSum() {
        int reference = reference();
        if (reference == NO_TEST || !isAllowanceKnown()) {
            return NO_NUMBER;
        }
        int deciding = answers.decidingTest(row);
        int allowance = ages == null ? 0 : leastAllowanceSum(age(reference), age(deciding));
        return plain(
                lowestLevelSum(deciding) - highestLevelSum(reference) - allowance,
                highestLevelSum(deciding) - lowestLevelSum(reference) - allowance);
    }

    private static int plain(int lowest, int highest) {
        return Ranges.isPlain(lowest, highest) ? lowest : NO_NUMBER;
    }
}
