package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.Optional;
import org.thresholdregister.core.training.TrainingRule;
import org.thresholdregister.core.training.TrainingTopic;

/** Training in words. */
public final class TrainingWords {

    private TrainingWords() {}

    /** As a checklist has it. */
    public static String topic(TrainingTopic topic) {
        return switch (topic) {
            case EFFECTS_OF_NOISE -> "the effects of noise on hearing";
            case PROTECTORS ->
                "hearing protectors: purpose, advantages, disadvantages and attenuation of each type, and how to choose,"
                        + " fit, use and care for them";
            case AUDIOMETRIC_TESTS -> "audiometric tests: their purpose, and how they are done";
        };
    }

    /** In a row of a list. */
    public static String shortTopic(TrainingTopic topic) {
        return switch (topic) {
            case EFFECTS_OF_NOISE -> "noise";
            case PROTECTORS -> "protectors";
            case AUDIOMETRIC_TESTS -> "tests";
        };
    }

    /** {@code noise, protectors and tests}. */
    public static String topics(Collection<TrainingTopic> topics) {
        return Words.listed(Arrays.stream(TrainingTopic.values())
                .filter(topics::contains)
                .map(TrainingWords::shortTopic)
                .toList());
    }

    /** {@code Training is due at enrolment, and again within 12 months.} */
    public static Sentence rule(TrainingRule rule) {
        return Sentence.of(
                "Training is due "
                        + rule.first()
                                .map(deadline -> "within " + Words.deadline(deadline) + " of enrolment")
                                .orElse("at enrolment")
                        + ", and again within " + Words.deadline(rule.again()) + " of the last"
                        + (rule.offeredYearly() ? "; it is offered each calendar year, 280 to 450 days apart" : "")
                        + (rule.certified() ? "; its date and kind are certified" : "") + ".",
                rule.basis());
    }

    /** {@code 14 people in Forming are due for training}, without the date. */
    public static String groupDue(int people, String department) {
        return Counted.of(people, "person", "people")
                + (department.isEmpty() ? " without a department" : " in " + department);
    }

    /** {@code last on 9 Mar 2026}, or that there was none. */
    public static String last(Optional<LocalDate> day) {
        return day.map(some -> "last on " + Words.day(some)).orElse("never trained in all topics");
    }

    /** The reason of the entry that a case gets: {@code Trained on 9 Mar 2026 in noise and protectors, by A. Vale}. */
    public static String retrainedReason(LocalDate day, Collection<TrainingTopic> topics, String trainer) {
        return "Training of " + Words.day(day) + " in " + topics(topics) + (trainer.isBlank() ? "" : ", by " + trainer);
    }
}
