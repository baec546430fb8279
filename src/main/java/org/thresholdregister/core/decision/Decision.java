package org.thresholdregister.core.decision;

import java.time.LocalDate;
import org.thresholdregister.core.audiometry.Ears;

/**
 * What a person decided about the test made on {@code testDate}.
 *
 * @param decidedOn the day of the decision; it counts from that day
 * @param by who decided, as the record gives it; may be empty
 * @param reason why, as the record gives it; may be empty
 */
public record Decision(
        Ears ears, LocalDate testDate, DecisionKind kind, LocalDate decidedOn, String by, String reason) {}
