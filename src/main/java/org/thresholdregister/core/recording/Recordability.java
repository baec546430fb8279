package org.thresholdregister.core.recording;

import org.thresholdregister.core.regulation.Answer;

/** Whether a test of an ear is a case to record or report, as 29 CFR 1904.10, 30 CFR 62.101 or 49 CFR 225.5 ask. */
public enum Recordability {
    YES("yes"),
    NO("no"),
    /** A retest may still take the test's place. */
    AWAITING_RETEST("awaiting-retest"),
    /** The loss is one that an earlier case of this ear holds already. */
    ALREADY_RECORDED("already-recorded"),
    UNDECIDED("undecided"),
    /** The rule set keeps no log, so that the question is not asked. */
    NOT_ASKED("");

    private final String word;

    Recordability(String word) {
        this.word = word;
    }

    /** The word used in files. */
    public String word() {
        return word;
    }

    public static Recordability of(Answer answer) {
        return switch (answer) {
            case YES -> YES;
            case NO -> NO;
            case UNDECIDED -> UNDECIDED;
        };
    }
}
