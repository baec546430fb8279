package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_DAY;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.rules.Deadline;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.rules.Reference;
import org.thresholdregister.core.rules.RetestRule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.shift.Direction;
import org.thresholdregister.core.shift.ShiftCriterion;

/**
 * The rules of one run as columns need them: the data of the {@link RuleSet}, with days and decibels as {@code int}s,
 * taken once. Sums are over 2000, 3000 and 4000 Hz.
 */
final class AppliedRules {

    private static final int NO_SUM = Integer.MAX_VALUE;

    private final JudgingOptions options;
    private final RuleSet ruleSet;
    private final Optional<AgeCorrections> ageCorrections;
    private final int shiftSumDb;
    private final int caseShiftSumDb;
    private final int caseLevelSumDb;
    private final int improvementSumDb;

    AppliedRules(JudgingOptions options) {
        this.options = options;
        this.ruleSet = options.ruleSet();
        this.ageCorrections = options.ageTables().map(AgeCorrections::new);
        this.shiftSumDb = leastSum(ruleSet.shift().criterion()).orElse(NO_SUM);
        int frequencies = Frequency.AVERAGED.size();
        switch (ruleSet.recording()) {
            case RecordingRule.ShiftAndLevel both -> {
                caseShiftSumDb = shiftSumDb;
                caseLevelSumDb = both.level().leastSum(frequencies);
            }
            case RecordingRule.LargeShift large -> {
                caseShiftSumDb = leastSum(large.criterion()).orElse(NO_SUM);
                caseLevelSumDb = NO_SUM;
            }
            case RecordingRule.None ignored -> {
                caseShiftSumDb = NO_SUM;
                caseLevelSumDb = NO_SUM;
            }
        }
        this.improvementSumDb = ruleSet.revision().improvementDb() * frequencies;
    }

    /** The sum of changes from which the criterion is met; empty where it is more than a sum can answer. */
    private static OptionalInt leastSum(ShiftCriterion criterion) {
        return criterion instanceof ShiftCriterion.Mean mean
                        && mean.frequencies().equals(Frequency.AVERAGED)
                        && mean.direction() == Direction.WORSE
                ? OptionalInt.of(mean.limit().leastSum(mean.frequencies().size()))
                : OptionalInt.empty();
    }

    /**
     * Whether sums of changes from the baseline, and retests that take a test's place, are all that they judge by.
     */
    boolean areColumnar() {
        return shiftSumDb != NO_SUM
                && ruleSet.shift().reference() instanceof Reference.Baseline
                && ruleSet.retest().map(RetestRule::effect).orElse(RetestRule.Effect.MAY_REPLACE)
                        == RetestRule.Effect.MAY_REPLACE
                && switch (ruleSet.recording()) {
                    case RecordingRule.ShiftAndLevel ignored -> true;
                    case RecordingRule.LargeShift ignored ->
                        caseShiftSumDb != NO_SUM && options.baselineRevision() != BaselineRevision.APPLY;
                    case RecordingRule.None ignored -> true;
                };
    }

    /** Empty where no allowance for aging is made. */
    Optional<AgeCorrections> ageCorrections() {
        return ageCorrections;
    }

    int shiftSumDb() {
        return shiftSumDb;
    }

    RecordingRule recording() {
        return ruleSet.recording();
    }

    /** The sum of changes from the recording reference from which there may be a case. */
    int caseShiftSumDb() {
        return caseShiftSumDb;
    }

    /** The sum of levels from which there is a case, where the rule asks for one. */
    int caseLevelSumDb() {
        return caseLevelSumDb;
    }

    /** The sum by which a test has to be better to count for an improved baseline. */
    int improvementSumDb() {
        return improvementSumDb;
    }

    /** The last day on which a retest counts, or {@link Population#NO_DAY} where none ever does. */
    int lastRetestDay(int testDay) {
        return ruleSet.retest().isPresent() ? testDay + ruleSet.retest().get().days() : NO_DAY;
    }

    boolean isFirstRetestCounted() {
        return ruleSet.retest()
                .filter(retest -> retest.choice() == RetestRule.Choice.FIRST)
                .isPresent();
    }

    /** By when the worker is told, or {@link Population#NO_DAY}. */
    int notifyByDay(Outcome outcome, int settledDay) {
        return ruleSet.notice().isPresent()
                        && outcome.isToldWhere(ruleSet.notice().get().occasion())
                ? after(ruleSet.notice().get().deadline(), settledDay)
                : NO_DAY;
    }

    /** By when a case is recorded. */
    int recordByDay(int decidingDay, boolean byRetest) {
        return after(ruleSet.recording().deadline(byRetest), decidingDay);
    }

    private int after(Deadline deadline, int startDay) {
        return deadline instanceof Deadline.CalendarDays(int days)
                ? startDay + days
                : day(deadline.after(LocalDate.ofEpochDay(startDay), options.holidays()));
    }

    int nextTestBy(int firstDay, int lastDay) {
        return day(ruleSet.tests()
                .nextBy(LocalDate.ofEpochDay(firstDay), LocalDate.ofEpochDay(lastDay), options.holidays()));
    }

    int baselineTestBy(int enrolledFrom) {
        return day(ruleSet.tests().baselineBy(LocalDate.ofEpochDay(enrolledFrom), options.holidays()));
    }

    private static int day(LocalDate date) {
        return Math.toIntExact(date.toEpochDay());
    }

    /** Where the averaged frequencies of each ear stand among a test's thresholds. */
    static int[][] averagedPlaces() {
        return Arrays.stream(Ear.values())
                .map(ear -> Frequency.AVERAGED.stream()
                        .mapToInt(frequency -> ThresholdCode.place(ear, frequency))
                        .toArray())
                .toArray(int[][]::new);
    }
}
