package org.thresholdregister.review;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.OptionalInt;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.shift.FrequencyShift;
import org.thresholdregister.core.shift.ThresholdShift;

/** What the engine found about one ear on one test, for lists and counts. */
@Entity
@Table(name = "determination")
@Immutable
class StoredDetermination {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "determination_seq")
    @SequenceGenerator(name = "determination_seq", sequenceName = "determination_seq", allocationSize = 100)
    private @Nullable Long id;

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

    @SuppressWarnings("NullAway.Init")
    protected StoredDetermination() {}

    StoredDetermination(long workerKey, long testKey, Determination determination, JudgingOptions options) {
        workerId = workerKey;
        audiogramId = testKey;
        ear = determination.ear();
        testDate = determination.test().date();
        purpose = determination.test().purpose();
        ruleSet = determination.ruleSet().word();
        levelSum = plainNumber(determination.levelSum());
        outcome = determination.outcome();
        judgedAsOf = options.asOf();
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
