package org.thresholdregister.testdays;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;

/** The shift of one worker. */
@Entity
class WorkerShift {

    @Id
    private long workerId;

    private long workShiftId;

    protected WorkerShift() {}

    WorkerShift(long workerKey, long shiftKey) {
        workerId = workerKey;
        workShiftId = shiftKey;
    }

    long workerKey() {
        return workerId;
    }

    long shiftKey() {
        return workShiftId;
    }
}
