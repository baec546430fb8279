package org.thresholdregister.instruments;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.annotations.Immutable;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.calibration.DailyCheck;

@Entity
@Table(name = "functional_check")
@Immutable
class StoredCheck extends StoredEntry<Facts.Check> {

    private long audiometerId;
    private @Nullable Long headsetId;
    private LocalDate checkedOn;
    private String checkedBy;
    private String person;
    private String leftReference;
    private String rightReference;
    private String leftReadings;
    private String rightReadings;

    @Enumerated(EnumType.STRING)
    private DailyCheck.Listening listening;

    private String heard;

    /** As the rule said when it was entered; lists read it without the readings. */
    @Enumerated(EnumType.STRING)
    private DailyCheck.Verdict verdict;

    @SuppressWarnings("NullAway.Init")
    protected StoredCheck() {}

    StoredCheck(Facts.Check facts, Change change, String enteredBy, Instant enteredAt) {
        super(change, enteredBy, enteredAt);
        audiometerId = facts.unit();
        headsetId = facts.headset().orElse(null);
        checkedOn = facts.day();
        checkedBy = facts.by();
        person = facts.person();
        leftReference = Notation.ofThresholds(facts.reference().left());
        rightReference = Notation.ofThresholds(facts.reference().right());
        leftReadings = Notation.ofThresholds(facts.readings().left());
        rightReadings = Notation.ofThresholds(facts.readings().right());
        listening = facts.listening();
        heard = facts.heard();
        verdict = facts.result().verdict();
    }

    @Override
    Facts.Check facts() {
        return new Facts.Check(
                audiometerId,
                Optional.ofNullable(headsetId),
                checkedOn,
                checkedBy,
                person,
                new PerEar<>(Notation.thresholds(leftReference), Notation.thresholds(rightReference)),
                new PerEar<>(Notation.thresholds(leftReadings), Notation.thresholds(rightReadings)),
                listening,
                heard);
    }
}
