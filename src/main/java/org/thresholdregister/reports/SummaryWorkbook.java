package org.thresholdregister.reports;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SummaryRow;

/**
 * The summary as a workbook for a person to read and print: one row for each year, site and department, one column for
 * each measure, totals in bold. It names no worker. The same rows always give the same bytes: it carries no clock time.
 */
public final class SummaryWorkbook {

    private static final int LABELS = 3;
    private static final int TITLE_ROWS = 3;
    private static final LocalDateTime ZIP_EPOCH = LocalDateTime.of(1980, 1, 1, 0, 0);

    private SummaryWorkbook() {}

    private record Line(int year, Group group) {}

    /** The bytes of an {@code .xlsx} file. */
    public static byte[] of(List<SummaryRow> rows) {
        Map<Line, Map<Measure, Integer>> lines = new LinkedHashMap<>();
        for (SummaryRow row : rows) {
            lines.computeIfAbsent(new Line(row.year(), row.group()), line -> new LinkedHashMap<>())
                    .put(row.measure(), row.value());
        }
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            fill(workbook.createSheet("Summary"), lines, new Styles(workbook));
            workbook.getProperties().getCoreProperties().setCreator("Threshold Register");
            workbook.getProperties().getCoreProperties().setTitle("Hearing-test summary by year, site and department");
            workbook.getProperties().getCoreProperties().setCreated(Optional.of(new Date(0)));
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            workbook.write(bytes);
            return withoutClockTimes(bytes.toByteArray());
        } catch (IOException e) {
            throw new IllegalStateException("a workbook in memory could not be written", e);
        }
    }

    private static void fill(XSSFSheet sheet, Map<Line, Map<Measure, Integer>> lines, Styles styles) {
        Measure[] measures = Measure.values();
        text(sheet.createRow(0), 0, "Hearing-test summary by year, site and department", styles.title);
        text(
                sheet.createRow(1),
                0,
                "Counts of tests by the year of the test. One person with both ears on one date is one shift and one"
                        + " case. Computed from the record; a professional decides.",
                styles.plain);
        Row header = sheet.createRow(TITLE_ROWS);
        List<String> titles = new ArrayList<>(List.of("Year", "Site", "Department"));
        for (Measure measure : measures) {
            titles.add(measure.title());
        }
        for (int column = 0; column < titles.size(); column++) {
            text(header, column, titles.get(column), styles.header);
        }
        int number = TITLE_ROWS + 1;
        for (Map.Entry<Line, Map<Measure, Integer>> entry : lines.entrySet()) {
            Row row = sheet.createRow(number++);
            Group group = entry.getKey().group();
            CellStyle style = group.isTotal() ? styles.total : styles.count;
            CellStyle label = group.isTotal() ? styles.totalLabel : styles.plain;
            number(row, 0, entry.getKey().year(), label);
            text(row, 1, readable(group.site(), "all sites", "no site given"), label);
            text(row, 2, readable(group.department(), "all departments", "no department given"), label);
            for (Measure measure : measures) {
                Integer value = entry.getValue().get(measure);
                if (value != null) {
                    number(row, LABELS + measure.ordinal(), value, style);
                }
            }
        }
        layOut(sheet, titles.size(), number - 1);
    }

    private static String readable(String word, String all, String none) {
        return switch (word) {
            case Group.ALL -> all;
            case Group.NONE -> none;
            default -> word;
        };
    }

    private static void layOut(XSSFSheet sheet, int columns, int lastRow) {
        sheet.setColumnWidth(0, 8 * 256);
        sheet.setColumnWidth(1, 24 * 256);
        sheet.setColumnWidth(2, 26 * 256);
        for (int column = LABELS; column < columns; column++) {
            sheet.setColumnWidth(column, 13 * 256);
        }
        sheet.createFreezePane(LABELS, TITLE_ROWS + 1);
        sheet.setAutoFilter(new CellRangeAddress(TITLE_ROWS, lastRow, 0, columns - 1));
        sheet.setRepeatingRows(new CellRangeAddress(TITLE_ROWS, TITLE_ROWS, -1, -1));
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

    /** The few looks that a cell may have, readable on a grey printer. */
    private static final class Styles {
        private final CellStyle title;
        private final CellStyle plain;
        private final CellStyle header;
        private final CellStyle count;
        private final CellStyle total;
        private final CellStyle totalLabel;

        Styles(XSSFWorkbook workbook) {
            Font bold = workbook.createFont();
            bold.setBold(true);
            Font large = workbook.createFont();
            large.setBold(true);
            large.setFontHeightInPoints((short) 14);
            title = workbook.createCellStyle();
            title.setFont(large);
            plain = workbook.createCellStyle();
            header = workbook.createCellStyle();
            header.setFont(bold);
            header.setWrapText(true);
            header.setVerticalAlignment(VerticalAlignment.BOTTOM);
            header.setBorderBottom(BorderStyle.THIN);
            header.setFillForegroundColor(IndexedColors.GREY_25_PERCENT.getIndex());
            header.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            count = workbook.createCellStyle();
            count.setAlignment(HorizontalAlignment.RIGHT);
            count.setDataFormat(workbook.createDataFormat().getFormat("#,##0"));
            total = workbook.createCellStyle();
            total.cloneStyleFrom(count);
            total.setFont(bold);
            totalLabel = workbook.createCellStyle();
            totalLabel.setFont(bold);
        }
    }
}
