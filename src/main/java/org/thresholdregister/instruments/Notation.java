package org.thresholdregister.instruments;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;
import org.thresholdregister.core.calibration.MeterReading;
import org.thresholdregister.core.calibration.OctaveBand;

/** Values by frequency as one text, in order, in the notation of the files; {@code -} where there is none. */
final class Notation {

    private static final String NONE = "-";

    private Notation() {}

    static String ofFrequencies(Function<Frequency, Optional<String>> value) {
        return join(Frequency.values(), value);
    }

    private static <E> String join(E[] places, Function<E, Optional<String>> value) {
        return Stream.of(places).map(place -> value.apply(place).orElse(NONE)).collect(Collectors.joining(" "));
    }

    private static <E extends Enum<E>, V> Map<E, V> split(Class<E> type, String text, Function<String, V> read) {
        Map<E, V> values = new EnumMap<>(type);
        String[] words = text.split(" ");
        for (E place : type.getEnumConstants()) {
            String word = place.ordinal() < words.length ? words[place.ordinal()] : NONE;
            if (!word.isEmpty() && !word.equals(NONE)) {
                values.put(place, read.apply(word));
            }
        }
        return values;
    }

    static String ofThresholds(Map<Frequency, Threshold> thresholds) {
        return ofFrequencies(
                frequency -> Optional.ofNullable(thresholds.get(frequency)).flatMap(Notation::word));
    }

    private static Optional<String> word(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured measured ->
                Optional.of(Integer.toString(measured.level().decibels()));
            case Threshold.NoResponse none ->
                Optional.of(none.limit().map(limit -> ">" + limit.decibels()).orElse("NR"));
            case Threshold.NotTested notTested ->
                switch (notTested.reason()) {
                    case NOT_GIVEN -> Optional.empty();
                    case DID_NOT_TEST -> Optional.of("DNT");
                    case COULD_NOT_TEST -> Optional.of("CNT");
                };
        };
    }

    static Map<Frequency, Threshold> thresholds(String text) {
        return split(Frequency.class, text, Notation::threshold);
    }

    /**
     * Reads one threshold; nothing is one that is not given.
     *
     * @throws IllegalArgumentException where it is none
     */
    static Threshold threshold(String word) {
        return switch (word) {
            case "" -> Threshold.notGiven();
            case "NR" -> Threshold.noResponse();
            case "DNT" -> Threshold.notTested(Reason.DID_NOT_TEST);
            case "CNT" -> Threshold.notTested(Reason.COULD_NOT_TEST);
            default ->
                word.startsWith(">")
                        ? Threshold.noResponseAt(Integer.parseInt(word.substring(1)))
                        : Threshold.measured(Integer.parseInt(word));
        };
    }

    static String ofReadings(Map<Frequency, MeterReading> readings) {
        return ofFrequencies(
                frequency -> Optional.ofNullable(readings.get(frequency)).map(MeterReading::toString));
    }

    static Map<Frequency, MeterReading> readings(String text) {
        return split(Frequency.class, text, MeterReading::parse);
    }

    static String ofLevels(Map<OctaveBand, MeterReading> levels) {
        return join(
                OctaveBand.values(),
                band -> Optional.ofNullable(levels.get(band)).map(MeterReading::toString));
    }

    static Map<OctaveBand, MeterReading> levels(String text) {
        return split(OctaveBand.class, text, MeterReading::parse);
    }
}
