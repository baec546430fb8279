package org.thresholdregister.testing;

import java.time.Instant;
import java.util.Optional;

/**
 * A half-typed test in a list.
 *
 * @param inPlaceOf the key of the test on record that it is to supersede, if any
 * @param thresholds how many have something typed
 */
public record WaitingDraft(
        long key,
        String workerId,
        String givenName,
        String familyName,
        Optional<Long> inPlaceOf,
        int thresholds,
        Instant changedAt) {}
