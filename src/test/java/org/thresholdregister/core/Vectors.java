package org.thresholdregister.core;

import com.opencsv.CSVReaderHeaderAware;
import com.opencsv.exceptions.CsvValidationException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;

/** Reads the test vectors and makes audiograms from their short notation. */
public final class Vectors {

    private Vectors() {}

    /** The rows of a file under {@code vectors/}, by column name. */
    public static List<Map<String, String>> rows(String file) {
        List<Map<String, String>> rows = new ArrayList<>();
        try (var lines = new BufferedReader(new InputStreamReader(
                        Objects.requireNonNull(Vectors.class.getResourceAsStream("/vectors/" + file)),
                        StandardCharsets.UTF_8));
                var reader = new CSVReaderHeaderAware(new StringReader(
                        lines.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"))))) {
            for (Map<String, String> row = reader.readMap(); row != null; row = reader.readMap()) {
                rows.add(row);
            }
        } catch (IOException | CsvValidationException e) {
            throw new IllegalStateException(file, e);
        }
        return rows;
    }

    /** An audiogram with these cells at 2000, 3000 and 4000 Hz and 10 dB HL elsewhere. */
    public static Audiogram audiogram(LocalDate date, TestPurpose purpose, List<String> left, List<String> right) {
        Audiogram.Builder builder = new Audiogram.Builder(date, purpose);
        for (Ear ear : Ear.values()) {
            List<String> cells = ear == Ear.LEFT ? left : right;
            for (Frequency frequency : Frequency.values()) {
                int averaged = Frequency.AVERAGED.indexOf(frequency);
                builder.set(ear, frequency, averaged < 0 ? Threshold.measured(10) : threshold(cells.get(averaged)));
            }
        }
        return builder.build();
    }

    public static Audiogram flat(LocalDate date, TestPurpose purpose, int left, int right) {
        return audiogram(
                date, purpose, List.of("" + left, "" + left, "" + left), List.of("" + right, "" + right, "" + right));
    }

    public static TestPurpose purpose(String word) {
        return TestPurpose.valueOf(word.toUpperCase(java.util.Locale.ROOT));
    }

    public static Threshold threshold(String cell) {
        return switch (cell) {
            case "", "-" -> Threshold.notGiven();
            case "DNT" -> Threshold.notTested(Threshold.NotTested.Reason.DID_NOT_TEST);
            case "CNT" -> Threshold.notTested(Threshold.NotTested.Reason.COULD_NOT_TEST);
            case "NR" -> Threshold.noResponse();
            default ->
                cell.startsWith(">")
                        ? Threshold.noResponseAt(Integer.parseInt(cell.substring(1)))
                        : Threshold.measured(Integer.parseInt(cell));
        };
    }
}
