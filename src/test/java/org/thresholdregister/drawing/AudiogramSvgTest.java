package org.thresholdregister.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.thresholdregister.core.audiometry.Ear.LEFT;
import static org.thresholdregister.core.audiometry.Ear.RIGHT;
import static org.thresholdregister.core.audiometry.Frequency.HZ_1000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_2000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_3000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_4000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_500;
import static org.thresholdregister.core.audiometry.Frequency.HZ_6000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_8000;
import static org.thresholdregister.drawing.Drawings.all;
import static org.thresholdregister.drawing.Drawings.baseline;
import static org.thresholdregister.drawing.Drawings.centre;
import static org.thresholdregister.drawing.Drawings.flat;
import static org.thresholdregister.drawing.Drawings.latest;
import static org.thresholdregister.drawing.Drawings.named;
import static org.thresholdregister.drawing.Drawings.number;
import static org.thresholdregister.drawing.Drawings.parse;
import static org.thresholdregister.drawing.Drawings.reading;
import static org.thresholdregister.drawing.Drawings.trace;
import static org.thresholdregister.drawing.Drawings.withClass;
import static org.thresholdregister.drawing.Series.BASELINE;
import static org.thresholdregister.drawing.Series.LATEST;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.drawing.Drawings.Point;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;

class AudiogramSvgTest {

    private static final double HUNDREDTH = 0.011;

    private static final AudiogramComparison USUAL = AudiogramComparison.of(
            latest("10 5 15 25 45 40 30", "10 10 10 20 35 30 20"),
            baseline("5 5 5 10 15 15 10", "10 5 10 10 15 20 15"));

    /** Everything that a test can find, at once. */
    private static final AudiogramComparison AWKWARD = AudiogramComparison.of(
                    latest("-10 5 - 70 >95 NR NR", "-10 10 60 CNT 110 >120 >95"))
            .withBaseline(RIGHT, baseline("NR NR NR NR NR NR 10", "10 5 10 10 15 20 15"))
            .withBaseline(
                    LEFT,
                    Drawings.audiogram(
                            LocalDate.of(2022, 12, 23),
                            TestPurpose.ANNUAL,
                            "5 5 5 10 15 15 10",
                            "20 15 20 30 75 >90 NR"));

    private static Element draw(AudiogramComparison comparison) {
        return parse(AudiogramSvg.forScreen(comparison));
    }

    private static Element draw(Audiogram audiogram) {
        return draw(AudiogramComparison.of(audiogram));
    }

    /** Aspect: ASHA Guidelines for Audiometric Symbols (1990), ISO 8253-1 (from memory). */
    @Test
    void anOctaveIsExactlyAsWideAsTwentyDecibelsAreTall() {
        Element svg = draw(latest("20 40 60 60 60 60 80", "20 40 60 60 60 60 80"));
        for (Ear ear : Ear.values()) {
            Point at500 = centre(reading(svg, ear, LATEST, HZ_500));
            Point at1000 = centre(reading(svg, ear, LATEST, HZ_1000));
            Point at8000 = centre(reading(svg, ear, LATEST, HZ_8000));
            assertThat(at1000.x() - at500.x()).isEqualTo(at1000.y() - at500.y()).isPositive();
            assertThat(at8000.x() - at500.x()).isEqualTo(4 * (at1000.x() - at500.x()));
            assertThat(at8000.y() - at500.y()).isEqualTo(3 * (at1000.y() - at500.y()));
        }
    }

    @Test
    void frequenciesLieByTheirLogarithm() {
        Element svg = draw(flat(Threshold.measured(20)));
        double octave = centre(reading(svg, RIGHT, LATEST, HZ_1000)).x()
                - centre(reading(svg, RIGHT, LATEST, HZ_500)).x();
        for (Frequency frequency : Frequency.values()) {
            double octaves = Math.log(frequency.hertz() / 500.0) / Math.log(2);
            assertThat(centre(reading(svg, RIGHT, LATEST, frequency)).x()
                            - centre(reading(svg, RIGHT, LATEST, HZ_500)).x())
                    .isCloseTo(octaves * octave, within(HUNDREDTH));
        }
    }

    @Test
    void bothEarsAndTheBaselineStandAtTheTruePoint() {
        Element svg = draw(AudiogramComparison.of(
                flat(Threshold.measured(35)), baseline("35 35 35 35 35 35 35", "35 35 35 35 35 35 35")));
        for (Frequency frequency : Frequency.values()) {
            Set<Double> xs = new TreeSet<>();
            Set<Double> ys = new TreeSet<>();
            for (Ear ear : Ear.values()) {
                for (Series series : Series.values()) {
                    xs.add(round(centre(reading(svg, ear, series, frequency)).x()));
                    ys.add(round(centre(reading(svg, ear, series, frequency)).y()));
                }
            }
            assertThat(xs).hasSize(1);
            assertThat(ys).hasSize(1);
        }
    }

    private static double round(double value) {
        return Math.round(value * 10) / 10.0;
    }

    @Test
    void aSymbolStandsOnTheGridLinesOfItsFrequencyAndLevel() {
        Element svg = draw(flat(Threshold.measured(40)));
        List<Double> levels = all(svg, withClass("level")).stream()
                .map(line -> number(line, "y1"))
                .toList();
        List<Double> frequencies = all(svg, named("line")).stream()
                .filter(withClass("octave").or(withClass("between-octaves")))
                .map(line -> number(line, "x1"))
                .toList();
        assertThat(frequencies).hasSize(7);
        for (int i = 0; i < 7; i++) {
            Point point = centre(reading(svg, RIGHT, LATEST, Frequency.values()[i]));
            assertThat(point.x()).isEqualTo(frequencies.get(i));
            // From -10 in steps of 10: 40 dB HL is the sixth.
            assertThat(point.y()).isEqualTo(levels.get(5));
        }
    }

    @Test
    void theDrawingIsNeverStretched() {
        for (AudiogramComparison comparison : List.of(USUAL, AWKWARD)) {
            Element svg = draw(comparison);
            assertThat(svg.getAttribute("viewBox"))
                    .isEqualTo("0 0 " + svg.getAttribute("width") + " " + svg.getAttribute("height"));
            assertThat(svg.getAttribute("preserveAspectRatio")).isEqualTo("xMidYMid meet");
        }
    }

    @Test
    void theLevelAxisGrowsOnlyWhereAValueNeedsIt() {
        assertThat(deepestLabel(flat(Threshold.measured(110)))).isEqualTo(110);
        assertThat(deepestLabel(flat(Threshold.measured(111)))).isEqualTo(120);
        assertThat(deepestLabel(flat(Threshold.noResponseAt(105)))).isEqualTo(110);
        assertThat(deepestLabel(flat(Threshold.noResponseAt(110)))).isEqualTo(120);
        assertThat(deepestLabel(flat(Threshold.noResponse()))).isEqualTo(110);
        Element svg = draw(AudiogramComparison.of(
                flat(Threshold.measured(10)), baseline("10 10 10 10 10 10 115", "10 10 10 10 10 10 10")));
        assertThat(deepestLabel(svg)).isEqualTo(120);
    }

    private static int deepestLabel(Audiogram audiogram) {
        return deepestLabel(draw(audiogram));
    }

    private static int deepestLabel(Element svg) {
        Element axes = all(svg, withClass("axes")).getFirst();
        return all(axes, text -> text.getAttribute("text-anchor").equals("end")).stream()
                .mapToInt(text -> Integer.parseInt(text.getTextContent()))
                .max()
                .orElseThrow();
    }

    @Test
    void noValueAndNoArrowIsEverClipped() {
        for (int level = HearingLevel.LOWEST_DB; level <= HearingLevel.HIGHEST_DB; level++) {
            assertEverythingLiesWithinTheFrame(flat(Threshold.measured(level)), 7 * 2);
            assertEverythingLiesWithinTheFrame(flat(Threshold.noResponseAt(level)), 7 * 2);
        }
    }

    private static void assertEverythingLiesWithinTheFrame(Audiogram both, int symbols) {
        Audiogram asBaseline = Drawings.baseline("0 0 0 0 0 0 0", "0 0 0 0 0 0 0");
        for (Frequency frequency : Frequency.values()) {
            for (Ear ear : Ear.values()) {
                asBaseline = asBaseline.with(ear, frequency, both.threshold(ear, frequency));
            }
        }
        Element svg = draw(AudiogramComparison.of(both, asBaseline));
        Element frame = all(svg, named("rect")).getFirst();
        double left = number(frame, "x");
        double top = number(frame, "y");
        double right = left + number(frame, "width");
        double bottom = top + number(frame, "height");
        int found = 0;
        for (Ear ear : Ear.values()) {
            for (Series series : Series.values()) {
                for (Frequency frequency : Frequency.values()) {
                    for (Point point : outline(reading(svg, ear, series, frequency))) {
                        assertThat(point.x()).isBetween(left, right);
                        assertThat(point.y()).isBetween(top, bottom);
                    }
                    found++;
                }
            }
        }
        assertThat(found).isEqualTo(2 * symbols);
    }

    private static List<Point> outline(Element reading) {
        List<Point> points = new ArrayList<>();
        for (Element shape : all(reading)) {
            switch (shape.getTagName()) {
                case "circle" -> {
                    double r = number(shape, "r");
                    points.add(new Point(number(shape, "cx") - r, number(shape, "cy") - r));
                    points.add(new Point(number(shape, "cx") + r, number(shape, "cy") + r));
                }
                case "line" -> {
                    points.add(new Point(number(shape, "x1"), number(shape, "y1")));
                    points.add(new Point(number(shape, "x2"), number(shape, "y2")));
                }
                case "polyline" -> {
                    String[] numbers = shape.getAttribute("points").split(" ");
                    for (int i = 0; i < numbers.length; i += 2) {
                        points.add(new Point(Double.parseDouble(numbers[i]), Double.parseDouble(numbers[i + 1])));
                    }
                }
                default -> throw new AssertionError("unexpected " + shape.getTagName());
            }
        }
        assertThat(points).isNotEmpty();
        return points;
    }

    /** Symbols: 21 NCAC 22I .0111; colours: ASHA (1990), from memory. */
    @Test
    void theRightEarIsARedCircleAndTheLeftEarABlueCross() {
        for (String svgText : List.of(AudiogramSvg.forScreen(USUAL), AudiogramSvg.forPaper(USUAL))) {
            Element svg = parse(svgText);
            for (Series series : Series.values()) {
                assertThat(trace(svg, RIGHT, series).getAttribute("stroke")).contains("#B00020");
                assertThat(trace(svg, LEFT, series).getAttribute("stroke")).contains("#0B4FB3");
                for (Frequency frequency : Frequency.values()) {
                    assertThat(all(reading(svg, RIGHT, series, frequency)))
                            .extracting(Element::getTagName)
                            .containsExactly("circle");
                    assertThat(all(reading(svg, LEFT, series, frequency)))
                            .extracting(element -> element.getAttribute("class"))
                            .containsExactly("cross", "cross");
                }
            }
        }
    }

    /** Source: 21 NCAC 22I .0111; the angle of 45 degrees from memory. */
    @Test
    void aNoResponseArrowPointsDownAndAwayFromTheOtherEar() {
        Element svg = draw(flat(Threshold.noResponseAt(95)));
        for (Frequency frequency : Frequency.values()) {
            Element right = all(reading(svg, RIGHT, LATEST, frequency), withClass("arrow"))
                    .getFirst();
            double rightRun = number(right, "x2") - number(right, "x1");
            double rightFall = number(right, "y2") - number(right, "y1");
            assertThat(rightRun).isNegative();
            assertThat(rightFall).isPositive().isCloseTo(-rightRun, within(2 * HUNDREDTH));

            Element left = all(reading(svg, LEFT, LATEST, frequency), withClass("arrow"))
                    .getFirst();
            double leftRun = number(left, "x2") - number(left, "x1");
            double leftFall = number(left, "y2") - number(left, "y1");
            assertThat(leftRun).isPositive();
            assertThat(leftFall).isPositive().isCloseTo(leftRun, within(2 * HUNDREDTH));
        }
    }

    @Test
    void aNoResponseSymbolStandsAtTheLimitThatWasTried() {
        Element none = draw(flat(Threshold.noResponseAt(95)));
        Element measured = draw(flat(Threshold.measured(95)));
        for (Ear ear : Ear.values()) {
            assertThat(centre(reading(none, ear, LATEST, HZ_4000)))
                    .isEqualTo(centre(reading(measured, ear, LATEST, HZ_4000)));
            assertThat(all(reading(measured, ear, LATEST, HZ_4000), withClass("arrow")))
                    .isEmpty();
        }
    }

    /** Source: ASHA Guidelines for Audiometric Symbols (1990), from memory. */
    @Test
    void linesJoinNeighboursOnlyWhereBothWereMeasured() {
        assertThat(joins(latest("10 10 10 10 10 10 10", "10 10 10 10 10 10 10"), RIGHT))
                .isEqualTo(6);
        assertThat(joins(latest("10 10 10 - 10 10 10", "10 10 10 10 10 10 10"), RIGHT))
                .isEqualTo(4);
        assertThat(joins(latest("10 10 10 10 >90 10 10", "10 10 10 10 10 10 10"), RIGHT))
                .isEqualTo(4);
        assertThat(joins(latest("10 10 10 10 10 10 NR", "10 10 10 10 10 10 10"), RIGHT))
                .isEqualTo(5);
        assertThat(joins(latest("10 10 10 10 10 10 10", "10 CNT 10 CNT 10 CNT 10"), LEFT))
                .isZero();
    }

    private static int joins(Audiogram audiogram, Ear ear) {
        return all(trace(draw(audiogram), ear, LATEST), withClass("join")).size();
    }

    @Test
    void aLineRunsFromTheOneSymbolToTheOther() {
        Element svg = draw(USUAL);
        Element cross = all(trace(svg, LEFT, LATEST), withClass("join")).get(2);
        Point from = centre(reading(svg, LEFT, LATEST, HZ_2000));
        Point to = centre(reading(svg, LEFT, LATEST, HZ_3000));
        assertThat(number(cross, "x1")).isCloseTo(from.x(), within(HUNDREDTH));
        assertThat(number(cross, "y1")).isCloseTo(from.y(), within(HUNDREDTH));
        assertThat(number(cross, "x2")).isCloseTo(to.x(), within(HUNDREDTH));
        assertThat(number(cross, "y2")).isCloseTo(to.y(), within(HUNDREDTH));

        // A circle is left open: its line ends at the rim.
        Element circle = all(trace(svg, RIGHT, LATEST), withClass("join")).get(2);
        Point middle = centre(reading(svg, RIGHT, LATEST, HZ_2000));
        double radius = number(all(reading(svg, RIGHT, LATEST, HZ_2000)).getFirst(), "r");
        assertThat(Math.hypot(number(circle, "x1") - middle.x(), number(circle, "y1") - middle.y()))
                .isCloseTo(radius, within(2 * HUNDREDTH));
    }

    @Test
    void theRightEarsLinesAreSolidAndTheLeftEarsDashed() {
        Element svg = draw(USUAL);
        for (Series series : Series.values()) {
            assertThat(all(trace(svg, RIGHT, series), withClass("join")))
                    .hasSize(6)
                    .noneMatch(line -> line.hasAttribute("stroke-dasharray"));
            assertThat(all(trace(svg, LEFT, series), withClass("join")))
                    .hasSize(6)
                    .allMatch(line -> line.hasAttribute("stroke-dasharray"));
        }
    }

    @Test
    void theBaselineIsFainterAndThinnerInTheSameColour() {
        Element svg = draw(USUAL);
        for (Ear ear : Ear.values()) {
            Element faint = trace(svg, ear, BASELINE);
            Element strong = trace(svg, ear, LATEST);
            assertThat(faint.getAttribute("stroke")).isEqualTo(strong.getAttribute("stroke"));
            assertThat(number(faint, "stroke-width")).isLessThan(number(strong, "stroke-width"));
            assertThat(number(faint, "opacity")).isLessThan(1);
            assertThat(strong.hasAttribute("opacity")).isFalse();
        }
    }

    /** WCAG 2.2, 1.4.11: 3 to 1 for what a drawing is understood by; formula of relative luminance as published there. */
    @Test
    void evenTheBaselineStandsOutOnWhitePaper() {
        Element svg = parse(AudiogramSvg.forPaper(USUAL));
        for (Ear ear : Ear.values()) {
            int colour = Integer.parseInt(
                    trace(svg, ear, LATEST).getAttribute("stroke").substring(1), 16);
            assertThat(contrastOnWhite(colour, 1)).isGreaterThan(7);
            assertThat(contrastOnWhite(colour, number(trace(svg, ear, BASELINE), "opacity")))
                    .isGreaterThan(3);
        }
    }

    private static double contrastOnWhite(int colour, double opacity) {
        double luminance = 0;
        double[] weights = {0.2126, 0.7152, 0.0722};
        for (int i = 0; i < 3; i++) {
            double channel = ((colour >> 8 * (2 - i) & 0xFF) * opacity + 255 * (1 - opacity)) / 255;
            luminance += weights[i] * (channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4));
        }
        return 1.05 / (luminance + 0.05);
    }

    @Test
    void eachEarMayHaveAnotherBaselineOrNone() {
        Element different = draw(AWKWARD);
        assertThat(legend(different))
                .contains(
                        "Right ear, 9 Mar 2026",
                        "Right ear, baseline 3 Feb 2020",
                        "Left ear, 9 Mar 2026",
                        "Left ear, baseline 23 Dec 2022");
        assertThat(reading(different, LEFT, BASELINE, HZ_4000).getAttribute("data-db"))
                .isEqualTo("75");

        Element one = draw(AudiogramComparison.of(latest("10 10 10 10 10 10 10", "10 10 10 10 10 10 10"))
                .withBaseline(LEFT, baseline("5 5 5 5 5 5 5", "0 0 0 0 0 0 0")));
        assertThat(all(one, withClass("trace")))
                .extracting(trace -> trace.getAttribute("class"))
                .containsExactlyInAnyOrder("trace right latest", "trace left latest", "trace left baseline");
    }

    @Test
    void aTestThatIsTheBaselineItselfIsDrawnOnce() {
        Audiogram first = baseline("5 5 5 5 5 5 5", "0 0 0 0 0 0 0");
        Element svg = draw(AudiogramComparison.of(first, first));
        assertThat(all(svg, withClass("trace"))).hasSize(2);
        assertThat(legend(svg)).containsExactly("Right ear, baseline 3 Feb 2020", "Left ear, baseline 3 Feb 2020");
        assertThat(svg.getAttribute("aria-label")).contains("this is the baseline");
    }

    @Test
    void theLegendTellsOfArrowsOnlyWhereThereAreAny() {
        assertThat(legend(draw(USUAL))).noneMatch(words -> words.contains("no response"));
        assertThat(legend(draw(AWKWARD))).contains("Right ear, no response", "Left ear, no response");
    }

    private static List<String> legend(Element svg) {
        return all(all(svg, withClass("legend")).getFirst(), named("text")).stream()
                .map(Element::getTextContent)
                .toList();
    }

    @Test
    void noResponseWithoutALevelIsToldInWordsAndDrawnNowhere() {
        Element svg = draw(AWKWARD);
        for (Frequency frequency : List.of(HZ_6000, HZ_8000)) {
            Element told = reading(svg, RIGHT, LATEST, frequency);
            assertThat(told.getTagName()).isEqualTo("tspan");
            assertThat(told.getAttribute("data-kind")).isEqualTo("no-response");
            assertThat(told.hasAttribute("data-db")).isFalse();
        }
        assertThat(all(trace(svg, RIGHT, LATEST), named("circle"))).hasSize(4);
        List<String> words = all(all(svg, withClass("without-level")).getFirst(), named("text")).stream()
                .map(Element::getTextContent)
                .toList();
        assertThat(words)
                .containsExactly(
                        "No response, level not given (so not drawn):",
                        "Right ear: 6000, 8000 Hz",
                        "Right ear, baseline: 500, 1000, 2000, 3000, 4000, 6000 Hz",
                        "Left ear, baseline: 8000 Hz");
        Element frame = all(svg, named("rect")).getFirst();
        double bottom = number(frame, "y") + number(frame, "height");
        assertThat(all(all(svg, withClass("without-level")).getFirst(), named("text")))
                .allMatch(text -> number(text, "y") > bottom);
        assertThat(all(draw(USUAL), withClass("without-level"))).isEmpty();
    }

    @Test
    void textBeneathThePlotStaysWithinTheDrawing() {
        for (AudiogramComparison comparison : List.of(USUAL, AWKWARD)) {
            Element svg = draw(comparison);
            double height = number(svg, "height");
            assertThat(all(svg, named("text"))).isNotEmpty().allMatch(text -> number(text, "y") < height - 4);
        }
    }

    @Test
    void everyThresholdIsCarriedAsData() {
        Element svg = draw(AWKWARD);
        int count = 0;
        for (Ear ear : Ear.values()) {
            for (Series series : Series.values()) {
                for (Frequency frequency : Frequency.values()) {
                    assertThat(reading(svg, ear, series, frequency).getAttribute("data-words"))
                            .isNotEmpty();
                    count++;
                }
            }
        }
        assertThat(all(svg, element -> element.hasAttribute("data-ear"))).hasSize(count);
        assertReading(svg, LEFT, HZ_4000, "measured", "110", "110 dB HL");
        assertReading(svg, RIGHT, HZ_4000, "no-response", "95", "no response at 95 dB HL");
        assertReading(svg, RIGHT, HZ_6000, "no-response", "", "no response, level not given");
        assertReading(svg, RIGHT, HZ_2000, "not-tested", "", "not tested");
        assertReading(svg, LEFT, HZ_3000, "not-tested", "", "could not be tested");
    }

    private static void assertReading(
            Element svg, Ear ear, Frequency frequency, String kind, String level, String words) {
        Element reading = reading(svg, ear, LATEST, frequency);
        assertThat(reading.getAttribute("data-kind")).isEqualTo(kind);
        assertThat(reading.getAttribute("data-db")).isEqualTo(level);
        assertThat(reading.getAttribute("data-words")).isEqualTo(words);
    }

    @Test
    void axesAreNamedWithTheirUnits() {
        List<String> words = all(all(draw(USUAL), withClass("axes")).getFirst(), named("text")).stream()
                .map(Element::getTextContent)
                .toList();
        assertThat(words)
                .contains("Frequency, Hz", "Hearing level, dB HL")
                .contains("500", "1000", "2000", "3000", "4000", "6000", "8000")
                .contains("-10", "0", "110")
                .doesNotContain("120");
    }

    @Test
    void octaveLinesAreSolidAndTheOthersLighter() {
        Element svg = draw(USUAL);
        assertThat(all(svg, withClass("octave"))).hasSize(5).noneMatch(line -> line.hasAttribute("stroke-dasharray"));
        assertThat(all(svg, withClass("between-octaves")))
                .hasSize(2)
                .allMatch(line -> number(line, "stroke-opacity") < 0.3 && line.hasAttribute("stroke-dasharray"));
    }

    @Test
    void theLabelGivesTheLevelsThatDecide() {
        Element svg = draw(USUAL);
        assertThat(svg.getAttribute("role")).isEqualTo("img");
        assertThat(svg.getAttribute("aria-label"))
                .isEqualTo("Audiogram of 9 Mar 2026, annual test."
                        + " Right ear, compared with the baseline of 3 Feb 2020: 2000 Hz 15 dB HL, baseline 5 dB HL;"
                        + " 3000 Hz 25 dB HL, baseline 10 dB HL; 4000 Hz 45 dB HL, baseline 15 dB HL."
                        + " Left ear, compared with the baseline of 3 Feb 2020: 2000 Hz 10 dB HL, baseline 10 dB HL;"
                        + " 3000 Hz 20 dB HL, baseline 10 dB HL; 4000 Hz 35 dB HL, baseline 15 dB HL.")
                .isEqualTo(AudiogramSvg.sentence(USUAL));
    }

    @Test
    void theLabelListsWhatHasNoLevel() {
        assertThat(AudiogramSvg.sentence(AWKWARD))
                .contains("4000 Hz no response at 95 dB HL, baseline no response, level not given")
                .contains("Right ear, 9 Mar 2026, no response, level not given: 6000, 8000 Hz.")
                .contains("Left ear, baseline 23 Dec 2022, no response, level not given: 8000 Hz.");
    }

    @Test
    void aTestByItselfSpeaksOfNoBaseline() {
        String svg = AudiogramSvg.forScreen(AudiogramComparison.of(flat(Threshold.measured(20))));
        assertThat(svg).contains("4000 Hz 20 dB HL").doesNotContain("baseline");
    }

    @Test
    void theDrawingCarriesNoScriptNoStyleAndNoReference() {
        for (String text : List.of(AudiogramSvg.forScreen(AWKWARD), AudiogramSvg.forPaper(AWKWARD))) {
            Element svg = parse(text);
            assertThat(svg.getNamespaceURI()).isEqualTo("http://www.w3.org/2000/svg");
            for (Element element : all(svg)) {
                assertThat(element.getTagName()).isIn("g", "line", "rect", "circle", "polyline", "text", "tspan");
                NamedNodeMap attributes = element.getAttributes();
                for (int i = 0; i < attributes.getLength(); i++) {
                    assertThat(attributes.item(i).getNodeName())
                            .isNotIn("style", "href", "xlink:href", "id")
                            .doesNotStartWith("on");
                    assertThat(attributes.item(i).getNodeValue()).doesNotContain("url(");
                }
            }
        }
    }

    @Test
    void paperHasFixedColoursAndAnAltTextWhereAScreenTakesThePages() {
        String paper = AudiogramSvg.forPaper(USUAL);
        assertThat(paper).doesNotContain("var(").doesNotContain("currentColor");
        assertThat(parse(paper).getAttribute("alt")).isEqualTo(AudiogramSvg.sentence(USUAL));
        assertThat(parse(paper).getAttribute("font-family")).isEqualTo("sans-serif");

        String screen = AudiogramSvg.forScreen(USUAL);
        assertThat(screen).contains("var(--tr-ear-right, #B00020)", "var(--tr-ear-left, #0B4FB3)", "currentColor");
        assertThat(parse(screen).hasAttribute("alt")).isFalse();
        assertThat(parse(screen).hasAttribute("font-family")).isFalse();
    }

    @Test
    void theSameInputGivesTheSameBytesInAnyLocale() {
        Locale before = Locale.getDefault();
        String expected = AudiogramSvg.forScreen(AWKWARD);
        try {
            for (String tag : List.of("de-DE", "ar-EG", "es-MX", "tr-TR")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(AudiogramSvg.forScreen(AWKWARD)).isEqualTo(expected);
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
