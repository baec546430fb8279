package org.thresholdregister.drawing;

import org.thresholdregister.core.audiometry.Ear;

/** Draws lines, symbols and text in the manner of one medium. */
final class Pen {

    static final double FONT_SIZE = 12;

    private static final double LATEST_SYMBOL = 6.5;

    /** Larger and thinner than the latest test's, so that it still shows around one at the same point. */
    private static final double BASELINE_SYMBOL = 9;

    /** By how much a cross reaches less far to the side than a circle, for both to look of one size. */
    private static final double CROSS_INSET = 1;

    private static final double ARROW_REACH = 11;
    private static final double ARROW_HEAD = 6;
    private static final double LATEST_STROKE = 2.2;
    private static final double BASELINE_STROKE = 1.3;

    /** Keeps the baseline at 3 to 1 or better against white and against a dark page (WCAG 2.2, 1.4.11). */
    private static final double BASELINE_OPACITY = 0.65;

    private final SvgWriter svg;
    private final Medium medium;

    Pen(SvgWriter svg, Medium medium) {
        this.svg = svg;
        this.medium = medium;
    }

    /** Opens a group in the ear's colour and the series' strength. */
    void startTrace(String cssClass, Ear ear, Series series) {
        svg.start("g")
                .attribute("class", cssClass + " " + ear.word() + " " + series.word())
                .attribute("stroke", medium.colour(ear))
                .attribute("stroke-width", series == Series.LATEST ? LATEST_STROKE : BASELINE_STROKE);
        if (series == Series.BASELINE) {
            svg.attribute("opacity", BASELINE_OPACITY);
        }
    }

    /** Opens a line; the caller may add to it and ends it. */
    SvgWriter startLine(double x1, double y1, double x2, double y2) {
        return svg.start("line")
                .attribute("x1", x1)
                .attribute("y1", y1)
                .attribute("x2", x2)
                .attribute("y2", y2);
    }

    /** A line of the ear's trace: solid for the right ear, dashed for the left. */
    void join(Ear ear, double x1, double y1, double x2, double y2) {
        startLine(x1, y1, x2, y2).attribute("class", "join");
        if (ear == Ear.LEFT) {
            svg.attribute("stroke-dasharray", "7 4");
        }
        svg.end();
    }

    /** How far a symbol reaches from its point, and where a line to it ends: a circle stays open, a cross does not. */
    static double rim(Ear ear, Series series) {
        return ear == Ear.RIGHT ? radius(series) : 0;
    }

    private static double radius(Series series) {
        return series == Series.LATEST ? LATEST_SYMBOL : BASELINE_SYMBOL;
    }

    void symbol(Ear ear, Series series, double x, double y) {
        if (ear == Ear.RIGHT) {
            svg.start("circle")
                    .attribute("cx", x)
                    .attribute("cy", y)
                    .attribute("r", radius(series))
                    .end();
        } else {
            double arm = radius(series) - CROSS_INSET;
            startLine(x - arm, y - arm, x + arm, y + arm)
                    .attribute("class", "cross")
                    .end();
            startLine(x - arm, y + arm, x + arm, y - arm)
                    .attribute("class", "cross")
                    .end();
        }
    }

    /** From the symbol's rim downward: to the left for the right ear, to the right for the left ear. */
    void arrow(Ear ear, Series series, double x, double y) {
        double side = ear == Ear.RIGHT ? -1 : 1;
        double start = ear == Ear.RIGHT ? radius(series) * Math.sqrt(0.5) : radius(series) - CROSS_INSET;
        double tipX = x + side * (start + ARROW_REACH);
        double tipY = y + start + ARROW_REACH;
        startLine(x + side * start, y + start, tipX, tipY)
                .attribute("class", "arrow")
                .end();
        svg.start("polyline")
                .attribute("class", "arrow-head")
                .attribute("points", points(tipX - side * ARROW_HEAD, tipY, tipX, tipY, tipX, tipY - ARROW_HEAD))
                .end();
    }

    private static String points(double... coordinates) {
        StringBuilder points = new StringBuilder();
        for (double coordinate : coordinates) {
            points.append(points.isEmpty() ? "" : " ").append(SvgWriter.number(coordinate));
        }
        return points.toString();
    }

    /** Opens a text that is anchored at its start, middle or end; the caller fills and ends it. */
    SvgWriter startText(double x, double y, String anchor) {
        return svg.start("text")
                .attribute("x", x)
                .attribute("y", y)
                .attribute("text-anchor", anchor)
                .attribute("fill", medium.ink());
    }
}
