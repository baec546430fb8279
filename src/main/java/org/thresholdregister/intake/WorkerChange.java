package org.thresholdregister.intake;

import java.util.List;

/** What a roster file changes about a worker who is in the register. */
public record WorkerChange(String workerId, List<Field> fields) {

    public WorkerChange {
        fields = List.copyOf(fields);
    }

    /** One fact before and after, as files write it; empty where there is none. */
    public record Field(RosterColumn column, String before, String after) {}
}
