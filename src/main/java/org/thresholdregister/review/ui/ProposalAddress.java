package org.thresholdregister.review.ui;

import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.ProposalFilter;

/** The filter of the baseline proposals in the address, and the address of one of them. */
final class ProposalAddress {

    static final String ROUTE = "baseline-proposals";
    static final String KIND = "kind";
    static final String SITE = "site";
    static final String DEPARTMENT = "department";

    private ProposalAddress() {}

    /** What was typed to search stays out of the address, since it may be a name. */
    static ProposalFilter filter(FilterParameters parameters, String text) {
        return new ProposalFilter(
                parameters.choice(KIND, BaselineChange.Kind.class),
                parameters.text(SITE),
                parameters.text(DEPARTMENT),
                text);
    }

    static String of(String workerId, Ear ear) {
        return Paths.baselineProposal(ear.word(), workerId);
    }
}
