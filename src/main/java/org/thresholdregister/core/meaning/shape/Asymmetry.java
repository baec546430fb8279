package org.thresholdregister.core.meaning.shape;

import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.meaning.Meaning;
import org.thresholdregister.core.regulation.Answer;

/**
 * Whether the ears differ by one rule.
 *
 * @param isWorse whether this ear is the worse one by the rule
 * @param differences by how much this ear is worse than the other, in dB, in the order of {@link
 *     AsymmetryRule#compared()}; negative where it is better
 */
public record Asymmetry(AsymmetryRule rule, PerEar<Answer> isWorse, PerEar<List<DecibelMean>> differences)
        implements Meaning {

    public static Asymmetry of(Audiogram test, AsymmetryRule rule) {
        PerEar<List<DecibelMean>> differences = PerEar.from(ear -> differences(test, ear, rule));
        return new Asymmetry(rule, PerEar.from(ear -> rule.isWorse(differences.of(ear))), differences);
    }

    private static List<DecibelMean> differences(Audiogram test, Ear ear, AsymmetryRule rule) {
        return rule.compared().stream()
                .map(frequencies -> DecibelMean.level(test, ear, frequencies)
                        .minus(DecibelMean.level(test, ear.other(), frequencies)))
                .toList();
    }

    /** By every rule, in the order in which they are listed. */
    public static List<Asymmetry> all(Audiogram test) {
        return Arrays.stream(AsymmetryRule.values()).map(rule -> of(test, rule)).toList();
    }

    /** Whether either ear is the worse one. */
    public Answer answer() {
        return isWorse.left().or(isWorse.right());
    }

    @Override
    public Basis basis() {
        return rule.basis();
    }

    @Override
    public List<Caveat> isNot() {
        return List.of(Caveat.NO_DIAGNOSIS, Caveat.NO_STATEMENT_OF_CAUSE, Caveat.NO_REFERRAL_DECISION);
    }
}
