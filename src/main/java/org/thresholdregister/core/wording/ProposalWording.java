package org.thresholdregister.core.wording;

import java.util.stream.Collectors;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.baseline.BaselineChange;

/** Puts a proposed baseline revision into words for the professional who accepts or declines it. */
public final class ProposalWording {

    private ProposalWording() {}

    public static String reason(BaselineChange proposal) {
        String days = proposal.evidence().stream().map(Words::day).collect(Collectors.joining(" and "));
        String finding = switch (proposal.kind()) {
            case PERSISTENT_IMPROVEMENT -> "5 dB or more better than the baseline on the tests of " + days;
            case PERSISTENT_SHIFT ->
                "A standard threshold shift on the tests of " + days + ", six months or more apart";
            case DECIDED -> "Chosen on the test of " + days;
        };
        return finding + "; mean level " + mean(proposal, true) + " at the baseline, " + mean(proposal, false)
                + " on the test of " + Words.day(proposal.to().date()) + ". A professional decides.";
    }

    private static String mean(BaselineChange proposal, boolean before) {
        return MeanOfThree.ofSum((before ? proposal.from() : proposal.to())
                        .levelSum(proposal.ear())
                        .exact()
                        .orElseThrow())
                + " dB HL";
    }
}
