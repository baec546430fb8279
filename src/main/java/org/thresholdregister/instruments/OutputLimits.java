package org.thresholdregister.instruments;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;

/**
 * The loudest tones of a unit in dB HL, by frequency.
 *
 * @param levels a frequency whose limit is not known is absent
 */
public record OutputLimits(Map<Frequency, HearingLevel> levels) {

    public static final OutputLimits NOT_KNOWN = new OutputLimits(Map.of());

    private static final String NONE = "-";

    public OutputLimits {
        levels = Map.copyOf(levels);
    }

    /**
     * Reads nothing, one level for every frequency, or seven in test order, {@code -} where there is none.
     *
     * @throws IllegalArgumentException for anything else
     */
    public static OutputLimits parse(String text) {
        String[] words = text.strip().split("[\\s,;]+");
        if (text.isBlank()) {
            return NOT_KNOWN;
        }
        if (words.length != 1 && words.length != Frequency.values().length) {
            throw new IllegalArgumentException("one level or seven");
        }
        Map<Frequency, HearingLevel> levels = new EnumMap<>(Frequency.class);
        for (Frequency frequency : Frequency.values()) {
            String word = words[words.length == 1 ? 0 : frequency.ordinal()];
            if (!word.equals(NONE)) {
                levels.put(frequency, new HearingLevel(Integer.parseInt(word)));
            }
        }
        return new OutputLimits(levels);
    }

    public Optional<HearingLevel> at(Frequency frequency) {
        return Optional.ofNullable(levels.get(frequency));
    }

    /** As it is read: {@code 95}, or {@code 95 100 100 100 100 95 -}; nothing where no limit is known. */
    public String text() {
        if (levels.isEmpty()) {
            return "";
        }
        if (levels.size() == Frequency.values().length
                && levels.values().stream().distinct().count() == 1) {
            return Integer.toString(levels.values().iterator().next().decibels());
        }
        return Notation.ofFrequencies(frequency -> at(frequency).map(level -> Integer.toString(level.decibels())));
    }
}
