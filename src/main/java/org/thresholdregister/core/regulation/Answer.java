package org.thresholdregister.core.regulation;

import java.util.stream.Stream;

/**
 * The answer to a question put to a rule. {@link #UNDECIDED} is an answer in its own right: the record does not hold
 * what a yes or a no would rest on.
 */
public enum Answer {
    YES,
    NO,
    UNDECIDED;

    /** Yes only where both are yes, no as soon as either is no, otherwise undecided. */
    public Answer and(Answer other) {
        if (this == NO || other == NO) {
            return NO;
        }
        return this == YES && other == YES ? YES : UNDECIDED;
    }

    /** Yes as soon as either is yes, no only where both are no, otherwise undecided. */
    public Answer or(Answer other) {
        if (this == YES || other == YES) {
            return YES;
        }
        return this == NO && other == NO ? NO : UNDECIDED;
    }

    /** Yes as soon as one is yes; no where there is none. */
    public static Answer anyOf(Stream<Answer> answers) {
        return answers.reduce(NO, Answer::or);
    }

    /** Yes where all are yes, also where there is none. */
    public static Answer allOf(Stream<Answer> answers) {
        return answers.reduce(YES, Answer::and);
    }

    /** The answer to the opposite question. */
    public Answer not() {
        return switch (this) {
            case YES -> NO;
            case NO -> YES;
            case UNDECIDED -> UNDECIDED;
        };
    }
}
