package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.decision.Profession;

/**
 * What a professional decided on a proposed baseline.
 *
 * @param to the day of the proposed baseline
 * @param name the professional's name
 */
public record ProposalAnswer(
        Ear ear,
        LocalDate to,
        boolean accepted,
        LocalDate decidedOn,
        String name,
        Optional<Profession> profession,
        String reason) {

    /** The decision that is taken down; the professional stands in it as {@code Dr. Vale, audiologist}. */
    Decision decision() {
        return new Decision(
                Ears.of(ear),
                to,
                accepted ? DecisionKind.BASELINE : DecisionKind.BASELINE_KEPT,
                decidedOn,
                name.strip() + profession.map(p -> ", " + p.word()).orElse(""),
                reason.strip());
    }
}
