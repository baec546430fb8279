package org.thresholdregister.review;

import org.thresholdregister.core.judging.ProposalCase;

/**
 * A baseline proposal with the record that it is about.
 *
 * @param mayAnswer whether the signed-in user may take down the professional's answer
 */
public record OpenedProposal(WorkerRecord record, ProposalCase about, boolean mayAnswer) {}
