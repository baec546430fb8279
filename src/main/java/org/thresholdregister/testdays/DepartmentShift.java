package org.thresholdregister.testdays;

import jakarta.persistence.Embeddable;
import jakarta.persistence.EmbeddedId;
import jakarta.persistence.Entity;

/** The shift of those of a department who have none of their own. */
@Entity
class DepartmentShift {

    @Embeddable
    record Department(String site, String department) {}

    @EmbeddedId
    private Department department;

    private long workShiftId;

    @SuppressWarnings("NullAway.Init")
    protected DepartmentShift() {}

    DepartmentShift(Department department, long shiftKey) {
        this.department = department;
        workShiftId = shiftKey;
    }

    Department department() {
        return department;
    }

    long shiftKey() {
        return workShiftId;
    }
}
