package org.thresholdregister.core.meaning.impairment;

import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.meaning.Basis;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.meaning.Meaning;
import org.thresholdregister.core.regulation.Answer;

/** Whether one test shows material hearing impairment by one definition. Never age-corrected. */
public sealed interface MaterialImpairment extends Meaning {

    ImpairmentDefinition definition();

    /** One mean over both ears. */
    record OfBothEars(ImpairmentDefinition definition, DecibelMean mean, Answer reached)
            implements MaterialImpairment {}

    /** A mean for each ear. */
    record OfEachEar(ImpairmentDefinition definition, PerEar<DecibelMean> mean, PerEar<Answer> reached)
            implements MaterialImpairment {}

    static MaterialImpairment of(Audiogram test, ImpairmentDefinition definition) {
        return switch (definition.ears()) {
            case BOTH_IN_ONE_MEAN -> {
                DecibelMean mean = DecibelMean.levelOfBothEars(test, definition.frequencies());
                yield new OfBothEars(definition, mean, definition.isReached(mean));
            }
            case EACH -> {
                PerEar<DecibelMean> mean = PerEar.from(ear -> DecibelMean.level(test, ear, definition.frequencies()));
                yield new OfEachEar(definition, mean, PerEar.from(ear -> definition.isReached(mean.of(ear))));
            }
        };
    }

    /** By every definition, in the order in which they are listed. */
    static List<MaterialImpairment> all(Audiogram test) {
        return Arrays.stream(ImpairmentDefinition.values())
                .map(definition -> of(test, definition))
                .toList();
    }

    @Override
    default Basis basis() {
        return definition().basis();
    }

    @Override
    default List<Caveat> isNot() {
        return List.of(Caveat.NO_DIAGNOSIS, Caveat.NO_COMPENSATION_DECISION);
    }
}
