package org.thresholdregister.core.rules;

import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ears;

/** What one rule says of one test: of an ear, or of both where it asks about the person. */
public record Finding(Audiogram test, Ears ears, Rule rule, Reading reading) {

    public Verdict verdict() {
        return reading.verdict();
    }
}
