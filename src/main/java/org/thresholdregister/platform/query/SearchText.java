package org.thresholdregister.platform.query;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** Text as it is searched: in lower case and without accents, so that "nunez" finds Núñez. */
public final class SearchText {

    private static final Pattern MARKS = Pattern.compile("\\p{M}+");
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    private SearchText() {}

    public static String fold(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return MARKS.matcher(Normalizer.normalize(lower, Normalizer.Form.NFD)).replaceAll("");
    }

    /** Whether a text holds each of the typed words. */
    public static boolean matches(String text, String typed) {
        String folded = fold(text);
        return words(typed).stream().allMatch(folded::contains);
    }

    /** The words of what a person typed, folded. */
    static List<String> words(String typed) {
        String folded = fold(typed).strip();
        return folded.isEmpty() ? List.of() : List.of(BLANKS.split(folded));
    }
}
