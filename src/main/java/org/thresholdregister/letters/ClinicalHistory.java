package org.thresholdregister.letters;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.clinical.ClinicalStore;
import org.thresholdregister.clinical.ClinicalStore.Latest;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.wording.ClinicalWords;
import org.thresholdregister.core.wording.Words;

/** What is known of a worker's ears and health beside the tests, for a referral. It is asked on behalf of a nurse. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class ClinicalHistory {

    /** A heading and its lines, in the language of the record. */
    record Chapter(String heading, List<String> lines) {
        Chapter {
            lines = List.copyOf(lines);
        }
    }

    private final ClinicalStore clinical;

    ClinicalHistory(ClinicalStore clinical) {
        this.clinical = clinical;
    }

    /** The latest of each part, with its day; none where nothing is on record. */
    List<Chapter> of(long workerKey) {
        Latest latest = clinical.latest(workerKey);
        List<Chapter> chapters = new ArrayList<>();
        latest.history()
                .ifPresent(dated -> chapters.add(new Chapter(
                        "Health and noise history, " + Words.day(dated.day()),
                        List.of(ClinicalWords.history(dated.what())))));
        latest.ears()
                .ifPresent(dated -> chapters.add(new Chapter(
                        "Look into the ears, " + Words.day(dated.day()),
                        List.of(
                                "Right: " + ClinicalWords.look(dated.what().of(Ear.RIGHT)),
                                "Left: " + ClinicalWords.look(dated.what().of(Ear.LEFT))))));
        latest.said()
                .ifPresent(dated -> chapters.add(
                        new Chapter("What the worker said, " + Words.day(dated.day()), List.of(dated.what()))));
        return chapters;
    }
}
