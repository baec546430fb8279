package org.thresholdregister.testing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;

/**
 * The thresholds of a test as they are typed, right or wrong: of the right ear and then of the left, each ear's
 * frequencies as they stand and the second reading at 1000 Hz after them.
 *
 * @param texts one for each; empty where nothing is typed
 */
public record TypedThresholds(List<String> texts) {

    /** The most characters that one of them may have. */
    public static final int LONGEST_TEXT = 6;

    /** The ears in the order in which they are tested. */
    public static final List<Ear> EARS = List.of(Ear.RIGHT, Ear.LEFT);

    private static final int PER_EAR = Frequency.values().length + 1;

    /** How many there are, the second readings among them. */
    public static final int COUNT = EARS.size() * PER_EAR;

    public static final TypedThresholds NONE = new TypedThresholds(Collections.nCopies(COUNT, ""));

    /** @throws IllegalArgumentException for another number of texts, or one that no field would hold */
    public TypedThresholds {
        texts = List.copyOf(texts);
        if (texts.size() != COUNT || texts.stream().anyMatch(TypedThresholds::isNoField)) {
            throw new IllegalArgumentException("not what the fields for thresholds hold");
        }
    }

    private static boolean isNoField(String text) {
        return text.length() > LONGEST_TEXT || text.chars().anyMatch(Character::isISOControl);
    }

    /** As a test on record would have been typed. */
    static TypedThresholds of(Audiogram audiogram, PerEar<Threshold> repeatAt1000Hz) {
        List<String> texts = new ArrayList<>();
        for (Ear ear : EARS) {
            Arrays.stream(Frequency.values())
                    .map(frequency -> text(audiogram.threshold(ear, frequency)))
                    .forEach(texts::add);
            texts.add(text(repeatAt1000Hz.of(ear)));
        }
        return new TypedThresholds(texts);
    }

    /** The loudest tone at which a test says that there was no response, as typed; none where it says so nowhere. */
    static Optional<String> loudestTone(Audiogram audiogram) {
        return EARS.stream()
                .flatMap(ear -> Arrays.stream(Frequency.values()).map(frequency -> audiogram.threshold(ear, frequency)))
                .flatMap(threshold ->
                        threshold instanceof Threshold.NoResponse(var limit) ? limit.stream() : Stream.of())
                .map(HearingLevel::decibels)
                .max(Integer::compare)
                .map(String::valueOf);
    }

    String at(Ear ear, Frequency frequency) {
        return texts.get(EARS.indexOf(ear) * PER_EAR + frequency.ordinal());
    }

    String repeatAt1000Hz(Ear ear) {
        return texts.get(EARS.indexOf(ear) * PER_EAR + PER_EAR - 1);
    }

    /** How many thresholds have something typed, second readings aside. */
    public int count() {
        return Math.toIntExact(EARS.stream()
                .flatMap(ear -> Arrays.stream(Frequency.values()).map(frequency -> at(ear, frequency)))
                .filter(text -> !text.isBlank())
                .count());
    }

    private static String text(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured measured ->
                Integer.toString(measured.level().decibels());
            case Threshold.NoResponse none ->
                none.limit().map(limit -> ">" + limit.decibels()).orElse("NR");
            case Threshold.NotTested(Reason reason) ->
                switch (reason) {
                    case NOT_GIVEN -> "";
                    case DID_NOT_TEST -> "DNT";
                    case COULD_NOT_TEST -> "CNT";
                };
        };
    }
}
