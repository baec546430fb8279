package org.thresholdregister.platform.storage;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * The settings of a register.
 *
 * @param data folder that holds the database
 * @param today date to take for today, for a demonstration or a test; absent in real use
 */
@ConfigurationProperties("register")
public record RegisterProperties(
        @DefaultValue("register-data") Path data, @Nullable LocalDate today) {

    /** The date to take for today, where one is pinned. */
    public Optional<LocalDate> pinnedToday() {
        return Optional.ofNullable(today);
    }
}
