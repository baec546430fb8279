package org.thresholdregister.drawing;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.Words;

/**
 * Draws an audiogram as the trade draws it, as one SVG element: dB HL downward, frequency by octaves, the right ear red
 * circles on a solid line, the left ear blue crosses on a dashed line (21 NCAC 22I .0111 for the symbols; colours and
 * lines by ASHA 1990, from memory). The baseline is drawn fainter and thinner, in the same colours. A symbol stands at
 * its true point. Where there was no response it stands at the loudest level tried, with an arrow: right ear down and
 * left, left ear down and right; no line leads to it, nor across a frequency that was not tested. No response at a level
 * not given is told in words beneath the plot and drawn nowhere.
 *
 * <p>The SVG is well-formed XML without scripts, style attributes or references, and the same bytes for the same input.
 * Every threshold is an element with {@code data-ear}, {@code data-series}, {@code data-hz}, {@code data-kind}
 * (measured, no-response, not-tested) and {@code data-words}, and {@code data-db} where it has a level, so that a page
 * can read it out.
 */
public final class AudiogramSvg {

    private static final double LINE_HEIGHT = 20;
    private static final Set<Frequency> BETWEEN_OCTAVES = EnumSet.of(Frequency.HZ_3000, Frequency.HZ_6000);

    private final AudiogramComparison comparison;
    private final Optional<PopulationCurves> population;
    private final Medium medium;
    private final DrawingText text;
    private final List<Trace> traces;
    private final Plot plot;
    private final SvgWriter svg = new SvgWriter();
    private final Pen pen;

    private AudiogramSvg(
            AudiogramComparison comparison, Optional<PopulationCurves> population, Medium medium, Language language) {
        this.text = new DrawingText(language);
        this.comparison = comparison;
        this.population = population;
        this.medium = medium;
        this.traces = comparison.traces();
        this.plot =
                new Plot(traces.stream().anyMatch(AudiogramSvg::needsRoom) ? Plot.DEEPEST_DB : Plot.USUAL_DEEPEST_DB);
        this.pen = new Pen(svg, medium);
    }

    /**
     * For a page. Text takes the page's font and colour; the ears' colours are the custom properties
     * {@code --tr-ear-right} and {@code --tr-ear-left}, with #B00020 and #0B4FB3 where the page sets none.
     */
    public static String forScreen(AudiogramComparison comparison) {
        return new AudiogramSvg(comparison, Optional.empty(), Medium.SCREEN, Language.ENGLISH).draw();
    }

    /** For a page, over the curves of a population. */
    public static String forScreen(AudiogramComparison comparison, PopulationCurves population) {
        return new AudiogramSvg(comparison, Optional.of(population), Medium.SCREEN, Language.ENGLISH).draw();
    }

    /** For a printed document: fixed colours, and the sentence also as {@code alt}, where tagged PDF looks for it. */
    public static String forPaper(AudiogramComparison comparison) {
        return forPaper(comparison, Language.ENGLISH);
    }

    /** For a printed document in this language. */
    public static String forPaper(AudiogramComparison comparison, Language language) {
        return new AudiogramSvg(comparison, Optional.empty(), Medium.PAPER, language).draw();
    }

    /** What the drawing shows, in words with the levels at 2000, 3000 and 4000 Hz: the drawing's own label. */
    public static String sentence(AudiogramComparison comparison) {
        return sentence(comparison, Language.ENGLISH);
    }

    /** The same in another language. */
    public static String sentence(AudiogramComparison comparison, Language language) {
        return new DrawingText(language).sentence(comparison);
    }

    /** Whether a level lies beyond the usual lowest line, or an arrow would point from it into the void. */
    private static boolean needsRoom(Trace trace) {
        return Arrays.stream(Frequency.values())
                .anyMatch(frequency -> trace.level(frequency).orElse(HearingLevel.LOWEST_DB)
                        > (trace.isNoResponse(frequency) ? Plot.USUAL_DEEPEST_DB - 1 : Plot.USUAL_DEEPEST_DB));
    }

    private String draw() {
        List<Trace> withoutLevel =
                traces.stream().filter(trace -> !trace.withoutLevel().isEmpty()).toList();
        Legend legend = new Legend(comparison, traces, text);
        double populationTop = plot.frameBottom() + 24;
        double wordsTop = populationTop + (population.isPresent() ? LINE_HEIGHT : 0);
        double legendTop = wordsTop + (withoutLevel.isEmpty() ? 0 : (withoutLevel.size() + 1) * LINE_HEIGHT + 6);
        startSvg(Math.ceil(legendTop + legend.height()));
        drawGrid();
        drawAxes();
        population.ifPresent(curves -> {
            curves.draw(svg, pen, plot, medium);
            pen.startText(Legend.LEFT, populationTop, "start")
                    .attribute("font-size", Pen.FONT_SIZE - 1)
                    .text(PopulationCurves.LEGEND)
                    .end();
        });
        for (Series series : List.of(Series.BASELINE, Series.LATEST)) {
            traces.stream().filter(trace -> trace.series() == series).forEach(this::drawTrace);
        }
        if (!withoutLevel.isEmpty()) {
            tellWithoutLevel(withoutLevel, wordsTop);
        }
        legend.draw(svg, pen, legendTop);
        return svg.end().finished();
    }

    private void startSvg(double height) {
        String sentence = text.sentence(comparison)
                + population.map(curves -> " " + PopulationCurves.LEGEND).orElse("");
        double width = plot.frameRight() + Plot.FRAME_RIGHT_ROOM;
        svg.start("svg")
                .attribute("xmlns", "http://www.w3.org/2000/svg")
                .attribute("class", "audiogram")
                .attribute("width", width)
                .attribute("height", height)
                .attribute("viewBox", "0 0 " + SvgWriter.number(width) + " " + SvgWriter.number(height))
                .attribute("preserveAspectRatio", "xMidYMid meet")
                .attribute("role", "img")
                .attribute("aria-label", sentence)
                .attribute("font-size", Pen.FONT_SIZE)
                .attribute("fill", "none");
        if (medium == Medium.PAPER) {
            svg.attribute("alt", sentence).attribute("font-family", "sans-serif");
        }
    }

    private void drawGrid() {
        svg.start("g").attribute("class", "grid").attribute("stroke", medium.ink());
        for (int level = HearingLevel.LOWEST_DB; level <= plot.deepestDb(); level += 10) {
            pen.startLine(Plot.FRAME_LEFT, plot.y(level), plot.frameRight(), plot.y(level))
                    .attribute("class", "level")
                    .attribute("stroke-opacity", level == 0 ? 0.45 : 0.2)
                    .end();
        }
        for (Frequency frequency : Frequency.values()) {
            pen.startLine(plot.x(frequency), Plot.FRAME_TOP, plot.x(frequency), plot.frameBottom());
            if (BETWEEN_OCTAVES.contains(frequency)) {
                svg.attribute("class", "between-octaves")
                        .attribute("stroke-opacity", 0.25)
                        .attribute("stroke-dasharray", "2 3");
            } else {
                svg.attribute("class", "octave").attribute("stroke-opacity", 0.35);
            }
            svg.end();
        }
        svg.start("rect")
                .attribute("x", Plot.FRAME_LEFT)
                .attribute("y", Plot.FRAME_TOP)
                .attribute("width", plot.frameWidth())
                .attribute("height", plot.frameHeight())
                .attribute("stroke-opacity", 0.6)
                .end()
                .end();
    }

    private void drawAxes() {
        svg.start("g").attribute("class", "axes");
        pen.startText(Plot.FRAME_LEFT + plot.frameWidth() / 2, 18, "middle")
                .text(text.frequencyAxis())
                .end();
        for (Frequency frequency : Frequency.values()) {
            pen.startText(plot.x(frequency), Plot.FRAME_TOP - 8, "middle")
                    .attribute("font-size", Pen.FONT_SIZE - 1)
                    .text(Integer.toString(frequency.hertz()))
                    .end();
        }
        for (int level = HearingLevel.LOWEST_DB; level <= plot.deepestDb(); level += 10) {
            pen.startText(Plot.FRAME_LEFT - 8, plot.y(level) + 4, "end")
                    .attribute("font-size", Pen.FONT_SIZE - 1)
                    .text(Integer.toString(level))
                    .end();
        }
        double x = 18;
        double y = Plot.FRAME_TOP + plot.frameHeight() / 2;
        pen.startText(x, y, "middle")
                .attribute("transform", "rotate(-90 " + SvgWriter.number(x) + " " + SvgWriter.number(y) + ")")
                .text(text.levelAxis())
                .end()
                .end();
    }

    private void drawTrace(Trace trace) {
        pen.startTrace("trace", trace.ear(), trace.series());
        Frequency[] frequencies = Frequency.values();
        for (int i = 1; i < frequencies.length; i++) {
            if (trace.isMeasured(frequencies[i - 1]) && trace.isMeasured(frequencies[i])) {
                joinNeighbours(trace, frequencies[i - 1], frequencies[i]);
            }
        }
        List<Frequency> withoutLevel = trace.withoutLevel();
        for (Frequency frequency : frequencies) {
            if (!withoutLevel.contains(frequency)) {
                drawThreshold(trace, frequency);
            }
        }
        svg.end();
    }

    private void drawThreshold(Trace trace, Frequency frequency) {
        startReading("g", trace, frequency);
        trace.level(frequency).ifPresent(level -> {
            pen.symbol(trace.ear(), trace.series(), plot.x(frequency), plot.y(level));
            if (trace.isNoResponse(frequency)) {
                pen.arrow(trace.ear(), trace.series(), plot.x(frequency), plot.y(level));
            }
        });
        svg.end();
    }

    private void joinNeighbours(Trace trace, Frequency lower, Frequency upper) {
        double x1 = plot.x(lower);
        double y1 = plot.y(trace.level(lower).orElseThrow());
        double x2 = plot.x(upper);
        double y2 = plot.y(trace.level(upper).orElseThrow());
        double rim = Pen.rim(trace.ear(), trace.series());
        double length = Math.sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
        double dx = (x2 - x1) / length * rim;
        double dy = (y2 - y1) / length * rim;
        pen.join(trace.ear(), x1 + dx, y1 + dy, x2 - dx, y2 - dy);
    }

    /** Opens an element that stands for one threshold and carries it as data; the caller ends it. */
    private void startReading(String element, Trace trace, Frequency frequency) {
        Threshold threshold = trace.at(frequency);
        svg.start(element)
                .attribute("data-ear", trace.ear().word())
                .attribute("data-series", trace.series().word())
                .attribute("data-hz", Integer.toString(frequency.hertz()))
                .attribute("data-kind", kind(threshold));
        trace.level(frequency).ifPresent(level -> svg.attribute("data-db", Integer.toString(level)));
        svg.attribute("data-words", Words.threshold(threshold));
    }

    private static String kind(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured measured -> "measured";
            case Threshold.NoResponse none -> "no-response";
            case Threshold.NotTested untested -> "not-tested";
        };
    }

    private void tellWithoutLevel(List<Trace> withoutLevel, double top) {
        svg.start("g").attribute("class", "without-level");
        pen.startText(Legend.LEFT, top, "start")
                .text(text.noResponseWithoutLevel())
                .end();
        double y = top;
        for (Trace trace : withoutLevel) {
            y += LINE_HEIGHT;
            pen.startText(Legend.LEFT, y, "start")
                    .text(text.earName(trace.ear())
                            + (trace.series() == Series.BASELINE ? text.ofTheBaseline() : ": "));
            String separator = "";
            for (Frequency frequency : trace.withoutLevel()) {
                svg.text(separator);
                startReading("tspan", trace, frequency);
                svg.text(Integer.toString(frequency.hertz())).end();
                separator = ", ";
            }
            svg.text(" Hz").end();
        }
        svg.end();
    }
}
