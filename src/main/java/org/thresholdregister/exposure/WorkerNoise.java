package org.thresholdregister.exposure;

import java.util.Optional;

/**
 * What is known of a worker's noise today.
 *
 * @param measurement the one that speaks for the worker
 * @param told that the worker was told its result
 * @param proposal that the worker belongs to the programme by it and is not in it
 */
public record WorkerNoise(
        Optional<WorkerExposure> today,
        Optional<NoiseMeasurement> measurement,
        Optional<Told> told,
        Optional<ProgrammeProposal> proposal) {}
