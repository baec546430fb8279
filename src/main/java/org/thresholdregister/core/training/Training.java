package org.thresholdregister.core.training;

import java.time.LocalDate;
import java.util.Set;

/** A training that a worker took part in, and what it covered. */
public record Training(LocalDate day, Set<TrainingTopic> topics) {
    public Training {
        topics = Set.copyOf(topics);
    }
}
