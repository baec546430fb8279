package org.thresholdregister.drawing;

import java.util.List;
import org.thresholdregister.core.audiometry.Ear;

/**
 * Says which line is which, right ear on the left side and left ear on the right, and what an arrow means where there
 * is one.
 */
final class Legend {

    static final double LEFT = 14;

    private static final double COLUMN = 230;
    private static final double SAMPLE = 30;
    private static final double FONT_SIZE = Pen.FONT_SIZE - 1;
    private static final double LINE_HEIGHT = 22;
    private static final double ROOM_BELOW = 18;

    private final DrawingText text;
    private final List<Trace> traces;
    private final AudiogramComparison comparison;
    private final boolean hasBaseline;
    private final boolean hasArrow;

    Legend(AudiogramComparison comparison, List<Trace> traces, DrawingText text) {
        this.text = text;
        this.comparison = comparison;
        this.traces = traces;
        this.hasBaseline = traces.stream().anyMatch(trace -> trace.series() == Series.BASELINE);
        this.hasArrow = traces.stream().anyMatch(Trace::hasArrow);
    }

    /** From the first line of text to the lower end of the drawing. */
    double height() {
        return rows() * LINE_HEIGHT + ROOM_BELOW;
    }

    /** The lines of text below the first. */
    private int rows() {
        return (hasBaseline ? 1 : 0) + (hasArrow ? 1 : 0);
    }

    void draw(SvgWriter svg, Pen pen, double top) {
        svg.start("g").attribute("class", "legend").attribute("font-size", FONT_SIZE);
        for (Trace trace : traces) {
            double y = trace.series() == Series.LATEST ? top : top + LINE_HEIGHT;
            double middle = left(trace.ear()) + SAMPLE / 2;
            double rim = Pen.rim(trace.ear(), trace.series());
            pen.startTrace("sample", trace.ear(), trace.series());
            pen.join(trace.ear(), left(trace.ear()), y - 4, middle - rim, y - 4);
            pen.join(trace.ear(), middle + rim, y - 4, left(trace.ear()) + SAMPLE, y - 4);
            pen.symbol(trace.ear(), trace.series(), middle, y - 4);
            svg.end();
            words(pen, trace.ear(), y, text.seriesName(comparison, trace));
        }
        if (hasArrow) {
            for (Ear ear : AudiogramComparison.EARS) {
                double y = top + rows() * LINE_HEIGHT;
                double middle = left(ear) + SAMPLE / 2;
                pen.startTrace("sample", ear, Series.LATEST);
                pen.symbol(ear, Series.LATEST, middle, y - 5);
                pen.arrow(ear, Series.LATEST, middle, y - 5);
                svg.end();
                words(pen, ear, y, text.earName(ear) + ", " + text.noResponse());
            }
        }
        svg.end();
    }

    private static void words(Pen pen, Ear ear, double y, String words) {
        pen.startText(left(ear) + SAMPLE + 6, y, "start").text(words).end();
    }

    private static double left(Ear ear) {
        return ear == Ear.RIGHT ? LEFT : LEFT + COLUMN;
    }
}
