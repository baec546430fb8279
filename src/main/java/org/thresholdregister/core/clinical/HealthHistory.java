package org.thresholdregister.core.clinical;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;

/**
 * The answers to the health and noise history. A question without an answer was not asked, which is not a no.
 *
 * @param shoulder the side on which a long gun is held, where it is known; the other ear is the more exposed one
 */
public record HealthHistory(Map<HealthQuestion, Reply> replies, Optional<Ear> shoulder) {

    public static final HealthHistory NOT_ASKED = new HealthHistory(Map.of(), Optional.empty());

    public HealthHistory {
        replies = Map.copyOf(replies);
    }

    public Optional<Reply> reply(HealthQuestion question) {
        return Optional.ofNullable(replies.get(question));
    }

    public boolean isEmpty() {
        return replies.isEmpty() && shoulder.isEmpty();
    }

    /** The answers that may be shown for confirmation at the next test. */
    public HealthHistory lasting() {
        Map<HealthQuestion, Reply> kept = new EnumMap<>(HealthQuestion.class);
        replies.forEach((question, reply) -> {
            if (question.lasts()) {
                kept.put(question, reply);
            }
        });
        return new HealthHistory(kept, shoulder);
    }
}
