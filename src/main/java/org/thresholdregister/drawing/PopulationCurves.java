package org.thresholdregister.drawing;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.population.Estimate;
import org.thresholdregister.core.population.PopulationComparison;

/**
 * What a population would hear, drawn behind an audiogram in the ink of the grid: the median solid, the best and the
 * worst tenth dotted. A curve has a gap where the model says nothing.
 */
public record PopulationCurves(List<Curve> curves) {

    /** What the curves are, in words. */
    static final String LEGEND =
            "Grey lines: solid, half of the population hear worse; dotted, nine in ten and one in ten.";

    public PopulationCurves {
        curves = List.copyOf(curves);
    }

    /** Levels in dB by frequency, as far as there are any. */
    record Curve(String cssClass, boolean isDotted, Map<Frequency, Double> levels) {
        Curve {
            levels = Map.copyOf(levels);
        }
    }

    public static PopulationCurves of(PopulationComparison comparison) {
        Map<Frequency, Double> best = new EnumMap<>(Frequency.class);
        Map<Frequency, Double> median = new EnumMap<>(Frequency.class);
        Map<Frequency, Double> worst = new EnumMap<>(Frequency.class);
        for (PopulationComparison.Point point : comparison.points()) {
            put(best, point.frequency(), point.bestTenth());
            put(median, point.frequency(), point.median());
            put(worst, point.frequency(), point.worstTenth());
        }
        return new PopulationCurves(List.of(
                new Curve("best-tenth", true, best),
                new Curve("median", false, median),
                new Curve("worst-tenth", true, worst)));
    }

    private static void put(Map<Frequency, Double> curve, Frequency frequency, Estimate<Double> estimate) {
        if (estimate instanceof Estimate.Within<Double> within) {
            curve.put(frequency, within.value());
        }
    }

    void draw(SvgWriter svg, Pen pen, Plot plot, Medium medium) {
        svg.start("g")
                .attribute("class", "population")
                .attribute("stroke", medium.ink())
                .attribute("stroke-opacity", 0.65)
                .attribute("stroke-width", 1.5);
        Frequency[] frequencies = Frequency.values();
        for (Curve curve : curves) {
            for (int i = 1; i < frequencies.length; i++) {
                Double from = curve.levels.get(frequencies[i - 1]);
                Double to = curve.levels.get(frequencies[i]);
                if (from != null && to != null) {
                    pen.startLine(plot.x(frequencies[i - 1]), plot.y(from), plot.x(frequencies[i]), plot.y(to))
                            .attribute("class", curve.cssClass);
                    if (curve.isDotted) {
                        svg.attribute("stroke-dasharray", "1.5 3.5");
                    }
                    svg.end();
                }
            }
        }
        svg.end();
    }
}
