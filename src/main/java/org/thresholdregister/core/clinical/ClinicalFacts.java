package org.thresholdregister.core.clinical;

import org.thresholdregister.core.audiometry.PerEar;

/**
 * The clinical part of the record as of one day.
 *
 * @param postponed whether the test was put off because of what was found
 * @param said what the worker said, in the worker's words; may be empty
 */
public record ClinicalFacts(HealthHistory history, PerEar<EarLook> ears, boolean postponed, String said) {

    /** The most characters of what the worker said. */
    public static final int LONGEST_SAID = 2000;

    public static final ClinicalFacts NOTHING =
            new ClinicalFacts(HealthHistory.NOT_ASKED, new PerEar<>(EarLook.NOT_LOOKED, EarLook.NOT_LOOKED), false, "");

    public boolean isEmpty() {
        return history.isEmpty() && ears.left().isEmpty() && ears.right().isEmpty() && !postponed && said.isEmpty();
    }

    /** What the next test begins with: the answers that last, for confirmation. */
    public ClinicalFacts forConfirmation() {
        return new ClinicalFacts(history.lasting(), NOTHING.ears(), false, "");
    }
}
