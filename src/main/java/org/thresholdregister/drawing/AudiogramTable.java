package org.thresholdregister.drawing;

import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.Words;

/**
 * The numbers of a drawing as a table, the text alternative beside it: a row for each frequency, a column for each ear
 * and test. An ear without a baseline of its own has no baseline column.
 */
public record AudiogramTable(List<Column> columns, List<Row> rows) {

    /** The heading of the row headings. */
    public static final String FREQUENCY_HEADING = "Frequency, Hz";

    /** What the numbers are in. */
    public static final String UNIT = "dB HL";

    public AudiogramTable {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** One ear of one test. The heading says which, with its date and without the unit. */
    public record Column(Ear ear, Series series, Audiogram test, String heading) {}

    /** The thresholds at one frequency, in the order of the columns. */
    public record Row(Frequency frequency, List<Threshold> thresholds) {
        public Row {
            thresholds = List.copyOf(thresholds);
        }

        /** The cells as written: {@code 25}, {@code >95}, {@code NR}, {@code not tested}. */
        public List<String> cells() {
            return thresholds.stream().map(Words::thresholdCell).toList();
        }
    }

    public static AudiogramTable of(AudiogramComparison comparison) {
        return of(comparison, Language.ENGLISH);
    }

    /** With its headings in another language. */
    public static AudiogramTable of(AudiogramComparison comparison, Language language) {
        var text = new DrawingText(language);
        List<Column> columns = comparison.traces().stream()
                .map(trace -> new Column(trace.ear(), trace.series(), trace.test(), text.seriesName(comparison, trace)))
                .toList();
        List<Row> rows = Arrays.stream(Frequency.values())
                .map(frequency -> new Row(
                        frequency,
                        columns.stream()
                                .map(column -> column.test().threshold(column.ear(), frequency))
                                .toList()))
                .toList();
        return new AudiogramTable(columns, rows);
    }
}
