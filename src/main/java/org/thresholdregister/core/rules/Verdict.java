package org.thresholdregister.core.rules;

import org.thresholdregister.core.regulation.Answer;

/** What a rule says of a test. */
public sealed interface Verdict {

    /** The word used in files. */
    String word();

    /** Yes, no or undecided. */
    record Answered(Answer answer) implements Verdict {
        @Override
        public String word() {
            return switch (answer) {
                case YES -> "yes";
                case NO -> "no";
                case UNDECIDED -> "undecided";
            };
        }
    }

    /** A category from 1, the best, upwards: all those from {@code lowest} to {@code highest} remain possible. */
    record Category(int lowest, int highest) implements Verdict {
        public Category {
            if (lowest < 1 || highest < lowest) {
                throw new IllegalArgumentException("no categories: " + lowest + " to " + highest);
            }
        }

        public boolean isDecided() {
            return lowest == highest;
        }

        /** The worse of the two, as far as it is known. */
        public Category worseOf(Category other) {
            return new Category(Math.max(lowest, other.lowest), Math.max(highest, other.highest));
        }

        @Override
        public String word() {
            return isDecided() ? Integer.toString(lowest) : "undecided";
        }
    }
}
