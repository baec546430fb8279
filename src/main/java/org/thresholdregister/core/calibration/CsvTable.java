package org.thresholdregister.core.calibration;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** A published table that lies beside the classes: lines of cells, without its heading and its remarks. */
final class CsvTable {

    private CsvTable() {}

    static List<String[]> rows(String name) {
        try (InputStream bytes = Objects.requireNonNull(CsvTable.class.getResourceAsStream(name), name);
                var lines = new BufferedReader(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
            return lines.lines()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
