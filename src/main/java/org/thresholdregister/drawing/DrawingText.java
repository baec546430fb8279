package org.thresholdregister.drawing;

import static java.util.stream.Collectors.joining;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.wording.Words;

/** The words around the drawing: its sentence, the names of its series, its lists. */
final class DrawingText {

    private DrawingText() {}

    /** "Right ear, 9 Mar 2026", "Left ear, baseline 3 Feb 2020". */
    static String seriesName(AudiogramComparison comparison, Trace trace) {
        boolean isBaseline = trace.series() == Series.BASELINE || comparison.latestIsBaseline(trace.ear());
        return earName(trace.ear()) + ", " + (isBaseline ? "baseline " : "")
                + Words.day(trace.test().date());
    }

    /** "Right ear". */
    static String earName(Ear ear) {
        return Words.capitalised(Words.ear(ear));
    }

    /**
     * What the drawing shows, for one who does not see it: which test, the levels that decide (2000, 3000 and 4000 Hz,
     * 29 CFR 1910.95(g)(10)(i)) and where there was no response at a level not given.
     */
    static String sentence(AudiogramComparison comparison) {
        Audiogram latest = comparison.latest();
        List<String> sentences = new ArrayList<>();
        sentences.add("Audiogram of " + Words.day(latest.date()) + ", " + Words.purpose(latest.purpose()) + ".");
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
                                ", ", seriesName(comparison, trace) + ", no response, level not given: ", " Hz.")));
            }
        }
        return String.join(" ", sentences);
    }

    /** "4000 Hz 25 dB HL, baseline 5 dB HL". */
    private static String levels(Ear ear, Frequency frequency, Audiogram latest, Optional<Audiogram> baseline) {
        return frequency.hertz() + " Hz " + Words.threshold(latest.threshold(ear, frequency))
                + baseline.map(test -> ", baseline " + Words.threshold(test.threshold(ear, frequency)))
                        .orElse("");
    }

    private static String comparedWith(AudiogramComparison comparison, Ear ear, Optional<Audiogram> baseline) {
        if (comparison.latestIsBaseline(ear)) {
            return ", this is the baseline";
        }
        return baseline.map(test -> ", compared with the baseline of " + Words.day(test.date()))
                .orElse("");
    }
}
