package org.thresholdregister.drawing;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Invented audiograms, and drawings read back as XML. */
final class Drawings {

    static final LocalDate BASELINE_DAY = LocalDate.of(2020, 2, 3);
    static final LocalDate LATEST_DAY = LocalDate.of(2026, 3, 9);

    private Drawings() {}

    static Audiogram latest(String right, String left) {
        return audiogram(LATEST_DAY, TestPurpose.ANNUAL, right, left);
    }

    static Audiogram baseline(String right, String left) {
        return audiogram(BASELINE_DAY, TestPurpose.BASELINE, right, left);
    }

    /** Seven thresholds for each ear as the audiogram file writes them, {@code -} for blank. */
    static Audiogram audiogram(LocalDate day, TestPurpose purpose, String right, String left) {
        var builder = new Audiogram.Builder(day, purpose);
        set(builder, Ear.RIGHT, right.split(" "));
        set(builder, Ear.LEFT, left.split(" "));
        return builder.build();
    }

    /** The same threshold everywhere. */
    static Audiogram flat(Threshold threshold) {
        var builder = new Audiogram.Builder(LATEST_DAY, TestPurpose.ANNUAL);
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(ear, frequency, threshold);
            }
        }
        return builder.build();
    }

    private static void set(Audiogram.Builder builder, Ear ear, String[] cells) {
        Frequency[] frequencies = Frequency.values();
        if (cells.length != frequencies.length) {
            throw new IllegalArgumentException("needs " + frequencies.length + " cells: " + Arrays.toString(cells));
        }
        for (int i = 0; i < cells.length; i++) {
            builder.set(ear, frequencies[i], threshold(cells[i]));
        }
    }

    private static Threshold threshold(String cell) {
        return switch (cell) {
            case "-" -> Threshold.notGiven();
            case "NR" -> Threshold.noResponse();
            case "CNT" -> Threshold.notTested(Threshold.NotTested.Reason.COULD_NOT_TEST);
            default ->
                cell.startsWith(">")
                        ? Threshold.noResponseAt(Integer.parseInt(cell.substring(1)))
                        : Threshold.measured(Integer.parseInt(cell));
        };
    }

    static Element parse(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(svg))).getDocumentElement();
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    static List<Element> all(Element root) {
        List<Element> found = new ArrayList<>();
        NodeList nodes = root.getElementsByTagName("*");
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    static List<Element> all(Element root, Predicate<Element> wanted) {
        return all(root).stream().filter(wanted).toList();
    }

    static Predicate<Element> withClass(String... names) {
        return element -> List.of(element.getAttribute("class").split(" ")).containsAll(List.of(names));
    }

    static Predicate<Element> named(String name) {
        return element -> element.getTagName().equals(name);
    }

    /** The element that stands for one threshold. */
    static Element reading(Element svg, Ear ear, Series series, Frequency frequency) {
        List<Element> found = all(
                svg,
                element -> element.getAttribute("data-ear").equals(ear.word())
                        && element.getAttribute("data-series").equals(series.word())
                        && element.getAttribute("data-hz").equals(Integer.toString(frequency.hertz())));
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " elements for " + ear + " " + series + " " + frequency);
        }
        return found.getFirst();
    }

    /** The group of one ear and series in the plot. */
    static Element trace(Element svg, Ear ear, Series series) {
        List<Element> found = all(svg, withClass("trace", ear.word(), series.word()));
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " traces for " + ear + " " + series);
        }
        return found.getFirst();
    }

    record Point(double x, double y) {}

    /** The middle of a drawn symbol: a circle's centre, or the middle of a cross's first stroke. */
    static Point centre(Element reading) {
        return all(reading, named("circle")).stream()
                .findFirst()
                .map(circle -> new Point(number(circle, "cx"), number(circle, "cy")))
                .orElseGet(() -> {
                    Element stroke = all(reading, withClass("cross")).getFirst();
                    return new Point(
                            (number(stroke, "x1") + number(stroke, "x2")) / 2,
                            (number(stroke, "y1") + number(stroke, "y2")) / 2);
                });
    }

    static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
