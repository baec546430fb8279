package org.thresholdregister.exposure;

import java.time.LocalDate;
import java.util.List;

/**
 * All about noise at the sites that a user may see.
 *
 * @param places those that were measured and the noise groups of the roster that were not, by site and name
 * @param proposals who is not in the programme though measurements reach the action level, by name
 */
public record NoiseOverview(LocalDate today, List<NoisePlace> places, List<ProgrammeProposal> proposals) {}
