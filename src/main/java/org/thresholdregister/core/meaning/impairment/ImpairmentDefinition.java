package org.thresholdregister.core.meaning.impairment;

import java.util.List;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.regulation.Answer;

/**
 * A definition of material hearing impairment: a mean level and a fence of 25 dB HL. Where a definition speaks of both
 * ears it means one mean of all their numbers, not each ear over the fence.
 */
public enum ImpairmentDefinition {
    NIOSH_1998(
            List.of(Frequency.HZ_1000, Frequency.HZ_2000, Frequency.HZ_3000, Frequency.HZ_4000),
            Ears.BOTH_IN_ONE_MEAN,
            Fence.MORE_THAN,
            Basis.unverified("NIOSH 1998, Criteria for a recommended standard, publication 98-126")),
    /** The same definition stands in the preamble to the OSHA amendment of 1981. */
    NIOSH_1972(
            List.of(Frequency.HZ_1000, Frequency.HZ_2000, Frequency.HZ_3000),
            Ears.BOTH_IN_ONE_MEAN,
            Fence.MORE_THAN,
            Basis.unverified("NIOSH 1972, Criteria for a recommended standard, and the OSHA preamble of 1981")),
    AAOO(
            List.of(Frequency.HZ_500, Frequency.HZ_1000, Frequency.HZ_2000),
            Ears.BOTH_IN_ONE_MEAN,
            Fence.MORE_THAN,
            Basis.lookedUp("AAOO, as quoted in NIOSH 1998")),
    /** The level test of the injury log; the log asks for a shift besides. */
    OSHA_RECORDING_FENCE(
            Frequency.AVERAGED, Ears.EACH, Fence.AT_LEAST, Basis.lookedUp("29 CFR 1904.10(a) and (b)(2)(ii)"));

    private static final int FENCE_DB = 25;

    private final List<Frequency> frequencies;
    private final Ears ears;
    private final Fence fence;
    private final Basis basis;

    ImpairmentDefinition(List<Frequency> frequencies, Ears ears, Fence fence, Basis basis) {
        this.frequencies = frequencies;
        this.ears = ears;
        this.fence = fence;
        this.basis = basis;
    }

    /** Whose levels are averaged. */
    public enum Ears {
        BOTH_IN_ONE_MEAN,
        EACH
    }

    /** Whether the fence itself counts. */
    public enum Fence {
        MORE_THAN,
        AT_LEAST
    }

    public List<Frequency> frequencies() {
        return frequencies;
    }

    public Ears ears() {
        return ears;
    }

    public Fence fence() {
        return fence;
    }

    /** The fence in dB HL. */
    public int fenceDecibels() {
        return FENCE_DB;
    }

    public Basis basis() {
        return basis;
    }

    Answer isReached(DecibelMean mean) {
        return switch (fence) {
            case MORE_THAN -> mean.isAbove(FENCE_DB);
            case AT_LEAST -> mean.isAtLeast(FENCE_DB);
        };
    }
}
