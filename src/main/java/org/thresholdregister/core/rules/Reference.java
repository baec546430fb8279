package org.thresholdregister.core.rules;

/** The earlier test that a rule set compares a test with. */
public sealed interface Reference {

    /** The ear's baseline, as decisions and accepted revisions have moved it. */
    record Baseline() implements Reference {}

    /** The ear's latest earlier test that is not older than so many years; the same day of the year is not older. */
    record LatestWithin(int years) implements Reference {}
}
