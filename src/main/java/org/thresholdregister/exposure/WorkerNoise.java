package org.thresholdregister.exposure;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A worker's noise: what counts today, everything that was measured for the group, the job or the worker, what the worker
 * was told, and what people did about the programme.
 *
 * @param today the exposure of today
 * @param history in order of time
 * @param told by the measurement's key
 * @param proposal what is suggested about the programme
 */
public record WorkerNoise(
        Optional<WorkerExposure> today,
        List<NoiseMeasurement> history,
        Map<Long, Told> told,
        List<ProgrammeAct> acts,
        Optional<ProgrammeProposal> proposal,
        Optional<LocalDate> enrolledFrom) {}
