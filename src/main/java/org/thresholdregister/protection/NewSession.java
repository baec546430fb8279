package org.thresholdregister.protection;

import java.time.LocalDate;
import java.util.Set;
import org.thresholdregister.core.training.TrainingTopic;

/**
 * A training as it was held.
 *
 * @param site empty where it was for workers without one
 * @param language it was held in, {@code en}, {@code es} or another
 * @param materials what was shown or handed out; may be empty
 * @param certified whether its date and kind are certified, as 30 CFR 62.180 asks
 */
public record NewSession(
        String site,
        LocalDate heldOn,
        Set<TrainingTopic> topics,
        String trainer,
        String language,
        int minutes,
        String materials,
        boolean certified) {

    public static final int LONGEST_TRAINER = 200;
    public static final int LONGEST_MATERIALS = 1000;
    public static final int LONGEST_LANGUAGE = 10;
    public static final int MOST_MINUTES = 600;

    public NewSession {
        topics = Set.copyOf(topics);
    }
}
