package org.thresholdregister.core.meaning.impairment;

import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.Meaning;

/**
 * The percentage of hearing handicap of one test by one formula. The formula ends at 0 and at 100 %, so a percentage
 * always lies there, also where thresholds are missing.
 *
 * @param monaural of each ear by itself
 * @param binaural of both: five times the better ear, once the worse, over six
 * @param wholePerson 35 % of the binaural percentage, where the formula goes that far
 */
public record Handicap(
        HandicapFormula formula,
        PerEar<PercentRange> monaural,
        PercentRange binaural,
        Optional<PercentRange> wholePerson)
        implements Meaning {

    /** The sum of four thresholds at which handicap begins: a mean of 25 dB. */
    private static final int FENCE_SUM_DB = 100;

    /** 1.5 % for each dB of the mean are 3 eighths of a percent for each dB of the sum. */
    private static final int EIGHTHS_PER_DB = 3;

    private static final int ALL_EIGHTHS = 8 * 100;

    private static final int BETTER_EAR_WEIGHT = 5;

    public static Handicap of(Audiogram test, HandicapFormula formula) {
        PerEar<Eighths> ears = PerEar.from(ear -> eighths(test, ear, formula));
        Eighths left = ears.left();
        Eighths right = ears.right();
        int least = binaural48ths(left.least, right.least);
        int most = binaural48ths(left.most, right.most);
        return new Handicap(
                formula,
                PerEar.from(ear -> range(ears.of(ear).least, ears.of(ear).most, 8)),
                range(least, most, 48),
                formula.givesWholePerson() ? Optional.of(range(least * 7, most * 7, 48 * 20)) : Optional.empty());
    }

    /** An ear's percentage in eighths of a percent. */
    private record Eighths(int least, int most) {}

    private static Eighths eighths(Audiogram test, Ear ear, HandicapFormula formula) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : HandicapFormula.FREQUENCIES) {
            sum = sum.plus(formula.counted(test.threshold(ear, frequency)));
        }
        DecibelRange limited = sum.minus(DecibelRange.exactly(FENCE_SUM_DB))
                .times(EIGHTHS_PER_DB)
                .limitedTo(0, ALL_EIGHTHS);
        return new Eighths(limited.lowest().orElseThrow(), limited.highest().orElseThrow());
    }

    private static int binaural48ths(int left, int right) {
        return BETTER_EAR_WEIGHT * Math.min(left, right) + Math.max(left, right);
    }

    private static PercentRange range(int least, int most, int denominator) {
        return new PercentRange(new Percent(least, denominator), new Percent(most, denominator));
    }

    @Override
    public Basis basis() {
        return formula.basis();
    }

    @Override
    public List<Caveat> isNot() {
        return List.of(Caveat.NO_DIAGNOSIS, Caveat.NO_COMPENSATION_DECISION);
    }
}
