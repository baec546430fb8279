package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RecordReaderTest {

    @Test
    void theThreeEndsOfLineEachEndOneLine() throws IOException {
        assertThat(records("a,b\nc\r\nd\re,f")).containsExactly("1 [a, b]", "2 [c]", "3 [d]", "4 [e, f]");
        assertThat(records("a\r\rb\n\nc\r\n\r\nd"))
                .containsExactly("1 [a]", "2 []", "3 [b]", "4 []", "5 [c]", "6 []", "7 [d]");
    }

    @Test
    void anEndOfLineAtTheEndBeginsNoFurtherLine() throws IOException {
        assertThat(records("a\n")).containsExactly("1 [a]");
        assertThat(records("a\r\n")).containsExactly("1 [a]");
        assertThat(records("")).isEmpty();
        assertThat(records("\n")).containsExactly("1 []");
    }

    @Test
    void anEndOfLineIsOneEvenWhereTheReaderStopsWithinIt() throws IOException {
        for (int padding = (1 << 15) - 3; padding <= (1 << 15) + 1; padding++) {
            String long1 = "x".repeat(padding);
            assertThat(records(long1 + "\r\ny\r\nz")).containsExactly("1 [" + long1 + "]", "2 [y]", "3 [z]");
        }
    }

    @Test
    void aQuotedCellMayHoldSeparatorsQuotesAndLineBreaks() throws IOException {
        assertThat(records("\"a,b\",\"c\"\"d\",\"\",e\"f\nx")).containsExactly("1 [a,b, c\"d, , e\"f]", "2 [x]");
        assertThat(records("1,\"two\r\nlines\",3\nnext")).containsExactly("1 [1, two\nlines, 3]", "3 [next]");
        assertThat(records("\"\n\n\n\",b\nnext")).containsExactly("1 [\n\n\n, b]", "5 [next]");
    }

    @Test
    void anUnclosedQuoteGivesUpItsOwnLineOnly() throws IOException {
        assertThat(records("a,\"b\nc,d\ne,f")).containsExactly("1 UNCLOSED_QUOTE", "2 [c, d]", "3 [e, f]");
    }

    @Test
    void aQuoteThatStaysOpenForAHundredLinesIsUnclosed() throws IOException {
        String within99 = "\"" + "x\n".repeat(99) + "\",end";
        assertThat(records(within99 + "\nnext").getFirst())
                .startsWith("1 [x\nx")
                .endsWith("x\n, end]");
        String within100 = "\"" + "x\n".repeat(100) + "\",end";
        List<String> records = records(within100 + "\nnext");
        assertThat(records).hasSize(102).startsWith("1 UNCLOSED_QUOTE", "2 [x]", "3 [x]");
        assertThat(records.subList(99, 102)).containsExactly("100 [x]", "101 UNCLOSED_QUOTE", "102 [next]");
    }

    @Test
    void aQuoteInTheMiddleOfAQuotedCellGivesUpItsOwnLineOnly() throws IOException {
        assertThat(records("\"a\"b,c\nd")).containsExactly("1 MISPLACED_QUOTE", "2 [d]");
        assertThat(records("a,\"b\nc,\"d\ne")).containsExactly("1 MISPLACED_QUOTE", "2 UNCLOSED_QUOTE", "3 [e]");
    }

    @Test
    void aMonstrousLineIsGivenUpAndTheNextIsRead() throws IOException {
        String longest = "x".repeat(RecordReader.LONGEST_RECORD);
        assertThat(records(longest + "\nnext")).containsExactly("1 [" + longest + "]", "2 [next]");
        assertThat(records(longest + "xyz\nnext")).containsExactly("1 TOO_LONG", "2 [next]");
        assertThat(records("\"" + longest.substring(2) + "\n" + longest + "\"\nnext"))
                .containsExactly("1 TOO_LONG", "2 TOO_LONG", "3 [next]");
    }

    @Test
    void whatIsQuotedByTheStandardComesBackAsItWas() throws IOException {
        Random random = new Random(4180);
        for (int round = 0; round < 20_000; round++) {
            char separator = ",;\t|".charAt(random.nextInt(4));
            String[] cells = new String[1 + random.nextInt(4)];
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < cells.length; i++) {
                cells[i] = randomCell(random, separator);
                String quoted = "\"" + cells[i].replace("\"", "\"\"") + "\"";
                boolean mustQuote =
                        cells[i].contains("\"") || cells[i].indexOf(separator) >= 0 || cells[i].contains("\n");
                text.append(i == 0 ? "" : separator).append(mustQuote || random.nextBoolean() ? quoted : cells[i]);
            }
            try (RecordReader reader = new RecordReader(new StringReader(text + "\nnext"), separator)) {
                assertThat(reader.next())
                        .isInstanceOfSatisfying(
                                RecordReader.Cells.class,
                                record -> assertThat(record.values())
                                        .as(text.toString())
                                        .containsExactly(cells));
                assertThat(reader.next())
                        .isInstanceOfSatisfying(
                                RecordReader.Cells.class,
                                record -> assertThat(record.values()).containsExactly("next"));
                assertThat(reader.next()).isNull();
            }
        }
    }

    private static String randomCell(Random random, char separator) {
        char[] letters = {'a', '"', '"', separator, '\n', ' ', '\'', 'é'};
        StringBuilder cell = new StringBuilder();
        for (int i = random.nextInt(6); i > 0; i--) {
            cell.append(letters[random.nextInt(letters.length)]);
        }
        return cell.toString();
    }

    private static List<String> records(String text) throws IOException {
        List<String> records = new ArrayList<>();
        try (RecordReader reader = new RecordReader(new StringReader(text), ',')) {
            RecordReader.Outcome outcome;
            while ((outcome = reader.next()) != null) {
                records.add(
                        switch (outcome) {
                            case RecordReader.Cells cells ->
                                cells.line() + " [" + String.join(", ", cells.values()) + "]";
                            case RecordReader.Fault fault -> fault.line() + " " + fault.kind();
                        });
            }
        }
        return records;
    }
}
