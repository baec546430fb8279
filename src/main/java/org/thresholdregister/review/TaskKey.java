package org.thresholdregister.review;

import java.io.Serializable;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ears;

/**
 * What tells one open task of one worker from another, whenever the worker is judged.
 *
 * @param workerId the plant's number
 * @param test the day of the test that it follows; none for a first test
 */
public record TaskKey(
        String workerId, TaskKind kind, @Nullable LocalDate test, Ears ears) implements Serializable {

    public Optional<LocalDate> testDate() {
        return Optional.ofNullable(test);
    }
}
