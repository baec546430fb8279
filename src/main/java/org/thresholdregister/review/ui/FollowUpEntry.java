package org.thresholdregister.review.ui;

import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.review.FollowUpRow;

/** Which follow-ups can be answered from a list, and by what. */
final class FollowUpEntry {

    private FollowUpEntry() {}

    /** The decision that settles what is owed, where the user may enter it. */
    static Optional<DecisionKind> settling(FollowUpRow row, Set<DecisionKind> allowed) {
        Optional<DecisionKind> settling = switch (row.kind()) {
            case NOTICE -> Optional.of(DecisionKind.NOTICE_GIVEN);
            case RECORD -> Optional.of(DecisionKind.RECORDED);
            case RETEST, ANNUAL_TEST, BASELINE_TEST -> Optional.empty();
        };
        return settling.filter(allowed::contains).filter(kind -> row.testDate().isPresent());
    }

    /** The words of the button. */
    static String button(DecisionKind kind) {
        return kind == DecisionKind.NOTICE_GIVEN ? "Notice given" : "Case recorded";
    }
}
