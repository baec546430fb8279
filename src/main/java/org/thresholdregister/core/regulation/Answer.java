package org.thresholdregister.core.regulation;

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
}
