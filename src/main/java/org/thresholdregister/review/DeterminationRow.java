package org.thresholdregister.review;

import jakarta.persistence.Column;
import jakarta.persistence.MappedSuperclass;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.RuleEdition;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.shift.FrequencyShift;
import org.thresholdregister.core.shift.ThresholdShift;

/** What the engine found about one ear on one test, and what that rests on. */
@MappedSuperclass
abstract class DeterminationRow {

    private long audiogramId;
    private long workerId;
    private Ear ear;
    private LocalDate testDate;
    private TestPurpose purpose;
    private String ruleSet;
    private @Nullable LocalDate baselineDate;
    private @Nullable Integer ageBaseline;
    private @Nullable Integer ageTest;

    @Column(name = "shift_2000")
    private @Nullable Integer shiftAt2000;

    @Column(name = "shift_3000")
    private @Nullable Integer shiftAt3000;

    @Column(name = "shift_4000")
    private @Nullable Integer shiftAt4000;

    @Column(name = "allowance_2000")
    private @Nullable Integer allowanceAt2000;

    @Column(name = "allowance_3000")
    private @Nullable Integer allowanceAt3000;

    @Column(name = "allowance_4000")
    private @Nullable Integer allowanceAt4000;

    private @Nullable Integer shiftSum;
    private @Nullable Answer sts;
    private @Nullable Integer levelSum;
    private Outcome outcome;
    private @Nullable Recordability recordable;
    private @Nullable LocalDate retestBy;
    private @Nullable LocalDate notifyBy;
    private @Nullable LocalDate recordBy;
    private @Nullable LocalDate settledOn;
    private LocalDate judgedAsOf;
    private String ruleSetEdition;
    private AgeCorrection ageCorrection;
    private BaselineRevision baselineRevision;
    private int ruleEdition;

    @SuppressWarnings("NullAway.Init")
    protected DeterminationRow() {}

    /** The same as the other. */
    DeterminationRow(DeterminationRow other) {
        workerId = other.workerId;
        audiogramId = other.audiogramId;
        ear = other.ear;
        testDate = other.testDate;
        purpose = other.purpose;
        ruleSet = other.ruleSet;
        baselineDate = other.baselineDate;
        ageBaseline = other.ageBaseline;
        ageTest = other.ageTest;
        shiftAt2000 = other.shiftAt2000;
        shiftAt3000 = other.shiftAt3000;
        shiftAt4000 = other.shiftAt4000;
        allowanceAt2000 = other.allowanceAt2000;
        allowanceAt3000 = other.allowanceAt3000;
        allowanceAt4000 = other.allowanceAt4000;
        shiftSum = other.shiftSum;
        sts = other.sts;
        levelSum = other.levelSum;
        outcome = other.outcome;
        recordable = other.recordable;
        retestBy = other.retestBy;
        notifyBy = other.notifyBy;
        recordBy = other.recordBy;
        settledOn = other.settledOn;
        judgedAsOf = other.judgedAsOf;
        ruleSetEdition = other.ruleSetEdition;
        ageCorrection = other.ageCorrection;
        baselineRevision = other.baselineRevision;
        ruleEdition = other.ruleEdition;
    }

    DeterminationRow(long workerKey, long testKey, Determination determination, JudgingOptions options) {
        workerId = workerKey;
        audiogramId = testKey;
        ear = determination.ear();
        testDate = determination.test().date();
        purpose = determination.test().purpose();
        ruleSet = determination.ruleSet().word();
        levelSum = plainNumber(determination.levelSum());
        outcome = determination.outcome();
        judgedAsOf = options.asOf();
        ruleSetEdition = determination.ruleSet().edition();
        ageCorrection = options.ageCorrection();
        baselineRevision = options.baselineRevision();
        ruleEdition = RuleEdition.OF_THIS_PROGRAM;
        determination.shift().ifPresent(this::setShift);
        if (determination instanceof Judged judged) {
            recordable = judged.recording().answer();
            retestBy = judged.dueDates().retestBy().orElse(null);
            notifyBy = judged.dueDates().notifyBy().orElse(null);
            recordBy = judged.dueDates().recordBy().orElse(null);
            settledOn = judged.outcome() == Outcome.AWAITING_RETEST
                    ? null
                    : judged.settledBy().date();
        }
    }

    /** Names the ear and the test that this is about. */
    record Subject(long testKey, Ear ear) {}

    Subject subject() {
        return new Subject(audiogramId, ear);
    }

    long workerKey() {
        return workerId;
    }

    /** The word of the rule set that it was made by. */
    String ruleSet() {
        return ruleSet;
    }

    LocalDate testDate() {
        return testDate;
    }

    EarFinding finding() {
        return new EarFinding(
                outcome,
                Optional.ofNullable(recordable),
                Optional.ofNullable(baselineDate),
                shiftSum == null ? OptionalInt.empty() : OptionalInt.of(shiftSum));
    }

    /** Whether both say the same about the same ear and test, whenever and by whichever edition they were made. */
    boolean saysTheSameAs(DeterminationRow other) {
        return content().equals(other.content());
    }

    private List<@Nullable Object> content() {
        return Arrays.asList(
                audiogramId,
                ear,
                ruleSet,
                baselineDate,
                ageBaseline,
                ageTest,
                shiftAt2000,
                shiftAt3000,
                shiftAt4000,
                allowanceAt2000,
                allowanceAt3000,
                allowanceAt4000,
                shiftSum,
                sts,
                levelSum,
                outcome,
                recordable,
                retestBy,
                notifyBy,
                recordBy,
                settledOn);
    }

    /** This as a version among others. */
    DeterminationVersion toVersion(Optional<DeterminationVersion.Replacement> replacement) {
        return new DeterminationVersion(
                audiogramId,
                ear,
                testDate,
                finding(),
                Optional.ofNullable(settledOn),
                new DeterminationVersion.Basis(ruleSet, ruleSetEdition, ageCorrection, baselineRevision, ruleEdition),
                judgedAsOf,
                replacement);
    }

    private void setShift(ThresholdShift shift) {
        baselineDate = shift.earlier().date();
        ageBaseline = plainNumber(shift.allowance().ageAtBaseline());
        ageTest = plainNumber(shift.allowance().ageAtTest());
        for (Frequency frequency : Frequency.AVERAGED) {
            FrequencyShift at = shift.at(frequency);
            Integer decibels = plainNumber(at.uncorrected());
            Integer allowance = plainNumber(at.allowance());
            switch (frequency) {
                case HZ_2000 -> {
                    shiftAt2000 = decibels;
                    allowanceAt2000 = allowance;
                }
                case HZ_3000 -> {
                    shiftAt3000 = decibels;
                    allowanceAt3000 = allowance;
                }
                case HZ_4000 -> {
                    shiftAt4000 = decibels;
                    allowanceAt4000 = allowance;
                }
                case HZ_500, HZ_1000, HZ_6000, HZ_8000 ->
                    throw new IllegalArgumentException("no frequency that is averaged: " + frequency);
            }
        }
        shiftSum = plainNumber(shift.sum());
        sts = shift.isShift();
    }

    private static @Nullable Integer plainNumber(DecibelRange range) {
        return plainNumber(range.exact());
    }

    private static @Nullable Integer plainNumber(OptionalInt number) {
        return number.isPresent() ? number.getAsInt() : null;
    }
}
