package org.thresholdregister.review.ui;

import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.wording.ProposalWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.LeadSentence;

/** Says on a worker's page that a baseline proposal waits, and leads to it. */
class ProposalNote extends LeadSentence {

    ProposalNote(String workerId, BaselineChange proposal) {
        link(
                        "A new baseline is proposed for the " + Words.ear(proposal.ear()),
                        ProposalAddress.of(workerId, proposal.ear()))
                .text(": the test of " + Words.day(proposal.to().date()) + ", for a "
                        + ProposalWording.kind(proposal.kind()) + ". A professional decides.");
        removeClassName("tr-lead");
    }
}
