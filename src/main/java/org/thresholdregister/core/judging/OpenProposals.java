package org.thresholdregister.core.judging;

import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;

/**
 * Which of the baseline revisions that the professional guide's rules propose still wait for a professional, 29 CFR
 * 1910.95(g)(9). Judging lists, for each ear, the whole chain that would follow if each proposal were accepted; what
 * can be decided on is the first of an ear that nobody has answered, since those after it rest on it.
 */
public final class OpenProposals {

    private OpenProposals() {}

    /**
     * The open proposals, at most one for each ear.
     *
     * @param judgement of this history, with revisions proposed
     */
    public static List<BaselineChange> of(WorkerHistory history, WorkerJudgement judgement) {
        List<BaselineChange> open = new ArrayList<>();
        for (Ear ear : Ear.values()) {
            List<BaselineChange> chain = chain(ear, judgement);
            List<Decision> chosen = history.decisions().stream()
                    .filter(decision -> decision.kind() == DecisionKind.BASELINE
                            && decision.ears().include(ear))
                    .toList();
            for (int i = 0; i < chain.size(); i++) {
                if (isOpen(chain.get(i), chain.subList(i + 1, chain.size()), chain, chosen)) {
                    open.add(chain.get(i));
                    break;
                }
            }
        }
        return List.copyOf(open);
    }

    /** The proposals that accepting this one would bring, as the tests on record stand. */
    static List<BaselineChange> following(BaselineChange proposal, WorkerJudgement judgement) {
        List<BaselineChange> chain = chain(proposal.ear(), judgement);
        return List.copyOf(chain.subList(chain.indexOf(proposal) + 1, chain.size()));
    }

    private static List<BaselineChange> chain(Ear ear, WorkerJudgement judgement) {
        return judgement.proposals().stream()
                .filter(proposal -> proposal.ear() == ear)
                .toList();
    }

    /** Accepted, it is settled; so it is where a person has since chosen another baseline than any that it leads to. */
    private static boolean isOpen(
            BaselineChange proposal, List<BaselineChange> later, List<BaselineChange> chain, List<Decision> chosen) {
        return chosen.stream()
                .noneMatch(decision -> names(decision, proposal)
                        || later.stream().anyMatch(follower -> names(decision, follower))
                        || (!decision.decidedOn().isBefore(proposal.after().date())
                                && chain.stream().noneMatch(any -> names(decision, any))));
    }

    private static boolean names(Decision decision, BaselineChange proposal) {
        return decision.testDate().equals(proposal.to().date());
    }
}
