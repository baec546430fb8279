package org.thresholdregister.testdays;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.SequenceGenerator;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.QuietTime;
import org.thresholdregister.core.scheduling.Slot;

@Entity
@Table(name = "test_booking")
class StoredBooking {

    @Id
    @GeneratedValue(strategy = GenerationType.SEQUENCE, generator = "test_booking_seq")
    @SequenceGenerator(name = "test_booking_seq", sequenceName = "test_booking_seq", allocationSize = 50)
    private @Nullable Long id;

    private long testDayId;
    private long workerId;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Occasion occasion;

    private LocalDate lastDay;
    private String basis;
    private @Nullable LocalDate afterTest;
    private Ears ears;
    private LocalTime startsAt;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private QuietTime quietTime;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private BookingState state = BookingState.PROPOSED;

    private @Nullable BigDecimal hoursSinceNoise;
    private @Nullable Boolean protectorsWorn;
    private String note = "";

    @Version
    private int version;

    @SuppressWarnings("NullAway.Init")
    protected StoredBooking() {}

    StoredBooking(long dayKey, DuePerson person, Slot slot) {
        testDayId = dayKey;
        workerId = person.workerKey();
        occasion = person.due().occasion();
        lastDay = person.due().lastDay();
        basis = person.due().basis().place();
        afterTest = person.afterTest().orElse(null);
        ears = person.ears();
        startsAt = slot.starts();
        quietTime = QuietTime.of(person.due(), slot);
    }

    void moveTo(long dayKey, Slot slot, QuietTime quiet) {
        testDayId = dayKey;
        startsAt = slot.starts();
        quietTime = quiet;
    }

    void become(BookingState next, String why) {
        state = next;
        note = why;
    }

    void arrive(Optional<BigDecimal> hours, Optional<Boolean> protectors) {
        state = BookingState.ARRIVED;
        hoursSinceNoise = hours.orElse(null);
        protectorsWorn = protectors.orElse(null);
    }

    /** @throws IllegalStateException while it is not stored */
    long key() {
        if (id == null) {
            throw new IllegalStateException("a booking that is not stored has no key");
        }
        return id;
    }

    long dayKey() {
        return testDayId;
    }

    long workerKey() {
        return workerId;
    }

    Occasion occasion() {
        return occasion;
    }

    LocalDate lastDay() {
        return lastDay;
    }

    String basis() {
        return basis;
    }

    Optional<LocalDate> afterTest() {
        return Optional.ofNullable(afterTest);
    }

    Ears ears() {
        return ears;
    }

    LocalTime startsAt() {
        return startsAt;
    }

    QuietTime quietTime() {
        return quietTime;
    }

    BookingState state() {
        return state;
    }

    Optional<BigDecimal> hoursSinceNoise() {
        return Optional.ofNullable(hoursSinceNoise);
    }

    Optional<Boolean> protectorsWorn() {
        return Optional.ofNullable(protectorsWorn);
    }

    String note() {
        return note;
    }
}
