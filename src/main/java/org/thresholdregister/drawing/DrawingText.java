package org.thresholdregister.drawing;

import static java.util.stream.Collectors.joining;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.SpanishWords;
import org.thresholdregister.core.wording.Words;

/** The words around the drawing: its sentence, the names of its series, its lists. */
final class DrawingText {

    private final Language language;

    DrawingText(Language language) {
        this.language = language;
    }

    /** "Right ear, 9 Mar 2026", "Left ear, baseline 3 Feb 2020". */
    String seriesName(AudiogramComparison comparison, Trace trace) {
        boolean isBaseline = trace.series() == Series.BASELINE || comparison.latestIsBaseline(trace.ear());
        return earName(trace.ear()) + ", " + (isBaseline ? say("baseline ", "referencia ") : "")
                + day(trace.test().date());
    }

    /** Above the plot. */
    String frequencyAxis() {
        return say(AudiogramTable.FREQUENCY_HEADING, "Frecuencia, Hz");
    }

    /** Beside the plot. */
    String levelAxis() {
        return say("Hearing level, dB HL", "Nivel de audición, dB HL");
    }

    /** Of an arrow. */
    String noResponse() {
        return say("no response", "sin respuesta");
    }

    /** Before the frequencies that are drawn nowhere. */
    String noResponseWithoutLevel() {
        return say("No response, level not given (so not drawn):", "Sin respuesta, nivel no indicado (no se dibuja):");
    }

    /** Between an ear and its frequencies. */
    String ofTheBaseline() {
        return say(", baseline: ", ", referencia: ");
    }

    private String day(LocalDate date) {
        return say(Words.day(date), SpanishWords.shortDay(date));
    }

    private String threshold(Threshold threshold) {
        return say(Words.threshold(threshold), SpanishWords.threshold(threshold));
    }

    private String say(String english, String spanish) {
        return switch (language) {
            case ENGLISH -> english;
            case SPANISH -> spanish;
        };
    }

    /** "Right ear". */
    String earName(Ear ear) {
        return Words.capitalised(say(Words.ear(ear), SpanishWords.ear(ear)));
    }

    /**
     * What the drawing shows, for one who does not see it: which test, the levels that decide (2000, 3000 and 4000 Hz,
     * 29 CFR 1910.95(g)(10)(i)) and where there was no response at a level not given.
     */
    String sentence(AudiogramComparison comparison) {
        Audiogram latest = comparison.latest();
        List<String> sentences = new ArrayList<>();
        sentences.add(say("Audiogram of ", "Audiograma del ") + day(latest.date()) + ", "
                + say(Words.purpose(latest.purpose()), SpanishWords.purpose(latest.purpose())) + ".");
        for (Ear ear : AudiogramComparison.EARS) {
            Optional<Audiogram> baseline = comparison.test(ear, Series.BASELINE);
            sentences.add(Frequency.AVERAGED.stream()
                    .map(frequency -> levels(ear, frequency, latest, baseline))
                    .collect(joining("; ", earName(ear) + comparedWith(comparison, ear, baseline) + ": ", ".")));
        }
        for (Trace trace : comparison.traces()) {
            if (!trace.withoutLevel().isEmpty()) {
                sentences.add(trace.withoutLevel().stream()
                        .map(frequency -> Integer.toString(frequency.hertz()))
                        .collect(joining(
                                ", ",
                                seriesName(comparison, trace)
                                        + say(
                                                ", no response, level not given: ",
                                                ", sin respuesta, nivel no indicado: "),
                                " Hz.")));
            }
        }
        return String.join(" ", sentences);
    }

    /** "4000 Hz 25 dB HL, baseline 5 dB HL". */
    private String levels(Ear ear, Frequency frequency, Audiogram latest, Optional<Audiogram> baseline) {
        return frequency.hertz() + " Hz " + threshold(latest.threshold(ear, frequency))
                + baseline.map(test -> say(", baseline ", ", referencia ") + threshold(test.threshold(ear, frequency)))
                        .orElse("");
    }

    private String comparedWith(AudiogramComparison comparison, Ear ear, Optional<Audiogram> baseline) {
        if (comparison.latestIsBaseline(ear)) {
            return say(", this is the baseline", ", esta es la referencia");
        }
        return baseline.map(test -> say(", compared with the baseline of ", ", comparado con la referencia del ")
                        + day(test.date()))
                .orElse("");
    }
}
