package org.thresholdregister.platform.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SheetCsvTest {

    private static byte[] written(List<String> header, List<List<String>> rows) throws IOException {
        var out = new ByteArrayOutputStream();
        SheetCsv.write(out, header, rows);
        return out.toByteArray();
    }

    private static String cell(String text) throws IOException {
        String file = new String(written(List.of("a"), List.of(List.of(text))), StandardCharsets.UTF_8);
        return file.substring("\uFEFFa\r\n".length(), file.length() - "\r\n".length());
    }

    @Test
    void theFileIsUtf8WithAMarkAndLinesEndLikeASpreadsheetsDo() throws IOException {
        byte[] bytes = written(List.of("name", "line"), List.of(List.of("Núñez", "3"), List.of("", "4")));

        assertThat(bytes).startsWith(0xEF, 0xBB, 0xBF);
        assertThat(new String(bytes, StandardCharsets.UTF_8)).isEqualTo("\uFEFFname,line\r\nNúñez,3\r\n,4\r\n");
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+cmd", "-cmd", "@sum", "\tx", "=", "-", "-1-1", "＝1"})
    void whatASpreadsheetWouldTakeForAFormulaIsLedByAnApostrophe(String text) throws IOException {
        assertThat(cell(text)).isEqualTo("'" + text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-10", "+5", "12.5", "-0.5", ">95", "DNT", "a=b", "2026-03-09", ""})
    void plainNumbersAndWordsStayAsTheyAre(String text) throws IOException {
        assertThat(cell(text)).isEqualTo(text);
    }

    @Test
    void cellsWithSeparatorsQuotesOrLineBreaksAreQuoted() throws IOException {
        assertThat(cell("a,b")).isEqualTo("\"a,b\"");
        assertThat(cell("a;b")).isEqualTo("\"a;b\"");
        assertThat(cell("say \"ah\"")).isEqualTo("\"say \"\"ah\"\"\"");
        assertThat(cell("two\nlines")).isEqualTo("\"two\nlines\"");
        assertThat(cell("=HYPERLINK(\"x\",\"y\")")).isEqualTo("\"'=HYPERLINK(\"\"x\"\",\"\"y\"\")\"");
    }
}
