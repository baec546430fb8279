package org.thresholdregister.review;

import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;

/** A determination that changed after something had been sent or recorded on it; a person acknowledges it once. */
@Entity
@Table(name = "alteration")
class StoredAlteration {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "alteration_seq")
    @SequenceGenerator(name = "alteration_seq", sequenceName = "alteration_seq", allocationSize = 100)
    private @Nullable Long id;

    private long workerId;
    private Ear ear;
    private LocalDate testDate;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "former_id")
    private StoredFormerDetermination former;

    private @Nullable LocalDate noticeGivenOn;
    private @Nullable LocalDate recordedOn;
    private @Nullable Outcome nowOutcome;
    private @Nullable Recordability nowRecordable;
    private @Nullable LocalDate nowBaselineDate;
    private @Nullable Integer nowShiftSum;
    private LocalDate alteredOn;
    private @Nullable Instant acknowledgedAt;
    private @Nullable LocalDate acknowledgedOn;
    private @Nullable String acknowledgedBy;
    private @Nullable String acknowledgement;

    @SuppressWarnings("NullAway.Init")
    protected StoredAlteration() {}

    /** @param now what is found now; empty where the test is judged no more */
    StoredAlteration(
            StoredFormerDetermination former, SentAndRecorded sent, Optional<EarFinding> now, LocalDate alteredOn) {
        this.workerId = former.workerKey();
        this.ear = former.subject().ear();
        this.testDate = former.testDate();
        this.former = former;
        this.noticeGivenOn = sent.noticeGivenOn().orElse(null);
        this.recordedOn = sent.recordedOn().orElse(null);
        this.nowOutcome = now.map(EarFinding::outcome).orElse(null);
        this.nowRecordable = now.flatMap(EarFinding::recordable).orElse(null);
        this.nowBaselineDate = now.flatMap(EarFinding::baseline).orElse(null);
        OptionalInt shiftSum = now.map(EarFinding::shiftSum).orElse(OptionalInt.empty());
        this.nowShiftSum = shiftSum.isPresent() ? shiftSum.getAsInt() : null;
        this.alteredOn = alteredOn;
    }

    long workerKey() {
        return workerId;
    }

    boolean isOpen() {
        return acknowledgedAt == null;
    }

    boolean isOnACase() {
        return recordedOn != null;
    }

    /** What it leaves open, until a person has seen to it; no paragraph asks for that. */
    StoredTask toTask() {
        return new StoredTask(
                workerId,
                TaskKind.ALTERATION,
                Optional.empty(),
                alteredOn,
                Optional.of(testDate),
                Ears.of(ear),
                former.ruleSet(),
                "");
    }

    /** The ear and the test, for the audit trail. */
    String subject() {
        return ear.word() + ", test of " + testDate;
    }

    void acknowledge(String reason, String by, Instant at, LocalDate on) {
        acknowledgement = reason;
        acknowledgedBy = by;
        acknowledgedAt = at;
        acknowledgedOn = on;
    }

    Alteration toAlteration(boolean mayAcknowledge) {
        return new Alteration(
                Objects.requireNonNull(id, "an alteration that has not been stored"),
                testDate,
                ear,
                new SentAndRecorded(Optional.ofNullable(noticeGivenOn), Optional.ofNullable(recordedOn)),
                former.finding(),
                Optional.ofNullable(nowOutcome)
                        .map(outcome -> new EarFinding(
                                outcome,
                                Optional.ofNullable(nowRecordable),
                                Optional.ofNullable(nowBaselineDate),
                                nowShiftSum == null ? OptionalInt.empty() : OptionalInt.of(nowShiftSum))),
                alteredOn,
                acknowledgedOn == null || acknowledgedBy == null || acknowledgement == null
                        ? Optional.empty()
                        : Optional.of(new Alteration.Acknowledgement(acknowledgedOn, acknowledgedBy, acknowledgement)),
                mayAcknowledge);
    }
}
