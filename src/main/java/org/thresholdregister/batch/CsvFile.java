package org.thresholdregister.batch;

import com.opencsv.CSVWriter;
import com.opencsv.ICSVWriter;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** A CSV file for machines: UTF-8 without a byte-order mark, LF line ends, quotes only where they are needed. */
final class CsvFile implements Closeable {

    private final CSVWriter writer;

    CsvFile(Path path, String... header) throws IOException {
        writer = new CSVWriter(
                Files.newBufferedWriter(path, StandardCharsets.UTF_8),
                ICSVWriter.DEFAULT_SEPARATOR,
                ICSVWriter.DEFAULT_QUOTE_CHARACTER,
                ICSVWriter.DEFAULT_QUOTE_CHARACTER,
                "\n");
        write(header);
    }

    void write(String... cells) {
        writer.writeNext(cells, false);
    }

    /** @throws IOException if any row could not be written; the writer keeps its first failure until here */
    @Override
    public void close() throws IOException {
        writer.flush();
        IOException failure = writer.getException();
        writer.close();
        if (failure != null) {
            throw failure;
        }
    }
}
