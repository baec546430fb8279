package org.thresholdregister.review;

import java.time.Instant;
import org.thresholdregister.core.decision.Decision;

/** A decision on record, with who entered it here and when. */
public record RecordedDecision(Decision decision, String enteredBy, Instant enteredAt) {}
