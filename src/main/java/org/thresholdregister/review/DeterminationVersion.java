package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.decision.Decision;

/**
 * What was determined about one ear on one test at one time.
 *
 * @param testKey the register's own key of the test
 * @param settledOn the day of the test that settled it
 * @param determinedOn the day from which on it stood
 * @param replacement how it ended; absent for what stands now
 */
public record DeterminationVersion(
        long testKey,
        Ear ear,
        LocalDate testDate,
        EarFinding finding,
        Optional<LocalDate> settledOn,
        Basis basis,
        LocalDate determinedOn,
        Optional<Replacement> replacement) {

    /**
     * What it rests on.
     *
     * @param ruleSet the word of the rule set
     * @param ruleSetEdition the edition of its text and of our reading of it
     * @param ruleEdition the edition of this program's rules
     */
    public record Basis(
            String ruleSet,
            String ruleSetEdition,
            AgeCorrection ageCorrection,
            BaselineRevision baselineRevision,
            int ruleEdition) {}

    /**
     * How it ended.
     *
     * @param decision the decision that replaced it, where one did
     * @param importBatch the import that replaced it, where one did
     */
    public record Replacement(
            LocalDate on, ReplacementCause cause, Optional<Decision> decision, Optional<Long> importBatch) {}
}
