package org.thresholdregister.platform.ui;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;

/**
 * CSV for a person to open in a spreadsheet: UTF-8 with a byte-order mark, CRLF line ends (RFC 4180), and no cell that
 * a spreadsheet would take for a formula: such a cell is led by an apostrophe (common practice). Files for machines are
 * written without any of this.
 */
public final class SheetCsv {

    public static final String CONTENT_TYPE = "text/csv;charset=UTF-8";

    /** Full-width signs too, which some spreadsheets read as the plain ones. */
    private static final String FIRST_OF_FORMULAS = "=+-@\t\r\n＝＋－＠";

    private static final Pattern PLAIN_NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

    private final Writer out;

    private SheetCsv(Writer out) {
        this.out = out;
    }

    /** Writes the rows and flushes; {@code out} stays open. */
    public static void write(OutputStream out, List<String> header, Iterable<List<String>> rows) throws IOException {
        Writer writer = new BufferedWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
        writer.write('\uFEFF');
        SheetCsv csv = new SheetCsv(writer);
        csv.write(header);
        for (List<String> row : rows) {
            csv.write(row);
        }
        writer.flush();
    }

    private void write(List<String> cells) throws IOException {
        String separator = "";
        for (String cell : cells) {
            out.write(separator);
            out.write(quoted(withoutFormula(cell)));
            separator = ",";
        }
        out.write("\r\n");
    }

    private static String withoutFormula(String cell) {
        boolean couldBeOne = !cell.isEmpty() && FIRST_OF_FORMULAS.indexOf(cell.charAt(0)) >= 0;
        return couldBeOne && !PLAIN_NUMBER.matcher(cell).matches() ? "'" + cell : cell;
    }

    private static String quoted(String cell) {
        boolean plain = cell.chars().noneMatch(character -> ",;\"\r\n".indexOf(character) >= 0);
        return plain ? cell : '"' + cell.replace("\"", "\"\"") + '"';
    }
}
