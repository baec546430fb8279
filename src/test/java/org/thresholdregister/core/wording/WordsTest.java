package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

class WordsTest {

    static Stream<Arguments> vocabularies() {
        return Stream.of(
                vocabulary("ear", Ear.values(), Words::ear),
                vocabulary("ears", Ears.values(), Words::ears),
                vocabulary("purpose", TestPurpose.values(), Words::purpose),
                vocabulary("outcome", Outcome.values(), Words::outcome),
                vocabulary("recordability", Recordability.values(), Words::recordability),
                vocabulary("follow-up", FollowUpKind.values(), Words::followUp),
                vocabulary("decision", DecisionKind.values(), Words::decision),
                vocabulary("answer", Answer.values(), Words::answer));
    }

    private static <E extends Enum<E>> Arguments vocabulary(String name, E[] values, Function<E, String> words) {
        return Arguments.of(name, Arrays.stream(values).map(words).toList());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("vocabularies")
    void everyValueHasWordsOfItsOwn(String name, List<String> words) {
        assertThat(words)
                .doesNotHaveDuplicates()
                .allSatisfy(word ->
                        assertThat(word).isNotBlank().doesNotContain("_").isEqualTo(word.toLowerCase(Locale.ROOT)));
    }

    @Test
    void aDayReadsTheSameInEveryPlace() {
        Locale before = Locale.getDefault();
        try {
            for (Locale locale : List.of(Locale.ENGLISH, Locale.FRANCE, Locale.forLanguageTag("ar-EG"))) {
                Locale.setDefault(locale);
                assertThat(Words.day(LocalDate.parse("2026-03-09"))).isEqualTo("9 Mar 2026");
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void anOpenMeanSaysSo() {
        assertThat(Words.mean(DecibelRange.exactly(35))).isEqualTo("11.67 dB");
        assertThat(Words.mean(DecibelRange.atLeast(80))).isEqualTo("26.67 dB or more");
        assertThat(Words.mean(DecibelRange.atMost(-1))).isEqualTo("-0.33 dB or less");
        assertThat(Words.mean(DecibelRange.UNKNOWN)).isEqualTo("not known");
        assertThat(Words.meanLevel(DecibelRange.exactly(75))).isEqualTo("25.00 dB HL");
        assertThat(Words.meanLevel(DecibelRange.atLeast(80))).isEqualTo("26.67 dB HL or more");
        assertThat(Words.meanLevel(DecibelRange.UNKNOWN)).isEqualTo("not known");
    }
}
