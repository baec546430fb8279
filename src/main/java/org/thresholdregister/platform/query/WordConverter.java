package org.thresholdregister.platform.query;

import jakarta.persistence.AttributeConverter;
import java.util.Arrays;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Stores a constant as the word that files use for it. */
public abstract class WordConverter<E extends Enum<E>> implements AttributeConverter<@Nullable E, @Nullable String> {

    private final Function<E, String> word;
    private final Map<String, E> byWord;

    protected WordConverter(Class<E> type, Function<E, String> word) {
        this.word = word;
        this.byWord = Arrays.stream(type.getEnumConstants()).collect(Collectors.toUnmodifiableMap(word, e -> e));
    }

    @Override
    public @Nullable String convertToDatabaseColumn(@Nullable E value) {
        return value == null ? null : word.apply(value);
    }

    /** @throws IllegalStateException for a word that this version does not know */
    @Override
    public @Nullable E convertToEntityAttribute(@Nullable String stored) {
        if (stored == null) {
            return null;
        }
        E value = byWord.get(stored);
        if (value == null) {
            throw new IllegalStateException(
                    "a stored word is not known to " + getClass().getSimpleName());
        }
        return value;
    }
}
