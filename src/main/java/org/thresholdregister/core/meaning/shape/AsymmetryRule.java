package org.thresholdregister.core.meaning.shape;

import static org.thresholdregister.core.audiometry.Frequency.HZ_1000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_2000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_3000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_4000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_500;
import static org.thresholdregister.core.audiometry.Frequency.HZ_6000;

import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.regulation.Answer;

/**
 * A published rule for a difference between the ears, always one ear worse than the other. Small differences are very
 * common in people exposed to noise.
 */
public enum AsymmetryRule {
    /**
     * Pure-tone average more than 15 dB worse. Reading: the list names no frequencies; we take the academy's average of
     * 500, 1000, 2000 and 3000 Hz.
     */
    AAO_HNS_RED_FLAG(
            List.of(List.of(HZ_500, HZ_1000, HZ_2000, HZ_3000)),
            Basis.lookedUp("AAO-HNS 2014, red flags for referral")) {
        @Override
        Answer isWorse(List<DecibelMean> differences) {
            return differences.getFirst().isAbove(15);
        }
    },
    /** More than 15 dB worse at 500, 1000 and 2000 Hz, or more than 30 dB at 3000, 4000 and 6000 Hz. */
    AAO_HNS_CONSERVATION_PROGRAMME(
            List.of(List.of(HZ_500, HZ_1000, HZ_2000), List.of(HZ_3000, HZ_4000, HZ_6000)),
            Basis.unverified("AAO-HNS otologic referral criteria, 1983, revised 1997")) {
        @Override
        Answer isWorse(List<DecibelMean> differences) {
            return differences.getFirst().isAbove(15).or(differences.getLast().isAbove(30));
        }
    },
    /** 15 dB or more worse at 3000 Hz. */
    RULE_3000(List.of(List.of(HZ_3000)), Basis.lookedUp("Saliba and others 2009, the rule of 3000")) {
        @Override
        Answer isWorse(List<DecibelMean> differences) {
            return differences.getFirst().isAtLeast(15);
        }
    },
    /** 10 dB or more worse at two frequencies next to each other, or 15 dB or more at one. */
    TEN_AT_TWO_OR_FIFTEEN_AT_ONE(Each.FREQUENCY, Basis.lookedUp("Screening variant, quoted in secondary sources")) {
        @Override
        Answer isWorse(List<DecibelMean> differences) {
            Answer worse = isWorseAtNeighbours(differences, 10);
            for (DecibelMean difference : differences) {
                worse = worse.or(difference.isAtLeast(15));
            }
            return worse;
        }
    },
    /** 20 dB or more worse at two frequencies next to each other. */
    TWENTY_AT_TWO(Each.FREQUENCY, Basis.lookedUp("Screening variant, quoted in secondary sources")) {
        @Override
        Answer isWorse(List<DecibelMean> differences) {
            return isWorseAtNeighbours(differences, 20);
        }
    },
    /** The sums of 1000, 2000, 3000 and 4000 Hz differ by more than 40 dB, which is a mean of more than 10 dB. */
    HSE_SUMS(
            List.of(List.of(HZ_1000, HZ_2000, HZ_3000, HZ_4000)),
            Basis.unverified("HSE, L108, 3rd edition 2021, unilateral difference")) {
        @Override
        Answer isWorse(List<DecibelMean> differences) {
            return differences.getFirst().isAbove(10);
        }
    };

    private final List<List<Frequency>> compared;
    private final Basis basis;

    AsymmetryRule(List<List<Frequency>> compared, Basis basis) {
        this.compared = compared;
        this.basis = basis;
    }

    /** Holds a value that the constants need before the class is made. */
    private static final class Each {
        static final List<List<Frequency>> FREQUENCY =
                Arrays.stream(Frequency.values()).map(List::of).toList();
    }

    /** The sets of frequencies whose means are compared, in order. */
    public List<List<Frequency>> compared() {
        return compared;
    }

    public Basis basis() {
        return basis;
    }

    /** @param differences by how much the ear is worse than the other, in the order of {@link #compared()} */
    abstract Answer isWorse(List<DecibelMean> differences);

    private static Answer isWorseAtNeighbours(List<DecibelMean> differences, int decibels) {
        Answer worse = Answer.NO;
        for (int i = 1; i < differences.size(); i++) {
            worse = worse.or(differences
                    .get(i - 1)
                    .isAtLeast(decibels)
                    .and(differences.get(i).isAtLeast(decibels)));
        }
        return worse;
    }
}
