package org.thresholdregister.letters;

import java.util.List;

/**
 * What is known of a worker's ears and health beside the tests, for a referral. A bean of this type is asked where there
 * is one; it is called on behalf of a nurse.
 */
public interface ClinicalHistory {

    /** A heading and its lines, in the language of the record. */
    record Chapter(String heading, List<String> lines) {
        public Chapter {
            lines = List.copyOf(lines);
        }
    }

    List<Chapter> of(String workerId);
}
