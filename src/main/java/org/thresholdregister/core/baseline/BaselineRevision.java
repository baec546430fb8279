package org.thresholdregister.core.baseline;

/** What is done about baselines that the professional guide's two rules would revise. */
public enum BaselineRevision {
    /** Nothing: the first baseline stays. */
    OFF,
    /** Revisions are proposed, and judging stays on the first baseline. */
    PROPOSE,
    /** Judging goes on as if each proposal had been accepted. */
    APPLY
}
