package org.thresholdregister.testing;

import jakarta.persistence.Entity;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.TestPurpose;

/** A test that is being typed. */
@Entity
@Table(name = "test_draft")
class StoredDraft {

    /** {@link #inPlaceOf} of a new test. */
    static final long NO_TEST = 0;

    private static final String SEPARATOR = "\t";

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "test_draft_seq")
    @SequenceGenerator(name = "test_draft_seq", sequenceName = "test_draft_seq", allocationSize = 1)
    private @Nullable Long id;

    private long workerId;
    private String typedBy;
    private long inPlaceOf;
    private String thresholds;
    private String limitDb;
    private @Nullable LocalDate testDate;
    private @Nullable TestPurpose purpose;
    private String hours;
    private @Nullable Boolean protectorsWorn;
    private String tester;
    private String instrument;
    private String transducer;
    private String room;
    private String remark;
    private String reason;
    private @Nullable Instant changedAt;

    @SuppressWarnings("NullAway.Init")
    protected StoredDraft() {}

    @SuppressWarnings("NullAway.Init")
    StoredDraft(long workerKey, String account, Optional<Long> replaced, TypedTest typed) {
        workerId = workerKey;
        typedBy = account;
        inPlaceOf = replaced.orElse(NO_TEST);
        set(typed);
    }

    long key() {
        return Objects.requireNonNull(id, "a draft that has not been stored");
    }

    long workerKey() {
        return workerId;
    }

    boolean isOf(String account) {
        return typedBy.equals(account);
    }

    Optional<Long> inPlaceOf() {
        return inPlaceOf == NO_TEST ? Optional.empty() : Optional.of(inPlaceOf);
    }

    Optional<Instant> changedAt() {
        return Optional.ofNullable(changedAt);
    }

    /** Takes over what has been typed by now. */
    void type(TypedTest typed, Instant now) {
        set(typed);
        changedAt = now;
    }

    private void set(TypedTest typed) {
        thresholds = String.join(SEPARATOR, typed.thresholds().texts());
        limitDb = typed.limit();
        testDate = typed.date().orElse(null);
        purpose = typed.purpose().orElse(null);
        hours = typed.hours();
        protectorsWorn = typed.protectorsWorn().orElse(null);
        tester = typed.tester();
        instrument = typed.instrument();
        transducer = typed.transducer();
        room = typed.room();
        remark = typed.remark();
        reason = typed.reason();
    }

    TypedTest typed() {
        return new TypedTest(
                new TypedThresholds(List.of(thresholds.split(SEPARATOR, -1))),
                limitDb,
                Optional.ofNullable(testDate),
                Optional.ofNullable(purpose),
                hours,
                Optional.ofNullable(protectorsWorn),
                tester,
                instrument,
                transducer,
                room,
                remark,
                reason);
    }

    TestDraft toDraft(String worker) {
        return new TestDraft(key(), worker, inPlaceOf(), typed(), changedAt());
    }
}
