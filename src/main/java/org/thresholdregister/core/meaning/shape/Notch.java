package org.thresholdregister.core.meaning.shape;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.meaning.Meaning;
import org.thresholdregister.core.regulation.Answer;

/**
 * Whether one ear has a notch by one definition. Notches are common in people without noise exposure, and those at 6000
 * Hz are partly an artefact of the earphone. Every definition needs 8000 Hz: where nothing is known there, the answer is
 * undecided, whatever the other frequencies say.
 *
 * @param index the value in dB, where the definition is an index
 */
public record Notch(NotchDefinition definition, Ear ear, Answer answer, Optional<DecibelMean> index)
        implements Meaning {

    public static Notch of(Audiogram test, Ear ear, NotchDefinition definition) {
        var levels = new EarLevels(test, ear);
        boolean highestIsKnown = !levels.at(Frequency.HZ_8000).equals(DecibelRange.UNKNOWN);
        return new Notch(
                definition,
                ear,
                highestIsKnown ? definition.find(levels) : Answer.UNDECIDED,
                definition == NotchDefinition.NOTCH_INDEX ? Optional.of(levels.notchIndex()) : Optional.empty());
    }

    /** By every definition, in the order in which they are listed. */
    public static List<Notch> all(Audiogram test, Ear ear) {
        return Arrays.stream(NotchDefinition.values())
                .map(definition -> of(test, ear, definition))
                .toList();
    }

    @Override
    public Basis basis() {
        return definition.basis();
    }

    @Override
    public List<Caveat> isNot() {
        return List.of(Caveat.NO_DIAGNOSIS, Caveat.NO_COMPENSATION_DECISION, Caveat.NO_STATEMENT_OF_CAUSE);
    }
}
