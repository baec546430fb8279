package org.thresholdregister.core.summary;

/** How many there are, or that it is not told. */
public sealed interface Count {

    /** The word for a count that is not told, in files and on screens. */
    String HIDDEN_WORD = "hidden";

    /** Zero or more. */
    record Number(int value) implements Count {
        public Number {
            if (value < 0) {
                throw new IllegalArgumentException("a count below zero: " + value);
            }
        }
    }

    /** Not told, since the group is small enough to tell of a person, or would give such a group away. */
    record Hidden() implements Count {}

    static Count of(int value) {
        return new Number(value);
    }

    static Count hidden() {
        return new Hidden();
    }

    /** As files write it: the number in digits, or {@value #HIDDEN_WORD}. */
    default String word() {
        return switch (this) {
            case Number(int value) -> Integer.toString(value);
            case Hidden() -> HIDDEN_WORD;
        };
    }
}
