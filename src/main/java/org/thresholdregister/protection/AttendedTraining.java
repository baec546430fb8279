package org.thresholdregister.protection;

import org.thresholdregister.core.training.Training;

/**
 * A training that a worker took part in.
 *
 * @param key of the attendance
 * @param withdrawn why it was entered by mistake; empty where it was not
 */
public record AttendedTraining(long key, long sessionKey, Training training, String trainer, String withdrawn) {

    public boolean counts() {
        return withdrawn.isEmpty();
    }
}
