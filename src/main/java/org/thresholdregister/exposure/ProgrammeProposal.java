package org.thresholdregister.exposure;

import java.time.LocalDate;
import org.thresholdregister.roster.WorkerPlace;

/**
 * A worker who is not in the programme though a measurement reaches the action level. A person enters it in the working
 * life, or does not.
 *
 * @param on the first day at or above the action level, no earlier than the hire
 * @param measurement the one that speaks for the worker today
 */
public record ProgrammeProposal(WorkerPlace worker, LocalDate on, NoiseMeasurement measurement) {}
