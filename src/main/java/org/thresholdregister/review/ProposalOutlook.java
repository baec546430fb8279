package org.thresholdregister.review;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.ProposalCase;
import org.thresholdregister.core.wording.ProposalWording;
import org.thresholdregister.core.wording.Words;

/** What an answer to a baseline proposal would change, in sentences, before it is taken down. */
final class ProposalOutlook {

    private ProposalOutlook() {}

    static List<String> of(WorkerRecord record, ProposalCase about, Decision answer) {
        BaselineChange proposal = about.proposal();
        WorkerRecord after = record.with(new RecordedDecision(answer, "", Instant.EPOCH));
        List<String> sentences = new ArrayList<>();
        if (answer.kind() == DecisionKind.BASELINE) {
            sentences.add("Tests of the " + Words.ear(proposal.ear()) + " made after " + Words.day(answer.decidedOn())
                    + " are compared with the " + Words.purpose(proposal.to().purpose()) + " of "
                    + Words.day(proposal.to().date()) + ", no longer with the "
                    + Words.purpose(proposal.from().purpose()) + " of "
                    + Words.day(proposal.from().date()) + ".");
        } else {
            sentences.add("The baseline of the " + Words.ear(proposal.ear()) + " stays the "
                    + Words.purpose(proposal.from().purpose()) + " of "
                    + Words.day(proposal.from().date()) + ", and the test of "
                    + Words.day(proposal.to().date()) + " is not proposed for this ear again.");
        }
        List<String> changes = WhatChanged.between(record, after);
        if (changes.isEmpty()) {
            sentences.add("No determination on record changes, and nothing that is owed.");
        }
        sentences.addAll(changes);
        ProposalCase.open(after.history(), after.options(), proposal.ear())
                .map(ProposalCase::proposal)
                .ifPresent(next ->
                        sentences.add("The tests on record then give another proposal for this ear: the test of "
                                + Words.day(next.to().date()) + ", for a " + ProposalWording.kind(next.kind()) + "."));
        return List.copyOf(sentences);
    }
}
