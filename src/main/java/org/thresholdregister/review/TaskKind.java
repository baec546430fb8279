package org.thresholdregister.review;

import java.util.Optional;
import org.thresholdregister.core.caselife.CaseDuty;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUpKind;

/** What can be open about a worker's tests. */
public enum TaskKind {
    RETEST("retest", Doer.NURSE),
    NOTICE("notice", Doer.NURSE, DecisionKind.NOTICE_GIVEN),
    RECORD("record", Doer.SAFETY_OFFICER, DecisionKind.RECORDED),
    ANNUAL_TEST("annual-test", Doer.NURSE),
    BASELINE_TEST("baseline-test", Doer.NURSE),
    /** To fit or refit protectors after a shift. */
    REFIT("refit", Doer.NURSE, DecisionKind.PROTECTOR_REFITTED),
    /** To train, or train again, after a shift. */
    TRAINING("training", Doer.NURSE, DecisionKind.TRAINED),
    /** To find out whether a case is recordable, which the record does not tell. */
    RECORDABILITY("recordability", Doer.SAFETY_OFFICER),
    /** To line out the entry of a loss that was found not work-related. */
    LINE_OUT("line-out", Doer.SAFETY_OFFICER, DecisionKind.LINED_OUT),
    /** A baseline revision that waits for a professional. */
    BASELINE_PROPOSAL("baseline-proposal", Doer.PROFESSIONAL),
    /** A determination that changed after a notice was given or a case recorded on it. */
    ALTERATION("alteration", Doer.SAFETY_OFFICER);

    /** Whose it is to see to. */
    public enum Doer {
        NURSE,
        SAFETY_OFFICER,
        /** An audiologist, otolaryngologist or physician, whose answer a safety officer takes down. */
        PROFESSIONAL
    }

    private final String word;
    private final Doer doer;
    private final Optional<DecisionKind> doneBy;

    TaskKind(String word, Doer doer) {
        this.word = word;
        this.doer = doer;
        this.doneBy = Optional.empty();
    }

    TaskKind(String word, Doer doer, DecisionKind doneBy) {
        this.word = word;
        this.doer = doer;
        this.doneBy = Optional.of(doneBy);
    }

    static TaskKind of(FollowUpKind kind) {
        return switch (kind) {
            case RETEST -> RETEST;
            case NOTICE -> NOTICE;
            case RECORD -> RECORD;
            case ANNUAL_TEST -> ANNUAL_TEST;
            case BASELINE_TEST -> BASELINE_TEST;
        };
    }

    /** The kind of a case's duty that is no follow-up besides; notice and entry are follow-ups already. */
    static Optional<TaskKind> of(CaseDuty duty) {
        return switch (duty) {
            case NOTICE, RECORD -> Optional.empty();
            case RECORDABILITY -> Optional.of(RECORDABILITY);
            case LINE_OUT -> Optional.of(LINE_OUT);
            case REFIT -> Optional.of(REFIT);
            case TRAINING -> Optional.of(TRAINING);
        };
    }

    /** The word used in the database and in addresses. */
    public String word() {
        return word;
    }

    public Doer doer() {
        return doer;
    }

    /** The decision that says it has been done; empty where a test, or a page of its own, settles it. */
    public Optional<DecisionKind> doneBy() {
        return doneBy;
    }
}
