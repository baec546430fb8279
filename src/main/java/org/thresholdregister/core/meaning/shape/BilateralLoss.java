package org.thresholdregister.core.meaning.shape;

import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.meaning.Meaning;
import org.thresholdregister.core.regulation.Answer;

/**
 * The other half of the red flag of {@link AsymmetryRule#AAO_HNS_RED_FLAG}: a pure-tone average of more than 30 dB HL
 * in both ears, at the same frequencies.
 */
public record BilateralLoss(PerEar<DecibelMean> mean, Answer answer) implements Meaning {

    private static final int ABOVE_DB = 30;

    public static BilateralLoss of(Audiogram test) {
        PerEar<DecibelMean> mean = PerEar.from(ear -> DecibelMean.level(
                test, ear, AsymmetryRule.AAO_HNS_RED_FLAG.compared().getFirst()));
        return new BilateralLoss(
                mean, mean.left().isAbove(ABOVE_DB).and(mean.right().isAbove(ABOVE_DB)));
    }

    @Override
    public Basis basis() {
        return AsymmetryRule.AAO_HNS_RED_FLAG.basis();
    }

    @Override
    public List<Caveat> isNot() {
        return List.of(Caveat.NO_DIAGNOSIS, Caveat.NO_STATEMENT_OF_CAUSE, Caveat.NO_REFERRAL_DECISION);
    }
}
