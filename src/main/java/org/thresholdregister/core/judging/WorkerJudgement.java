package org.thresholdregister.core.judging;

import java.util.List;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.rules.Finding;

/**
 * Everything determined about one worker.
 *
 * @param determinations by test in order, the left ear before the right
 * @param findings what the rules beside the shift say, by test in order
 * @param followUps what is owed, by kind and test
 * @param proposals baseline revisions that a professional may be asked for; empty where revision is off
 */
public record WorkerJudgement(
        List<Determination> determinations,
        List<Finding> findings,
        List<FollowUp> followUps,
        List<BaselineChange> proposals) {}
