package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What follows from a test for the worker, as far as it is known when a letter is written.
 *
 * @param retestBy the last day of a second test that may take the test's place
 * @param writtenNotice whether a written notice follows
 * @param protectors whether the rule set asks for protectors to be fitted again and for training
 * @param mayRepeat whether the record did not hold enough for an answer
 * @param nextTest the day by which the next test is due
 */
public record NextSteps(
        Optional<LocalDate> retestBy,
        boolean writtenNotice,
        boolean protectors,
        boolean mayRepeat,
        Optional<LocalDate> nextTest) {}
