package org.thresholdregister.core.meaning.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.meaning.Audiograms;
import org.thresholdregister.core.meaning.Caveat;
import org.thresholdregister.core.meaning.DecibelMean;
import org.thresholdregister.core.regulation.Answer;

/** Examples derived by hand from the five definitions (see {@code vectors/README.md}), and their boundaries. */
class NotchTest {

    private static Answer find(String cells, NotchDefinition definition) {
        return Notch.of(Audiograms.of(cells, ""), Ear.LEFT, definition).answer();
    }

    static Stream<Map<String, String>> examples() {
        return Vectors.rows("notch-examples.csv").stream();
    }

    @Test
    void noExampleIsMissing() {
        assertThat(examples()).hasSize(6);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theExamplesComeOut(Map<String, String> row) {
        String levels = row.get("levels");
        assertThat(find(levels, NotchDefinition.COLES_LUTMAN_BUFFIN_2000))
                .isEqualTo(answer(row.get("coles_lutman_buffin")));
        assertThat(find(levels, NotchDefinition.NISKAR_2001)).isEqualTo(answer(row.get("niskar")));
        assertThat(find(levels, NotchDefinition.HOFFMAN_2006)).isEqualTo(answer(row.get("hoffman")));
        assertThat(find(levels, NotchDefinition.WILSON_MCARDLE_2013)).isEqualTo(answer(row.get("wilson_mcardle")));
        Notch index = Notch.of(Audiograms.of(levels, ""), Ear.LEFT, NotchDefinition.NOTCH_INDEX);
        DecibelMean value = index.index().orElseThrow();
        int sixths = value.sum().exact().orElseThrow();
        assertThat(value.count()).isEqualTo(6);
        assertThat(String.format(Locale.ROOT, "%.2f", sixths / 6.0)).isEqualTo(row.get("notch_index"));
        assertThat(index.answer()).isEqualTo(sixths > 0 ? Answer.YES : Answer.NO);
    }

    private static Answer answer(String word) {
        return Answer.valueOf(word.toUpperCase(Locale.ROOT));
    }

    @ParameterizedTest
    @CsvSource({
        "COLES_LUTMAN_BUFFIN_2000, 0 20 10 20 10 10 20, YES",
        "COLES_LUTMAN_BUFFIN_2000, 0 20 11 20 10 10 20, NO",
        "COLES_LUTMAN_BUFFIN_2000, 0 20 10 20 10 11 20, NO",
        "COLES_LUTMAN_BUFFIN_2000, 0 10 30 20 10 11 10, YES",
        "COLES_LUTMAN_BUFFIN_2000, 0 10 10 10 10 20 10, YES",
        "COLES_LUTMAN_BUFFIN_2000, 0 10 10 10 10 20 11, NO",
        "NISKAR_2001, 15 15 0 30 0 0 20, YES",
        "NISKAR_2001, 15 16 0 40 0 0 20, NO",
        "NISKAR_2001, 16 15 0 40 0 0 20, NO",
        "NISKAR_2001, 15 0 0 29 0 0 19, NO",
        "NISKAR_2001, 15 15 0 0 0 30 21, NO",
        "HOFFMAN_2006, 10 20 0 30 0 0 25, YES",
        "HOFFMAN_2006, 10 21 0 30 0 0 25, NO",
        "HOFFMAN_2006, 10 20 0 30 0 0 26, NO",
        "NOTCH_INDEX, 0 10 10 10 10 0 10, NO",
        "NOTCH_INDEX, 0 10 10 10 11 0 10, YES",
        "WILSON_MCARDLE_2013, 0 0 10 20 0 0 10, YES",
        "WILSON_MCARDLE_2013, 0 0 10 19 0 0 9, NO",
        "WILSON_MCARDLE_2013, 0 0 10 20 0 0 11, NO"
    })
    void theBoundariesAreAsDefined(NotchDefinition definition, String cells, Answer found) {
        assertThat(find(cells, definition)).isEqualTo(found);
    }

    @ParameterizedTest
    @EnumSource
    void without8000HzNothingIsDecided(NotchDefinition definition) {
        assertThat(find("5 5 10 20 35 25 -", definition)).isEqualTo(Answer.UNDECIDED);
        assertThat(find("5 5 10 20 35 25 NR", definition)).isEqualTo(Answer.UNDECIDED);
        assertThat(find("10 10 10 10 10 10 CNT", definition)).isEqualTo(Answer.UNDECIDED);
    }

    /** No response at 8000 Hz is worse than any notch that was measured: there is no recovery. */
    @ParameterizedTest
    @EnumSource
    void noResponseAt8000HzIsNoRecovery(NotchDefinition definition) {
        assertThat(find("5 5 10 20 35 40 >90", definition)).isEqualTo(Answer.NO);
    }

    /** No response in the notch settles what lies below it; the recovery is there, whatever the level. */
    @Test
    void noResponseInTheNotchIsDeepEnough() {
        assertThat(find("5 5 10 20 >95 25 10", NotchDefinition.NISKAR_2001)).isEqualTo(Answer.YES);
        assertThat(find("5 5 10 15 - 15 10", NotchDefinition.NISKAR_2001)).isEqualTo(Answer.UNDECIDED);
    }

    @ParameterizedTest
    @EnumSource
    void fillingInBlanksNeverContradicts(NotchDefinition definition) {
        var random = new Random(2000);
        for (int i = 0; i < 25; i++) {
            assertThat(Audiograms.withTwoBlank(
                            random, test -> Notch.of(test, Ear.LEFT, definition).answer()))
                    .matches(Audiograms.Open::agree);
        }
    }

    @Test
    void aNotchNamesNoCause() {
        assertThat(Notch.all(Audiograms.flat(10), Ear.RIGHT))
                .hasSize(NotchDefinition.values().length)
                .allSatisfy(notch -> {
                    assertThat(notch.isNot()).contains(Caveat.NO_STATEMENT_OF_CAUSE);
                    assertThat(notch.answer()).isEqualTo(Answer.NO);
                });
    }
}
