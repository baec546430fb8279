package org.thresholdregister.reports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.summary.Count;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SummaryRow;

/** The workbook is, byte for byte, what a spreadsheet library makes of the same sheet (Apache POI, in the test tree). */
class SummaryWorkbookTest {

    private static final String[] NAMES = {
        "Fernhollow Süd",
        "Kiln & <Furnace>",
        "]]> \"quoted\" 'so'",
        " blank around ",
        "two\nlines",
        "tab\there",
        "a\u0001b\u001Fc",
        "\uFFFE\uFFFF\uFFFD",
        "\uD83C\uDFED works",
        "lone \uD83C half",
        "\u00A0hard",
        "_x0041_",
        "a & b & c & d & e & f & g & h & i & j & k",
        "<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<<]]>",
        "x".repeat(300),
        Group.NONE,
        Group.ALL
    };

    @Test
    void anEmptySummaryIsTheSame() {
        assertSame(List.of(), List.of());
        assertSame(List.of(), List.of("Of one site only.", "And <another> note & more."));
    }

    @Test
    void everySummaryIsTheSame() {
        Random random = new Random(7);
        for (int round = 0; round < 40; round++) {
            List<String> notes = random.nextBoolean() ? List.of() : List.of(NAMES[random.nextInt(NAMES.length)]);
            assertSame(rows(random, random.nextInt(60)), notes);
        }
    }

    private static List<SummaryRow> rows(Random random, int lines) {
        List<SummaryRow> rows = new ArrayList<>();
        for (int line = 0; line < lines; line++) {
            Group group = new Group(NAMES[random.nextInt(NAMES.length)], NAMES[random.nextInt(NAMES.length)] + line);
            for (Measure measure : Measure.values()) {
                int value = random.nextInt(20) == 0 ? 10_000_000 + random.nextInt(1_000_000_000) : random.nextInt(2000);
                Count count = random.nextInt(10) == 0 ? Count.hidden() : Count.of(value);
                rows.add(new SummaryRow(2000 + line / 4, group, measure, count));
            }
        }
        return rows;
    }

    private static void assertSame(List<SummaryRow> rows, List<String> notes) {
        byte[] workbook = SummaryWorkbook.of(rows, notes);
        byte[] expected = SpreadsheetLibraryWorkbook.of(rows, notes);
        assertThat(parts(workbook)).containsExactlyEntriesOf(parts(expected));
        assertThat(workbook).isEqualTo(expected);
    }

    private static Map<String, String> parts(byte[] workbook) {
        Map<String, String> parts = new LinkedHashMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(workbook))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }
}
