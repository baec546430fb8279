package org.thresholdregister.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.core.wording.LetterWords;

/**
 * Whether the standing paragraphs of the workers' letters can be read at about twelve years. English by the grade of
 * Flesch and Kincaid, 0.39 words per sentence + 11.8 syllables per word - 15.59; Spanish by the ease of
 * Fernández-Huerta, 206.84 - 60 syllables per word - 1.02 words per sentence. Both formulas, and what is easy by them
 * (grade 7; ease 70), are from memory; syllables are counted by groups of vowels.
 */
class ReadabilityTest {

    private static final double HIGHEST_GRADE = 7;
    private static final double LOWEST_EASE = 70;
    private static final Pattern ENGLISH_VOWELS = Pattern.compile("[aeiouy]+");
    private static final Pattern SPANISH_NUCLEI = Pattern.compile("[iuü]?[aeoáéó][iuy]?|[iuü][iuü]?|[íú]|y(?![a-zñ])");

    private record Counts(double wordsPerSentence, double syllablesPerWord) {}

    private static String standing(LetterKind kind, Language language) {
        Map<Placeholder, String> values = new EnumMap<>(Placeholder.class);
        values.put(Placeholder.WORKER_NAME, "Ana");
        for (Placeholder day : List.of(
                Placeholder.TEST_DATE, Placeholder.RETEST_BY, Placeholder.DECIDED_ON, Placeholder.BASELINE_DATE)) {
            values.put(day, language == Language.ENGLISH ? "May 3" : "3 de mayo");
        }
        values.put(Placeholder.EARS, language == Language.ENGLISH ? "right ear" : "oído derecho");
        values.put(Placeholder.DECIDED_BY, "Ana Vale");
        String own = new LetterText(TextPart.of(kind), LetterTexts.standard(language, TextPart.of(kind)))
                .pieces(values).stream()
                        .filter(LetterText.Piece.Paragraph.class::isInstance)
                        .map(piece -> ((LetterText.Piece.Paragraph) piece).text())
                        .filter(text -> text.matches(".*[.?]$"))
                        .collect(Collectors.joining(" "));
        return own + " " + LetterWords.in(language).caution();
    }

    private static Counts count(String text, Pattern syllable) {
        List<String> words = Arrays.stream(text.toLowerCase().split("[^a-zà-ÿ’]+"))
                .filter(word -> !word.isEmpty())
                .toList();
        long sentences = Arrays.stream(text.split("[.?!:]+(\\s|$)"))
                .filter(sentence -> !sentence.isBlank())
                .count();
        long syllables =
                words.stream().mapToLong(word -> syllables(word, syllable)).sum();
        return new Counts((double) words.size() / sentences, (double) syllables / words.size());
    }

    private static long syllables(String word, Pattern syllable) {
        String sounded = syllable == ENGLISH_VOWELS ? word.replaceFirst("(?<=[a-z]{2})(e|ed|es)$", "") : word;
        return Math.max(1, syllable.matcher(sounded).results().count());
    }

    @ParameterizedTest
    @EnumSource(value = LetterKind.class, mode = EnumSource.Mode.EXCLUDE, names = "REFERRAL")
    void englishIsReadAtTwelve(LetterKind kind) {
        Counts counts = count(standing(kind, Language.ENGLISH), ENGLISH_VOWELS);
        assertThat(0.39 * counts.wordsPerSentence() + 11.8 * counts.syllablesPerWord() - 15.59)
                .as("grade, " + counts)
                .isLessThanOrEqualTo(HIGHEST_GRADE);
    }

    @ParameterizedTest
    @EnumSource(value = LetterKind.class, mode = EnumSource.Mode.EXCLUDE, names = "REFERRAL")
    void spanishIsReadAtTwelve(LetterKind kind) {
        Counts counts = count(standing(kind, Language.SPANISH), SPANISH_NUCLEI);
        assertThat(206.84 - 60 * counts.syllablesPerWord() - 1.02 * counts.wordsPerSentence())
                .as("ease, " + counts)
                .isGreaterThanOrEqualTo(LOWEST_EASE);
    }

    @Test
    void syllablesAreCountedAsASpeakerWould() {
        assertThat(List.of("hearing", "protectors", "noise", "test").stream()
                        .map(word -> syllables(word, ENGLISH_VOWELS)))
                .containsExactly(2L, 3L, 1L, 1L);
        assertThat(List.of("audición", "ruido", "oído", "prueba", "cambio", "enfermera").stream()
                        .map(word -> syllables(word, SPANISH_NUCLEI)))
                .containsExactly(3L, 2L, 3L, 2L, 2L, 4L);
    }
}
