package org.thresholdregister.testdays;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Somebody who waits longer than six months for a mobile unit's baseline, or soon will.
 *
 * @param protectorsFrom the day from which protectors are worn until the baseline
 * @param baselineBy the last day of the baseline
 * @param wornFrom from when on they are worn, where that is noted
 */
public record AwaitsBaseline(
        String workerId,
        String name,
        String site,
        String department,
        LocalDate protectorsFrom,
        LocalDate baselineBy,
        Optional<LocalDate> wornFrom) {}
