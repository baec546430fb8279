package org.thresholdregister.core.regulation;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads a published table that comes with the program, beside the class that uses it. */
public final class PublishedTable {

    private PublishedTable() {}

    /**
     * The cells of each row, the header row first; lines that begin with {@code #} tell the source and are left out.
     *
     * @param name what a message calls it
     * @throws IllegalStateException where the table is missing
     */
    public static List<String[]> rows(Class<?> user, String resource, String name) {
        try (InputStream stream = user.getResourceAsStream(resource)) {
            if (stream == null) {
                throw new IllegalStateException(name + " is missing from the program");
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            return reader.lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(",", -1))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
