package org.thresholdregister.core.rules;

/** By when the worker is told in writing, counted from the day of the test that settled what is told. */
public record NoticeRule(Deadline deadline, Occasion occasion) {

    /** What has to be told. */
    public enum Occasion {
        /** A shift, also while a retest may still take the test's place: the cautious reading. */
        SHIFT,
        /** A shift once it is established. */
        CONFIRMED_SHIFT,
        /** The results of every test. */
        EVERY_TEST
    }
}
