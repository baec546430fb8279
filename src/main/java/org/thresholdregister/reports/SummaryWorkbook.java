package org.thresholdregister.reports;

import java.io.ByteArrayOutputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.thresholdregister.core.summary.Count;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SummaryLine;
import org.thresholdregister.core.summary.SummaryRow;
import org.thresholdregister.core.wording.SummaryWords;
import org.thresholdregister.core.wording.Words;

/**
 * The summary as a workbook for a person to read and print: one row for each year, site and department, one column for
 * each measure, totals in bold, and below what each column counts. It names no worker. The same rows and notes always
 * give the same bytes: it carries no clock time.
 *
 * <p>The parts of the package that never change (styles, types, relations) lie beside this class; the sheet and its
 * texts are put together here, since a library takes longer to load for this one sheet than a million tests to judge.
 */
public final class SummaryWorkbook {

    private static final String TITLE = "Hearing-test summary by year, site and department";
    private static final String HOW_COUNTED =
            "Counts of tests by the year of the test. One person with both ears on one date is one shift and one case.";
    private static final int LABELS = 3;

    /** Three lines of the longest title; a reader does not always work the height out. */
    private static final int HEADER_POINTS = 42;

    /** The looks that a cell may have, as {@code styles.xml} lists them. */
    private enum Style {
        DEFAULT,
        TITLE,
        SENTENCE,
        LABEL_HEADER,
        COUNT_HEADER,
        LABEL,
        COUNT,
        TOTAL_LABEL,
        TOTAL
    }

    private static final LocalDateTime ZIP_EPOCH = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final SheetXml sheet = new SheetXml();
    private final List<String> titles = titles();
    private int headerRow;
    private int lastLine;

    private SummaryWorkbook() {}

    /** The bytes of an {@code .xlsx} file. */
    public static byte[] of(List<SummaryRow> rows) {
        return of(rows, List.of());
    }

    /**
     * The bytes of an {@code .xlsx} file.
     *
     * @param notes sentences that stand above the table
     */
    public static byte[] of(List<SummaryRow> rows, List<String> notes) {
        SummaryWorkbook workbook = new SummaryWorkbook();
        workbook.fill(rows, notes);
        return workbook.zipped();
    }

    private void fill(List<SummaryRow> rows, List<String> notes) {
        int next = 0;
        sentence(next++, TITLE, Style.TITLE);
        for (String note : notes) {
            sentence(next++, note, Style.SENTENCE);
        }
        sentence(next++, HOW_COUNTED, Style.SENTENCE);
        headerRow = next + 1;
        sheet.beginRow(headerRow, HEADER_POINTS);
        for (int column = 0; column < titles.size(); column++) {
            text(titles.get(column), column < LABELS ? Style.LABEL_HEADER : Style.COUNT_HEADER);
        }
        next = headerRow + 1;
        for (SummaryLine line : SummaryLine.of(rows)) {
            sheet.beginRow(next++);
            fill(line);
        }
        lastLine = next - 1;
        next++;
        for (String line : explanations(rows)) {
            sentence(next++, line, Style.SENTENCE);
        }
    }

    private static List<String> titles() {
        List<String> titles = new ArrayList<>(List.of("Year", "Site", "Department"));
        for (Measure measure : Measure.values()) {
            titles.add(measure.title());
        }
        return titles;
    }

    private void fill(SummaryLine line) {
        Group group = line.group();
        Style style = group.isTotal() ? Style.TOTAL : Style.COUNT;
        Style label = group.isTotal() ? Style.TOTAL_LABEL : Style.LABEL;
        sheet.number(line.year(), label.ordinal());
        text(SummaryWords.site(group), label);
        text(SummaryWords.department(group), label);
        for (Measure measure : Measure.values()) {
            switch (line.count(measure)) {
                case Count.Number(int value) -> sheet.number(value, style.ordinal());
                case Count.Hidden() -> text(Count.HIDDEN_WORD, style);
            }
        }
    }

    private static List<String> explanations(List<SummaryRow> rows) {
        List<String> lines = new ArrayList<>();
        if (rows.stream().anyMatch(row -> row.count() instanceof Count.Hidden)) {
            lines.add(SummaryWords.WHAT_HIDDEN_MEANS);
        }
        for (Measure measure : Measure.values()) {
            lines.add(measure.title() + ": " + measure.meaning());
        }
        lines.add(Words.CAUTION);
        return lines;
    }

    private void sentence(int row, String text, Style style) {
        sheet.beginRow(row);
        text(text, style);
    }

    private void text(String text, Style style) {
        sheet.text(text, style.ordinal());
    }

    private byte[] zipped() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            add(zip, "[Content_Types].xml", fixedPart("content-types.xml"));
            add(zip, "_rels/.rels", fixedPart("package-relationships.xml"));
            add(zip, "docProps/app.xml", fixedPart("app.xml"));
            add(zip, "docProps/core.xml", fixedPart("core.xml"));
            add(zip, "xl/sharedStrings.xml", sheet.sharedStrings());
            add(zip, "xl/styles.xml", fixedPart("styles.xml"));
            add(zip, "xl/workbook.xml", workbookXml());
            add(zip, "xl/_rels/workbook.xml.rels", fixedPart("workbook-relationships.xml"));
            add(zip, "xl/worksheets/sheet1.xml", sheetXml());
        } catch (IOException e) {
            throw new UncheckedIOException("a workbook in memory could not be written", e);
        }
        return bytes.toByteArray();
    }

    /** Every entry has the earliest time that the format knows, so that none tells when it was made. */
    private static void add(ZipOutputStream zip, String name, String part) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(ZIP_EPOCH);
        zip.putNextEntry(entry);
        zip.write(part.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String fixedPart(String name) throws IOException {
        try (InputStream part = SummaryWorkbook.class.getResourceAsStream("workbook/" + name)) {
            if (part == null) {
                throw new FileNotFoundException("a part of the workbook is missing: " + name);
            }
            return new String(part.readAllBytes(), StandardCharsets.UTF_8).stripTrailing();
        }
    }

    /** Names the sheet, the rows that can be filtered and those that are printed on every page. */
    private String workbookXml() {
        String lastColumn = SheetXml.letter(titles.size() - 1);
        return """
                <?xml version="1.0" encoding="UTF-8"?>
                <workbook xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"\
                 xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships">\
                <workbookPr date1904="false"/><bookViews><workbookView activeTab="0"/></bookViews>\
                <sheets><sheet name="Summary" r:id="rId3" sheetId="1"/></sheets>\
                <definedNames><definedName name="_xlnm._FilterDatabase" localSheetId="0" hidden="true">\
                Summary!$A$%1$d:$%2$s$%3$d</definedName>\
                <definedName name="_xlnm.Print_Titles" localSheetId="0">Summary!$%1$d:$%1$d</definedName>\
                </definedNames></workbook>""".formatted(headerRow + 1, lastColumn, lastLine + 1);
    }

    /** One landscape page wide, the header row and the labels frozen. */
    private String sheetXml() {
        StringBuilder xml = new StringBuilder();
        int lastColumn = titles.size() - 1;
        xml.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
                .append("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">")
                .append("<sheetPr><pageSetUpPr fitToPage=\"true\"/></sheetPr><dimension ref=\"A1:")
                .append(SheetXml.reference(lastColumn, sheet.lastRow()))
                .append("\"/>")
                .append("<sheetViews><sheetView workbookViewId=\"0\" tabSelected=\"true\">")
                .append("<pane xSplit=\"3.0\" ySplit=\"")
                .append((double) headerRow + 1)
                .append("\" state=\"frozen\" topLeftCell=\"")
                .append(SheetXml.reference(LABELS, headerRow + 1))
                .append("\" activePane=\"bottomRight\"/><selection pane=\"bottomRight\"/></sheetView></sheetViews>")
                .append("<sheetFormatPr defaultRowHeight=\"15.0\"/><cols>");
        for (int column = 0; column <= lastColumn; column++) {
            appendWidth(column, xml);
        }
        xml.append("</cols><sheetData>").append(sheet.rows()).append("</sheetData><autoFilter ref=\"");
        xml.append(SheetXml.reference(0, headerRow)).append(':').append(SheetXml.reference(lastColumn, lastLine));
        return xml.append("\"/><pageMargins bottom=\"0.75\" footer=\"0.3\" header=\"0.3\" left=\"0.7\" right=\"0.7\"")
                .append(" top=\"0.75\"/><pageSetup usePrinterDefaults=\"false\" orientation=\"landscape\"")
                .append(" paperSize=\"1\" fitToWidth=\"1\" fitToHeight=\"0\"/><headerFooter><oddFooter>")
                .append("&amp;LThreshold Register: hearing-test summary&amp;RPage &amp;P of &amp;N")
                .append("</oddFooter></headerFooter></worksheet>")
                .toString();
    }

    private static void appendWidth(int column, StringBuilder xml) {
        double characters = switch (column) {
            case 0 -> 8;
            case 1 -> 24;
            case 2 -> 26;
            default -> 13;
        };
        xml.append("<col min=\"").append(column + 1).append("\" max=\"").append(column + 1);
        xml.append("\" width=\"").append(characters).append("\" customWidth=\"true\"/>");
    }
}
