package org.thresholdregister.core.decision;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The decisions that concern one test of one ear. */
public record TestDecisions(List<Decision> decisions) {

    public static final TestDecisions NONE = new TestDecisions(List.of());

    public TestDecisions {
        decisions = List.copyOf(decisions);
    }

    public boolean has(DecisionKind kind) {
        return latestOf(kind).isPresent();
    }

    /** The latest decision on work-relatedness; of two made on one day, the one that presumes it. */
    public Optional<Decision> workRelatedness() {
        return latestOf(DecisionKind.NOT_WORK_RELATED, DecisionKind.WORK_RELATED);
    }

    /** The latest decision on the log entry; of two made on one day, the line-out. */
    public Optional<Decision> entry() {
        return latestOf(DecisionKind.RECORDED, DecisionKind.LINED_OUT);
    }

    /** Of equal days, the kind named last wins. */
    private Optional<Decision> latestOf(DecisionKind... kinds) {
        List<DecisionKind> order = Arrays.asList(kinds);
        return decisions.stream()
                .filter(decision -> order.contains(decision.kind()))
                .max(Comparator.comparing(Decision::decidedOn)
                        .thenComparing(decision -> order.indexOf(decision.kind()))
                        .thenComparing(Decision::by)
                        .thenComparing(Decision::reason));
    }
}
