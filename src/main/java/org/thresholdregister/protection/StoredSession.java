package org.thresholdregister.protection;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.training.TrainingTopic;

@Entity
@Table(name = "training_session")
class StoredSession {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "training_session_seq")
    @SequenceGenerator(name = "training_session_seq", sequenceName = "training_session_seq", allocationSize = 10)
    private @Nullable Long id;

    private String site;
    private LocalDate heldOn;
    private String topics;
    private String trainer;
    private String language;
    private int minutes;
    private String materials;
    private boolean certified;
    private @Nullable Long sheetId;
    private String enteredBy;
    private Instant enteredAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredSession() {}

    StoredSession(NewSession session, String enteredBy, Instant enteredAt) {
        this.site = session.site();
        this.heldOn = session.heldOn();
        this.topics = words(session.topics());
        this.trainer = session.trainer();
        this.language = session.language();
        this.minutes = session.minutes();
        this.materials = session.materials();
        this.certified = session.certified();
        this.enteredBy = enteredBy;
        this.enteredAt = enteredAt;
    }

    /** @throws IllegalStateException while it is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("a training that is not stored has no key");
        }
        return id;
    }

    String site() {
        return site;
    }

    Optional<Long> sheet() {
        return Optional.ofNullable(sheetId);
    }

    void keepSheet(long document) {
        sheetId = document;
    }

    NewSession details() {
        return new NewSession(site, heldOn, topics(topics), trainer, language, minutes, materials, certified);
    }

    private static String words(Set<TrainingTopic> topics) {
        return topics.stream().sorted().map(TrainingTopic::word).collect(Collectors.joining(" "));
    }

    static Set<TrainingTopic> topics(String words) {
        List<String> given = List.of(words.split(" "));
        return Arrays.stream(TrainingTopic.values())
                .filter(topic -> given.contains(topic.word()))
                .collect(Collectors.toSet());
    }
}
