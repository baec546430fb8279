package org.thresholdregister.testdays;

import java.util.List;
import org.thresholdregister.review.DecisionResult;

/**
 * What came of confirming a day.
 *
 * @param people whose times are confirmed now
 * @param retests whose cases know of it now
 * @param objections where a case did not take the booking; the time is confirmed all the same
 */
public record Confirmed(int people, int retests, List<Objection> objections) {

    public Confirmed {
        objections = List.copyOf(objections);
    }

    /** Why the case of one worker stays where it is. */
    public record Objection(String workerId, DecisionResult why) {}
}
