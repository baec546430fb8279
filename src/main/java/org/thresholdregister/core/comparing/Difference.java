package org.thresholdregister.core.comparing;

import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.shift.ThresholdShift;

/** One test and ear about which two ways of judging the same record answer differently. */
public record Difference(Determination one, Determination other) {

    /** Why the answers differ, the first reason first. */
    public enum Reason {
        /** The test is compared with another earlier test. */
        REFERENCE,
        /** One makes an allowance for aging that the other does not make, and the shift turns on it. */
        AGE_ALLOWANCE,
        /** What counts as a shift is defined differently. */
        CRITERION,
        /** The shift is the same, but a retest or a second test counts differently. */
        CONFIRMATION,
        /** The shift stands in both, but what is recorded or reported differs. */
        RECORDING
    }

    public Audiogram test() {
        return one.test();
    }

    public Ear ear() {
        return one.ear();
    }

    /**
     * The tests and ears that two judgements of the same record answer differently, in order.
     *
     * @throws IllegalArgumentException where they are not of the same record
     */
    public static List<Difference> between(WorkerJudgement one, WorkerJudgement other) {
        if (one.determinations().size() != other.determinations().size()) {
            throw new IllegalArgumentException("not two judgements of the same record");
        }
        List<Difference> differences = new ArrayList<>();
        for (int i = 0; i < one.determinations().size(); i++) {
            Difference pair = new Difference(
                    one.determinations().get(i), other.determinations().get(i));
            if (!pair.one.test().equals(pair.other.test()) || pair.one.ear() != pair.other.ear()) {
                throw new IllegalArgumentException("not two judgements of the same record");
            }
            if (pair.differs()) {
                differences.add(pair);
            }
        }
        return List.copyOf(differences);
    }

    private boolean differs() {
        return one.outcome() != other.outcome() || recordingDiffers();
    }

    /** A rule set that keeps no log says nothing about a case, and so nothing different. */
    private boolean recordingDiffers() {
        return one instanceof Judged here
                && other instanceof Judged there
                && !(here.ruleSet().recording() instanceof RecordingRule.None)
                && !(there.ruleSet().recording() instanceof RecordingRule.None)
                && here.recording().answer() != there.recording().answer();
    }

    /** What the difference comes from. */
    public Reason reason() {
        if (one.shift().isEmpty() || other.shift().isEmpty()) {
            return Reason.REFERENCE;
        }
        ThresholdShift here = one.shift().get();
        ThresholdShift there = other.shift().get();
        if (here.isShift() != there.isShift()) {
            if (!here.earlier().equals(there.earlier())) {
                return Reason.REFERENCE;
            }
            return here.isShiftWithoutAllowance() == there.isShiftWithoutAllowance()
                    ? Reason.AGE_ALLOWANCE
                    : Reason.CRITERION;
        }
        return one.outcome() != other.outcome() ? Reason.CONFIRMATION : Reason.RECORDING;
    }
}
