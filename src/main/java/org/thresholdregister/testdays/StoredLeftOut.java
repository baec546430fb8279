package org.thresholdregister.testdays;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Table;
import java.time.LocalDate;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.TestPlan;

/** Somebody who did not fit when people were last proposed for a day. */
@Entity
@Table(name = "test_left_out")
class StoredLeftOut {

    @Embeddable
    record Place(long testDayId, long workerId) {}

    @EmbeddedId
    private Place place;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private Occasion occasion;

    private LocalDate lastDay;

    @Enumerated(EnumType.STRING)
    @JdbcTypeCode(SqlTypes.VARCHAR)
    private TestPlan.Why why;

    @SuppressWarnings("NullAway.Init")
    protected StoredLeftOut() {}

    StoredLeftOut(long dayKey, long workerKey, TestPlan.LeftOut leftOut) {
        place = new Place(dayKey, workerKey);
        occasion = leftOut.due().occasion();
        lastDay = leftOut.due().lastDay();
        why = leftOut.why();
    }

    long workerKey() {
        return place.workerId();
    }

    Occasion occasion() {
        return occasion;
    }

    LocalDate lastDay() {
        return lastDay;
    }

    TestPlan.Why why() {
        return why;
    }
}
