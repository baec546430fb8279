package org.thresholdregister.benchmark;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Two files of determinations, compared row by row.
 *
 * @param rows how many rows the longer one has, its header not counted
 * @param differing how many rows are not the same, character by character
 * @param examples the first few of those
 */
record RowComparison(int rows, int differing, List<String> examples) {

    private static final int EXAMPLES = 5;

    static RowComparison of(Path expected, Path actual) throws IOException {
        int lines = 0;
        int differing = 0;
        List<String> examples = new ArrayList<>();
        try (BufferedReader expectedLines = Files.newBufferedReader(expected, StandardCharsets.UTF_8);
                BufferedReader actualLines = Files.newBufferedReader(actual, StandardCharsets.UTF_8)) {
            while (true) {
                String one = expectedLines.readLine();
                String other = actualLines.readLine();
                if (one == null && other == null) {
                    return new RowComparison(Math.max(0, lines - 1), differing, examples);
                }
                lines++;
                if (!Objects.equals(one, other)) {
                    differing++;
                    if (examples.size() < EXAMPLES) {
                        examples.add("line " + lines + ": " + one + " / " + other);
                    }
                }
            }
        }
    }
}
