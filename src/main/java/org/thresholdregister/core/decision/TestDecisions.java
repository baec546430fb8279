package org.thresholdregister.core.decision;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The decisions that concern one test of one ear. */
public record TestDecisions(List<Decision> decisions) {

    private static final Comparator<Decision> BY_THE_REST = Comparator.comparing(Decision::by)
            .thenComparing(Decision::reason)
            .thenComparing(Decision::testDate)
            .thenComparing(Decision::ears);

    public static final TestDecisions NONE = new TestDecisions(List.of());

    public TestDecisions {
        decisions = List.copyOf(decisions);
    }

    public boolean has(DecisionKind kind) {
        return latestOf(kind, kind).isPresent();
    }

    /** The latest decision on work-relatedness; of two made on one day, the one that presumes it. */
    public Optional<Decision> workRelatedness() {
        return latestOf(DecisionKind.NOT_WORK_RELATED, DecisionKind.WORK_RELATED);
    }

    /** The latest decision on the log entry; of two made on one day, the line-out. */
    public Optional<Decision> entry() {
        return latestOf(DecisionKind.RECORDED, DecisionKind.LINED_OUT);
    }

    private Optional<Decision> latestOf(DecisionKind kind, DecisionKind strongerKind) {
        @Nullable Decision latest = null;
        for (Decision decision : decisions) {
            boolean isAsked = decision.kind() == kind || decision.kind() == strongerKind;
            if (isAsked && (latest == null || isLater(decision, latest, strongerKind))) {
                latest = decision;
            }
        }
        return Optional.ofNullable(latest);
    }

    /** Of equal days, the stronger kind wins; the rest comes last, so that the order of the record never matters. */
    private static boolean isLater(Decision decision, Decision other, DecisionKind strongerKind) {
        if (!decision.decidedOn().equals(other.decidedOn())) {
            return decision.decidedOn().isAfter(other.decidedOn());
        }
        if (decision.kind() != other.kind()) {
            return decision.kind() == strongerKind;
        }
        return BY_THE_REST.compare(decision, other) > 0;
    }
}
