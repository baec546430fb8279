package org.thresholdregister.protection;

import java.util.List;
import java.util.Optional;
import org.thresholdregister.platform.documents.Document;

/**
 * A training on record.
 *
 * @param sheet the signed sheet, where it has been scanned
 * @param attendants those who took part, by name; those withdrawn as entered by mistake among them
 */
public record TrainingSession(long key, NewSession details, Optional<Document> sheet, List<Attendant> attendants) {

    /**
     * Somebody who took part.
     *
     * @param key of the attendance
     * @param withdrawn why it was entered by mistake; empty where it was not
     */
    public record Attendant(long key, String workerId, String name, String department, String withdrawn) {
        public boolean counts() {
            return withdrawn.isEmpty();
        }
    }

    public TrainingSession {
        attendants = List.copyOf(attendants);
    }

    /** How many took part. */
    public int present() {
        return (int) attendants.stream().filter(Attendant::counts).count();
    }
}
