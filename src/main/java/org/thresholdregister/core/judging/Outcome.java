package org.thresholdregister.core.judging;

import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.NoticeRule;

/** What became of one test of one ear. */
public enum Outcome {
    /** The ear's first baseline: nothing to compare it with. */
    BASELINE("baseline"),
    /** Made before the ear's first baseline, and so not compared. */
    BEFORE_BASELINE("before-baseline"),
    NO_SHIFT("no-shift"),
    /** A standard threshold shift, while a retest may still take the test's place. */
    AWAITING_RETEST("awaiting-retest"),
    /** A standard threshold shift that stands: a retest shows it too, or the time for one has passed. */
    CONFIRMED("confirmed"),
    /** A standard threshold shift that the retest does not show. */
    NOT_CONFIRMED("not-confirmed"),
    /** The record does not hold what an answer would rest on. */
    UNDECIDED("undecided"),
    /** A retest inside the window of an earlier test: its answer is given there. */
    RETEST("retest");

    private final String word;

    Outcome(String word) {
        this.word = word;
    }

    /**
     * What becomes of a test whose place a retest may take.
     *
     * @param own whether the test shows a shift
     * @param retest whether its retest does; undecided where there is none that can say
     * @param windowIsOpen whether a retest may still take the test's place
     */
    public static Outcome of(Answer own, Answer retest, boolean windowIsOpen) {
        return switch (retest) {
            case YES -> CONFIRMED;
            case NO -> own == Answer.YES ? NOT_CONFIRMED : NO_SHIFT;
            case UNDECIDED ->
                switch (own) {
                    case YES -> windowIsOpen ? AWAITING_RETEST : CONFIRMED;
                    case NO -> NO_SHIFT;
                    case UNDECIDED -> UNDECIDED;
                };
        };
    }

    /** Whether the worker is told of it, where the rule set names this occasion. */
    public boolean isToldWhere(NoticeRule.Occasion occasion) {
        return switch (occasion) {
            case SHIFT -> this == AWAITING_RETEST || this == CONFIRMED;
            case CONFIRMED_SHIFT -> this == CONFIRMED;
            case EVERY_TEST -> true;
        };
    }

    /** The word used in files. */
    public String word() {
        return word;
    }
}
