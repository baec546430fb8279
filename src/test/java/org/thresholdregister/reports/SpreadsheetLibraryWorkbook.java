package org.thresholdregister.reports;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
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
 */
final class SpreadsheetLibraryWorkbook {

    private static final String TITLE = "Hearing-test summary by year, site and department";
    private static final String HOW_COUNTED =
            "Counts of tests by the year of the test. One person with both ears on one date is one shift and one case.";
    private static final int LABELS = 3;

    /** Three lines of the longest title; a reader does not always work the height out. */
    private static final int HEADER_POINTS = 42;

    private static final LocalDateTime ZIP_EPOCH = LocalDateTime.of(1980, 1, 1, 0, 0);

    private SpreadsheetLibraryWorkbook() {}

    /** The bytes of an {@code .xlsx} file. */
    static byte[] of(List<SummaryRow> rows) {
        return of(rows, List.of());
    }

    /**
     * The bytes of an {@code .xlsx} file.
     *
     * @param notes sentences that stand above the table
     */
    static byte[] of(List<SummaryRow> rows, List<String> notes) {
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            fill(workbook.createSheet("Summary"), rows, notes, new Styles(workbook));
            workbook.getProperties().getCoreProperties().setCreator("Threshold Register");
            workbook.getProperties().getCoreProperties().setTitle(TITLE);
            workbook.getProperties().getCoreProperties().setCreated(Optional.of(new Date(0)));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            workbook.write(bytes);
            return withoutClockTimes(bytes.toByteArray());
        } catch (IOException e) {
            throw new IllegalStateException("a workbook in memory could not be written", e);
        }
    }

    private static void fill(XSSFSheet sheet, List<SummaryRow> rows, List<String> notes, Styles styles) {
        int next = 0;
        text(sheet.createRow(next++), 0, TITLE, styles.title);
        for (String note : notes) {
            text(sheet.createRow(next++), 0, note, styles.sentence);
        }
        text(sheet.createRow(next++), 0, HOW_COUNTED, styles.sentence);
        int headerRow = next + 1;
        List<String> titles = titles();
        Row header = sheet.createRow(headerRow);
        header.setHeightInPoints(HEADER_POINTS);
        for (int column = 0; column < titles.size(); column++) {
            text(header, column, titles.get(column), column < LABELS ? styles.labelHeader : styles.countHeader);
        }
        next = headerRow + 1;
        for (SummaryLine line : SummaryLine.of(rows)) {
            fill(sheet.createRow(next++), line, styles);
        }
        layOut(sheet, titles.size(), headerRow, next - 1);
        next++;
        for (String line : explanations(rows)) {
            text(sheet.createRow(next++), 0, line, styles.sentence);
        }
    }

    private static List<String> titles() {
        List<String> titles = new ArrayList<>(List.of("Year", "Site", "Department"));
        for (Measure measure : Measure.values()) {
            titles.add(measure.title());
        }
        return titles;
    }

    private static void fill(Row row, SummaryLine line, Styles styles) {
        Group group = line.group();
        CellStyle style = group.isTotal() ? styles.total : styles.count;
        CellStyle label = group.isTotal() ? styles.totalLabel : styles.label;
        number(row, 0, line.year(), label);
        text(row, 1, SummaryWords.site(group), label);
        text(row, 2, SummaryWords.department(group), label);
        for (Measure measure : Measure.values()) {
            int column = LABELS + measure.ordinal();
            switch (line.count(measure)) {
                case Count.Number(int value) -> number(row, column, value, style);
                case Count.Hidden() -> text(row, column, Count.HIDDEN_WORD, style);
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

    private static void layOut(XSSFSheet sheet, int columns, int headerRow, int lastRow) {
        sheet.setColumnWidth(0, 8 * 256);
        sheet.setColumnWidth(1, 24 * 256);
        sheet.setColumnWidth(2, 26 * 256);
        for (int column = LABELS; column < columns; column++) {
            sheet.setColumnWidth(column, 13 * 256);
        }
        sheet.createFreezePane(LABELS, headerRow + 1);
        sheet.setAutoFilter(new CellRangeAddress(headerRow, lastRow, 0, columns - 1));
        sheet.setRepeatingRows(new CellRangeAddress(headerRow, headerRow, -1, -1));
        sheet.setFitToPage(true);
        PrintSetup print = sheet.getPrintSetup();
        print.setLandscape(true);
        print.setPaperSize(PrintSetup.LETTER_PAPERSIZE);
        print.setFitWidth((short) 1);
        print.setFitHeight((short) 0);
        sheet.getFooter().setLeft("Threshold Register: hearing-test summary");
        sheet.getFooter().setRight("Page &P of &N");
    }

    private static void text(Row row, int column, String text, CellStyle style) {
        Cell cell = row.createCell(column);
        cell.setCellValue(text);
        cell.setCellStyle(style);
    }

    private static void number(Row row, int column, int number, CellStyle style) {
        Cell cell = row.createCell(column);
        cell.setCellValue(number);
        cell.setCellStyle(style);
    }

    /** The same archive with the time of every entry set to the earliest that the format knows. */
    private static byte[] withoutClockTimes(byte[] workbook) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(workbook.length);
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(workbook));
                ZipOutputStream out = new ZipOutputStream(bytes)) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                ZipEntry timeless = new ZipEntry(entry.getName());
                timeless.setTimeLocal(ZIP_EPOCH);
                out.putNextEntry(timeless);
                in.transferTo(out);
                out.closeEntry();
            }
        }
        return bytes.toByteArray();
    }

    /** The few looks that a cell may have, readable on a grey printer; of a typeface that every office has. */
    private static final class Styles {
        private static final String TYPEFACE = "Arial";

        private final CellStyle title;
        private final CellStyle sentence;
        private final CellStyle labelHeader;
        private final CellStyle countHeader;
        private final CellStyle label;
        private final CellStyle count;
        private final CellStyle totalLabel;
        private final CellStyle total;

        Styles(XSSFWorkbook workbook) {
            Font plain = font(workbook, 10, false);
            Font bold = font(workbook, 10, true);
            title = style(workbook, font(workbook, 14, true), HorizontalAlignment.LEFT);
            sentence = style(workbook, plain, HorizontalAlignment.LEFT);
            labelHeader = header(style(workbook, bold, HorizontalAlignment.LEFT));
            countHeader = header(style(workbook, bold, HorizontalAlignment.RIGHT));
            label = ruled(style(workbook, plain, HorizontalAlignment.LEFT));
            count = ruled(style(workbook, plain, HorizontalAlignment.RIGHT));
            totalLabel = ruled(style(workbook, bold, HorizontalAlignment.LEFT));
            total = ruled(style(workbook, bold, HorizontalAlignment.RIGHT));
            short thousands = workbook.createDataFormat().getFormat("#,##0");
            count.setDataFormat(thousands);
            total.setDataFormat(thousands);
        }

        private static Font font(XSSFWorkbook workbook, int points, boolean bold) {
            Font font = workbook.createFont();
            font.setFontName(TYPEFACE);
            font.setFontHeightInPoints((short) points);
            font.setBold(bold);
            return font;
        }

        private static CellStyle style(XSSFWorkbook workbook, Font font, HorizontalAlignment alignment) {
            CellStyle style = workbook.createCellStyle();
            style.setFont(font);
            style.setAlignment(alignment);
            return style;
        }

        private static CellStyle header(CellStyle style) {
            style.setWrapText(true);
            style.setVerticalAlignment(VerticalAlignment.BOTTOM);
            style.setBorderBottom(BorderStyle.THIN);
            style.setFillForegroundColor(IndexedColors.GREY_25_PERCENT.getIndex());
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            return style;
        }

        private static CellStyle ruled(CellStyle style) {
            style.setBorderBottom(BorderStyle.HAIR);
            return style;
        }
    }
}
