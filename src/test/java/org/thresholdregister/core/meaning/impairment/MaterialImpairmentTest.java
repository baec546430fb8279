package org.thresholdregister.core.meaning.impairment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.meaning.Audiograms;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.shift.Limit;

/** NIOSH 1998 and 1972, AAOO, 29 CFR 1904.10: boundaries derived by hand from the definitions. */
class MaterialImpairmentTest {

    private static MaterialImpairment.OfBothEars both(String left, String right, ImpairmentDefinition definition) {
        return (MaterialImpairment.OfBothEars) MaterialImpairment.of(Audiograms.of(left, right), definition);
    }

    /** Only the frequencies of the definition stand at a level that counts. */
    @ParameterizedTest
    @CsvSource({
        "NIOSH_1998, 0 25 25 25 25 0 0, 0 25 25 25 25 0 0, NO",
        "NIOSH_1998, 0 25 25 25 25 0 0, 0 25 25 25 26 0 0, YES",
        "NIOSH_1972, 0 25 25 25 0 0 0, 0 25 25 25 0 0 0, NO",
        "NIOSH_1972, 0 25 25 25 0 0 0, 0 26 25 25 0 0 0, YES",
        "AAOO, 25 25 25 0 0 0 0, 25 25 25 0 0 0 0, NO",
        "AAOO, 26 25 25 0 0 0 0, 25 25 25 0 0 0 0, YES"
    })
    void theFenceHasToBeExceeded(ImpairmentDefinition definition, String left, String right, Answer reached) {
        assertThat(both(left, right, definition).reached()).isEqualTo(reached);
    }

    /** "Both ears" is one mean of eight numbers: one ear far over it carries the other. */
    @Test
    void oneBadEarMayCarryTheMean() {
        MaterialImpairment.OfBothEars found =
                both("0 0 0 0 0 0 0", "0 55 55 55 55 0 0", ImpairmentDefinition.NIOSH_1998);
        assertThat(found.mean()).isEqualTo(new DecibelMean(DecibelRange.exactly(220), 8));
        assertThat(found.reached()).isEqualTo(Answer.YES);
    }

    @Test
    void theFenceOfTheInjuryLogCountsItselfAndEachEar() {
        var found = (MaterialImpairment.OfEachEar) MaterialImpairment.of(
                Audiograms.of("0 0 25 25 25 0 0", "0 0 25 25 24 0 0"), ImpairmentDefinition.OSHA_RECORDING_FENCE);
        assertThat(found.reached().left()).isEqualTo(Answer.YES);
        assertThat(found.reached().right()).isEqualTo(Answer.NO);
    }

    @Test
    void theFenceOfTheInjuryLogIsTheEnginesOwn() {
        var random = new Random(1904);
        Limit logLevel = ((RecordingRule.ShiftAndLevel) RuleSets.OSHA.recording()).level();
        for (int i = 0; i < 500; i++) {
            Audiogram test = Audiograms.random(random, 60);
            var found = (MaterialImpairment.OfEachEar)
                    MaterialImpairment.of(test, ImpairmentDefinition.OSHA_RECORDING_FENCE);
            for (Ear ear : Ear.values()) {
                assertThat(found.reached().of(ear)).isEqualTo(logLevel.reachedByMean(test.levelSum(ear), 3));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(names = {"NIOSH_1998", "NIOSH_1972", "AAOO"})
    void missingAndNoResponseAreNotInvented(ImpairmentDefinition definition) {
        assertThat(both("0 0 - 0 0 0 0", "0 0 0 0 0 0 0", definition).reached()).isEqualTo(Answer.UNDECIDED);
        assertThat(both("0 0 NR 0 0 0 0", "90 90 90 90 90 90 90", definition).reached())
                .isEqualTo(Answer.UNDECIDED);
        assertThat(both("0 0 >95 0 0 0 0", "50 50 50 50 50 50 50", definition).reached())
                .isEqualTo(Answer.YES);
        assertThat(both("0 0 >95 0 0 0 0", "0 0 0 0 0 0 0", definition).reached())
                .isEqualTo(Answer.UNDECIDED);
    }

    @Test
    void everyDefinitionIsAsked() {
        assertThat(MaterialImpairment.all(Audiograms.flat(20)))
                .extracting(MaterialImpairment::definition)
                .containsExactly(ImpairmentDefinition.values());
        assertThat(MaterialImpairment.all(Audiograms.flat(20)))
                .allSatisfy(found -> assertThat(found.isNot()).contains(Caveat.NO_COMPENSATION_DECISION));
    }
}
