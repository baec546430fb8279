package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_DAY;
import static org.thresholdregister.core.columnar.Population.NO_TEST;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.judging.JudgingOptions;
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

    private static final Sex[] SEXES = Sex.values();
    private static final List<Optional<Recordability>> RECORDABILITIES =
            Arrays.stream(Recordability.values()).map(Optional::of).toList();
    private static final List<Optional<Answer>> ANSWERS =
            Arrays.stream(Answer.values()).map(Optional::of).toList();

    private final Population population;
    private final WorkerColumns workers;
    private final Limits limits;
    private final Answers answers;
    private final boolean withAgeCorrection;

    private int worker;
    private int test;
    private Ear ear = Ear.LEFT;
    private int row;

    JudgedRow(Population population, JudgingOptions options, Limits limits, Answers answers) {
        this.population = population;
        this.workers = population.workers();
        this.limits = limits;
        this.answers = answers;
        this.withAgeCorrection = options.ageCorrection() == AgeCorrection.ON;
    }

    /**
     * Moves to a test of this worker.
     *
     * @return whether there is a determination; where there is none, nothing may be asked
     */
    public boolean moveTo(int worker, int test, Ear ear) {
        this.worker = worker;
        this.test = test;
        this.ear = ear;
        row = Answers.row(test, ear.ordinal());
        return answers.hasRow(row);
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
        return baseline() != NO_TEST;
    }

    /** The number of the test that this one is compared with, or {@link Population#NO_TEST}. */
    public int baseline() {
        return answers.baseline(row);
    }

    /** Or {@link Population#NO_DAY}. */
    public int baselineDay() {
        return isCompared() ? population.day(baseline()) : NO_DAY;
    }

    /** In completed years, or {@link #NO_NUMBER} where unknown or not needed. */
    public int ageAtBaseline() {
        return needsAge() ? age(baseline()) : NO_NUMBER;
    }

    /** In completed years, or {@link #NO_NUMBER} where unknown or not needed. */
    public int ageAtTest() {
        return needsAge() ? age(test) : NO_NUMBER;
    }

    private boolean needsAge() {
        return withAgeCorrection && isCompared() && workers.birthDay(worker) != NO_DAY;
    }

    private int age(int ofTest) {
        return CalendarDays.completedYears(
                CalendarDays.monthAndDay(workers.birthDay(worker)), CalendarDays.monthAndDay(population.day(ofTest)));
    }

    /** The shift in dB before any allowance, or {@link #NO_NUMBER}. */
    public int shift(Frequency frequency) {
        return isCompared()
                ? plain(lowestShift(baseline(), test, frequency), highestShift(baseline(), test, frequency))
                : NO_NUMBER;
    }

    /** What is taken off the shift for aging, in dB, or {@link #NO_NUMBER}. */
    public int allowance(Frequency frequency) {
        return isCompared()
                ? plain(lowestAllowance(baseline(), test, frequency), highestAllowance(baseline(), test, frequency))
                : NO_NUMBER;
    }

    /** The sum of the three shifts in dB after the allowance, or {@link #NO_NUMBER}. */
    public int shiftSum() {
        return isCompared() ? plain(lowestShiftSum(baseline(), test), highestShiftSum(baseline(), test)) : NO_NUMBER;
    }

    /** Whether the test itself shows a standard threshold shift; empty where it is compared with nothing. */
    public Optional<Answer> standardShift() {
        if (!isCompared()) {
            return Optional.empty();
        }
        return ANSWERS.get(Ranges.isAtLeast(
                        lowestShiftSum(baseline(), test), highestShiftSum(baseline(), test), limits.shiftSumDb())
                .ordinal());
    }

    /** The sum of the levels that are averaged, in dB HL, never age-corrected, or {@link #NO_NUMBER}. */
    public int levelSum() {
        int lowest = 0;
        int highest = 0;
        for (Frequency frequency : limits.frequencies()) {
            short code = population.thresholdCode(test, ear, frequency);
            lowest += Ranges.lowest(code);
            highest += Ranges.highest(code);
        }
        return plain(lowest, highest);
    }

    /** The last day on which a retest may settle the question, or {@link Population#NO_DAY}. */
    public int retestByDay() {
        boolean waits = outcome() == Outcome.AWAITING_RETEST || isRecordable(Recordability.AWAITING_RETEST);
        return waits ? population.day(test) + limits.retestDays() : NO_DAY;
    }

    /** By when the worker is to be told, or {@link Population#NO_DAY}. */
    public int notifyByDay() {
        boolean tell = outcome() == Outcome.AWAITING_RETEST || outcome() == Outcome.CONFIRMED;
        return tell ? population.day(answers.settlingTest(row)) + limits.noticeDays() : NO_DAY;
    }

    /** By when the case is to be on the log, or {@link Population#NO_DAY}. */
    public int recordByDay() {
        if (!isRecordable(Recordability.YES)) {
            return NO_DAY;
        }
        int deciding = answers.decidingTest(row);
        return population.day(deciding)
                + (deciding == test ? limits.recordWithoutRetestDays() : limits.recordAfterRetestDays());
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
        int deciding = answers.decidingTest(row);
        return reference() == NO_TEST
                ? NO_NUMBER
                : plain(lowestShiftSum(reference(), deciding), highestShiftSum(reference(), deciding));
    }

    private static int plain(int lowest, int highest) {
        return Ranges.isPlain(lowest, highest) ? lowest : NO_NUMBER;
    }

    private int lowestShift(int earlier, int later, Frequency frequency) {
        return Ranges.lowest(population.thresholdCode(later, ear, frequency))
                - Ranges.highest(population.thresholdCode(earlier, ear, frequency));
    }

    private int highestShift(int earlier, int later, Frequency frequency) {
        return Ranges.highest(population.thresholdCode(later, ear, frequency))
                - Ranges.lowest(population.thresholdCode(earlier, ear, frequency));
    }

    private int lowestShiftSum(int earlier, int later) {
        int sum = 0;
        for (Frequency frequency : limits.frequencies()) {
            sum += lowestShift(earlier, later, frequency) - highestAllowance(earlier, later, frequency);
        }
        return sum;
    }

    private int highestShiftSum(int earlier, int later) {
        int sum = 0;
        for (Frequency frequency : limits.frequencies()) {
            sum += highestShift(earlier, later, frequency) - lowestAllowance(earlier, later, frequency);
        }
        return sum;
    }

    /** Nothing or more where birth date or sex is not on record. */
    private int lowestAllowance(int earlier, int later, Frequency frequency) {
        return isAllowanceKnown() ? knownAllowance(earlier, later, frequency) : 0;
    }

    private int highestAllowance(int earlier, int later, Frequency frequency) {
        return isAllowanceKnown() ? knownAllowance(earlier, later, frequency) : Ranges.UNBOUNDED;
    }

    private boolean isAllowanceKnown() {
        return !withAgeCorrection || workers.birthDay(worker) != NO_DAY && workers.sex(worker) != WorkerColumns.NO_SEX;
    }

    private int knownAllowance(int earlier, int later, Frequency frequency) {
        if (!withAgeCorrection) {
            return 0;
        }
        Sex sex = SEXES[workers.sex(worker)];
        return limits.ageCorrection(sex, age(later), frequency) - limits.ageCorrection(sex, age(earlier), frequency);
    }
}
