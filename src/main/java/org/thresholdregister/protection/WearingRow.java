package org.thresholdregister.protection;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.attenuation.Estimate;
import org.thresholdregister.core.attenuation.MustWear;
import org.thresholdregister.core.attenuation.ProtectionTarget;
import org.thresholdregister.core.regulation.Answer;

/**
 * A worker who has to wear protectors, and how well those given out do.
 *
 * @param twaDba without protectors
 * @param has the names of the protectors that the worker has
 * @param hasPair whether a plug and a muff to wear together are among them
 * @param best by the picked method or a fit test, the lowest level among them; empty where there is none
 */
public record WearingRow(
        String workerId,
        String name,
        String site,
        String department,
        Optional<BigDecimal> twaDba,
        MustWear mustWear,
        MustWear.Facts facts,
        ProtectionTarget target,
        List<String> has,
        boolean hasPair,
        Optional<Estimate> best) {

    /** How it stands with the protector, the most pressing first. */
    public enum State {
        NONE_GIVEN,
        TARGET_NOT_REACHED,
        /** A plug and a muff are asked for, and no pair was given. */
        PAIR_MISSING,
        NO_ESTIMATE,
        REACHED
    }

    public State state() {
        if (has.isEmpty()) {
            return State.NONE_GIVEN;
        }
        if (!hasPair && mustWear.reasons().stream().anyMatch(reason -> reason.why() == MustWear.Why.PLUG_AND_MUFF)) {
            return State.PAIR_MISSING;
        }
        Answer reached = best.map(target::isReachedBy).orElse(Answer.UNDECIDED);
        return switch (reached) {
            case YES -> State.REACHED;
            case NO -> State.TARGET_NOT_REACHED;
            case UNDECIDED -> State.NO_ESTIMATE;
        };
    }
}
