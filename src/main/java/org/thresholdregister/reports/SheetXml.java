package org.thresholdregister.reports;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The rows of one sheet as SpreadsheetML (ECMA-376, part 1), and the texts in them, each of which is kept once. Rows and
 * columns count from 0, as in a program, and become 1 and A in the file.
 */
final class SheetXml {

    /** A cell can hold no more; ECMA-376 leaves the number to programs, and this is the common one. */
    private static final int LONGEST_TEXT = 32_767;

    private final StringBuilder rows = new StringBuilder();
    private final Map<String, Integer> texts = new LinkedHashMap<>();
    private int textCells;
    private int row;
    private int column;
    private boolean rowIsOpen;

    /** Begins a row, which must lie below the others. */
    void beginRow(int number) {
        openRow(number).append('>');
    }

    void beginRow(int number, int heightPoints) {
        openRow(number).append(" ht=\"").append((double) heightPoints).append("\" customHeight=\"true\">");
    }

    private StringBuilder openRow(int number) {
        endRow();
        row = number;
        column = 0;
        rowIsOpen = true;
        return rows.append("<row r=\"").append(number + 1).append('"');
    }

    private void endRow() {
        if (rowIsOpen) {
            rows.append("</row>");
        }
        rowIsOpen = false;
    }

    /** The next cell of the row. */
    void text(String text, int style) {
        String cell = text.length() <= LONGEST_TEXT ? text : text.substring(0, LONGEST_TEXT);
        textCells++;
        cell('s', style)
                .append(texts.computeIfAbsent(cell, key -> texts.size()))
                .append("</v></c>");
    }

    /** The next cell of the row. */
    void number(int number, int style) {
        cell('n', style).append((double) number).append("</v></c>");
    }

    private StringBuilder cell(char type, int style) {
        rows.append("<c r=\"").append(reference(column, row)).append("\" t=\"").append(type);
        column++;
        return rows.append("\" s=\"").append(style).append("\"><v>");
    }

    /** Like {@code B7}; for the first 26 columns. */
    static String reference(int column, int row) {
        return letter(column) + (row + 1);
    }

    static String letter(int column) {
        return Character.toString('A' + column);
    }

    /** The number of the last row begun. */
    int lastRow() {
        return row;
    }

    /** The rows, for the element {@code sheetData}. */
    String rows() {
        endRow();
        return rows.toString();
    }

    /** The part of the package that holds the texts. */
    String sharedStrings() {
        StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<sst count=\"")
                .append(textCells)
                .append("\" uniqueCount=\"")
                .append(texts.size())
                .append("\" xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">");
        for (String text : texts.keySet()) {
            xml.append(beginsOrEndsBlank(text) ? "<si><t xml:space=\"preserve\">" : "<si><t>");
            xml.append(escaped(text)).append("</t></si>");
        }
        return xml.append("</sst>").toString();
    }

    private static boolean beginsOrEndsBlank(String text) {
        return !text.isEmpty()
                && (Character.isWhitespace(text.charAt(0)) || Character.isWhitespace(text.charAt(text.length() - 1)));
    }

    private static String escaped(String text) {
        StringBuilder xml = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> xml.append("&lt;");
                case '&' -> xml.append("&amp;");
                default -> xml.appendCodePoint(isAllowed(c) ? c : '?');
            }
        });
        return xml.toString().replace("]]>", "]]&gt;");
    }

    /** By production 2 of XML 1.0. */
    private static boolean isAllowed(int c) {
        return c == '\t' || c == '\n' || c >= ' ' && c < 0xD800 || c >= 0xE000 && c < 0xFFFE || c >= 0x10000;
    }
}
