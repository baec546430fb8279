package org.thresholdregister.benchmark;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;

/** What was measured, as a table in Markdown. */
final class Report {

    private static final String HEADER = """
            | audiograms | judged by | read | judge | write | whole process | peak memory | peak heap | rows | differ |
            |---:|---|---:|---:|---:|---:|---:|---:|---:|---:|
            """;

    private record Line(int audiograms, String contender, Measurement measured, RowComparison comparison) {}

    private final LocalDate day;
    private final String machine;
    private final String loadBefore;
    private final List<Line> lines = new ArrayList<>();

    Report(LocalDate day, String machine, String loadBefore) {
        this.day = day;
        this.machine = machine;
        this.loadBefore = loadBefore;
    }

    /** The first of a size is the one that the others are compared with, its own rows with themselves. */
    void add(int audiograms, String contender, Measurement measured, RowComparison comparison) {
        lines.add(new Line(audiograms, contender, measured, comparison));
    }

    boolean allAgree() {
        return lines.stream().allMatch(line -> line.comparison.differing() == 0);
    }

    String markdown(String loadAfter) {
        StringBuilder text = new StringBuilder("Measured on " + day + ", load " + loadBefore + " before and "
                + loadAfter + " after.\n\n" + machine + ".\n\n" + HEADER);
        lines.forEach(line -> text.append(row(line)));
        text.append('\n');
        lines.stream().map(Line::audiograms).distinct().forEach(size -> text.append(ratios(size)));
        return text.toString();
    }

    private static String row(Line line) {
        Measurement measured = line.measured;
        return String.format(
                Locale.ROOT,
                "| %,d | %s | %s | %s | %s | %s | %s | %s | %,d | %,d |%n",
                line.audiograms,
                line.contender,
                seconds(measured.stages().readSeconds()),
                seconds(measured.stages().judgeSeconds()),
                seconds(measured.stages().writeSeconds()),
                seconds(measured.wholeSeconds()),
                megabytes(measured.peakResidentBytes()),
                megabytes(measured.peakHeapBytes()),
                line.comparison.rows(),
                line.comparison.differing());
    }

    /** The first line of a size beside each of the others. */
    private String ratios(int size) {
        List<Line> ofSize =
                lines.stream().filter(line -> line.audiograms == size).toList();
        Line first = ofSize.getFirst();
        StringBuilder text = new StringBuilder();
        for (Line other : ofSize.subList(1, ofSize.size())) {
            text.append(String.format(
                    Locale.ROOT,
                    "- %,d audiograms: beside %s, %s judges %s; its whole process is %s.%n",
                    size,
                    other.contender,
                    first.contender,
                    speed(other.measured.stages().judgeSeconds()
                            / first.measured.stages().judgeSeconds()),
                    speed(other.measured.wholeSeconds() / first.measured.wholeSeconds())));
        }
        return text.toString();
    }

    private static String speed(double ratio) {
        return ratio < 1
                ? String.format(Locale.ROOT, "%.1f times as slow", 1 / ratio)
                : String.format(Locale.ROOT, "%.1f times as fast", ratio);
    }

    private static String seconds(double seconds) {
        return seconds < 0.01
                ? String.format(Locale.ROOT, "%.2f ms", 1000 * seconds)
                : String.format(Locale.ROOT, seconds < 1 ? "%.3f s" : "%.2f s", seconds);
    }

    private static String megabytes(OptionalLong bytes) {
        return bytes.isPresent() ? String.format(Locale.ROOT, "%,d MB", Math.round(bytes.getAsLong() / 1048576.0)) : "";
    }
}
