package org.thresholdregister.intake;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A few values, each found by the bytes of the word that stands for it, in just this case. */
final class PlainWords<T> {

    private final List<T> values;
    private final byte[][] words;

    PlainWords(List<T> values, Function<T, String> word) {
        this.values = values;
        this.words = values.stream()
                .map(value -> word.apply(value).getBytes(StandardCharsets.US_ASCII))
                .toArray(byte[][]::new);
    }

    /** The value, or null where none of the words stands here. */
    @Nullable
    T find(byte[] bytes, int start, int end) {
        for (int i = 0; i < words.length; i++) {
            if (words[i].length == end - start && startsWith(words[i], bytes, start)) {
                return values.get(i);
            }
        }
        return null;
    }

    private static boolean startsWith(byte[] word, byte[] bytes, int start) {
        for (int i = 0; i < word.length; i++) {
            if (word[i] != bytes[start + i]) {
                return false;
            }
        }
        return true;
    }
}
