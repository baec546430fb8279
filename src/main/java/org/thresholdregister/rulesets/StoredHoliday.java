package org.thresholdregister.rulesets;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;

@Entity
@Table(name = "holiday")
class StoredHoliday {

    @Id
    private LocalDate holidayOn;

    private String name;

    @SuppressWarnings("NullAway.Init")
    protected StoredHoliday() {}

    StoredHoliday(Holiday holiday) {
        this.holidayOn = holiday.day();
        this.name = holiday.name();
    }

    Holiday toHoliday() {
        return new Holiday(holidayOn, name);
    }
}
