package org.thresholdregister.testing;

import java.time.Instant;
import java.util.Optional;

/**
 * A test that one person is typing. It counts nowhere until it is signed.
 *
 * @param key the register's own key
 * @param inPlaceOf the key of the test on record that it is to supersede; none for a new test
 * @param changedAt when something was last typed; none while nothing has been
 */
public record TestDraft(
        long key, String workerId, Optional<Long> inPlaceOf, TypedTest typed, Optional<Instant> changedAt) {}
