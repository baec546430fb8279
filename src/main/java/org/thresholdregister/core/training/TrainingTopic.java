package org.thresholdregister.core.training;

import org.thresholdregister.core.regulation.Citation;

/** What a training has to cover, 29 CFR 1910.95(k)(3). */
public enum TrainingTopic {
    EFFECTS_OF_NOISE("effects-of-noise", "(i)"),
    PROTECTORS("protectors", "(ii)"),
    AUDIOMETRIC_TESTS("audiometric-tests", "(iii)");

    private final String word;
    private final String item;

    TrainingTopic(String word, String item) {
        this.word = word;
        this.item = item;
    }

    /** The word used in records. */
    public String word() {
        return word;
    }

    public Citation basis() {
        return new Citation("29 CFR 1910.95(k)(3)" + item);
    }
}
