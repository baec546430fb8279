package org.thresholdregister.exposure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.noise.NoiseResult;
import org.thresholdregister.roster.WorkerPlace;

/**
 * What the measurements suggest about a worker's place in the programme; a person confirms it, or does not.
 *
 * @param on the day it would count from: for entering, the first day at or above the action level
 * @param twaDba the average that the roster would have, in dBA; empty where nothing reaches 80 dBA
 * @param measurement key of the one that it rests on
 */
public record ProgrammeProposal(
        WorkerPlace worker,
        ProgrammeAct.Kind kind,
        LocalDate on,
        Optional<BigDecimal> twaDba,
        NoiseResult result,
        NoiseSubject subject,
        long measurement) {}
