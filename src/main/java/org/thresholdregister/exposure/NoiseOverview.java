package org.thresholdregister.exposure;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * All about noise at the sites that a user may see.
 *
 * @param places those that were measured and the noise groups of the roster that were not, by site and name
 * @param intervals after how many months a site measures again without a change, by site
 */
public record NoiseOverview(
        LocalDate today,
        List<NoisePlace> places,
        List<ProgrammeProposal> proposals,
        List<ProcessChange> changes,
        List<NoiseControl> controls,
        List<Posting> postings,
        Map<String, Integer> intervals) {}
