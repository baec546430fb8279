package org.thresholdregister.intake;

import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Names the lines that contradict a line. */
final class OtherLines {

    private static final int MOST_NAMED = 10;

    private OtherLines() {}

    /** Like {@code lines 3, 7}: of many lines the first few, the line itself left out. */
    static String names(int line, IntStream lines) {
        int[] others =
                lines.filter(other -> other != line).limit(MOST_NAMED + 1).toArray();
        String names = IntStream.of(others)
                .limit(MOST_NAMED)
                .mapToObj(Integer::toString)
                .collect(Collectors.joining(", "));
        return (others.length == 1 ? "line " : "lines ") + names + (others.length > MOST_NAMED ? " and more" : "");
    }
}
