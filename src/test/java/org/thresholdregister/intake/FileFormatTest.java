package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.intake.UnusableFileException.Reason;

/** The ways in which the same roster may be written, and those in which it cannot be read. */
class FileFormatTest {

    private static final String TEXT = """
            worker_id,birth_date,sex,family_name,site
            001,1980-02-29,F,Núñez,Kiln hall
            002,1975-11-03,M,"Ost, van",Kiln hall
            """;

    @Test
    void utf8WithAndWithoutAByteOrderMarkReadsTheSame() throws Exception {
        assertThat(rows(TEXT.getBytes(StandardCharsets.UTF_8))).containsExactly("2 001 Núñez", "3 002 Ost, van");
        assertThat(rows(("\uFEFF" + TEXT).getBytes(StandardCharsets.UTF_8)))
                .containsExactly("2 001 Núñez", "3 002 Ost, van");
    }

    @Test
    void utf16WithAByteOrderMarkReadsTheSame() throws Exception {
        assertThat(rows(("\uFEFF" + TEXT).getBytes(StandardCharsets.UTF_16LE)))
                .containsExactly("2 001 Núñez", "3 002 Ost, van");
        assertThat(rows(("\uFEFF" + TEXT).getBytes(StandardCharsets.UTF_16BE)))
                .containsExactly("2 001 Núñez", "3 002 Ost, van");
    }

    @Test
    void whatIsNotUtf8IsWindows1252() throws Exception {
        assertThat(rows(TEXT.getBytes(Charset.forName("windows-1252"))))
                .containsExactly("2 001 Núñez", "3 002 Ost, van");
        String euro = TEXT.replace("Núñez", "Müller–Œuvre");
        assertThat(rows(euro.getBytes(Charset.forName("windows-1252")))).contains("2 001 Müller–Œuvre");
    }

    @Test
    void theOneByteThatIsNotUtf8MayStandFarIntoTheFile() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes("worker_id,birth_date,sex,family_name\n".getBytes(StandardCharsets.US_ASCII));
        for (int i = 0; i < 10_000; i++) {
            bytes.writeBytes((i + ",1980-01-01,F,Plain\n").getBytes(StandardCharsets.US_ASCII));
        }
        bytes.writeBytes("last,1980-01-01,F,N\u00fa\u00f1ez\n".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(rows(bytes.toByteArray()).getLast()).isEqualTo("10002 last Núñez");
    }

    @Test
    void theVeryLastByteCanTellThatAFileIsNotUtf8() throws Exception {
        byte[] bytes = "worker_id,birth_date,sex,family_name\n1,,,Jos\u00e9".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(rows(bytes)).containsExactly("2 1 José");
    }

    @Test
    void aUtf8CharacterAcrossTheBufferOfTheCheckIsNoError() throws Exception {
        for (int padding = 65_530; padding < 65_540; padding++) {
            String name = "x".repeat(padding - TEXT.indexOf("Núñez")) + "ñé漢🔔";
            byte[] bytes = TEXT.replace("Núñez", name).getBytes(StandardCharsets.UTF_8);
            assertThat(rows(bytes).getFirst()).isEqualTo("2 001 " + name);
        }
    }

    @Test
    void charactersThatCannotBeReadAreNoted() throws Exception {
        ProblemList problems = new ProblemList();
        byte[] bytes = "worker_id,birth_date,sex,family_name\n1,1980-01-01,F,a\u0081\u00e9b\n2,1980-01-01,F,c\u0000d\n"
                .getBytes(StandardCharsets.ISO_8859_1);
        List<String> names = new ArrayList<>();
        new RosterReader(Csv.AS_OF, problems)
                .read(SourceFile.of("roster.csv", bytes), row -> names.add(row.familyName()));
        assertThat(names).containsExactly("a\uFFFDéb", "c\uFFFDd");
        assertThat(problems.inFileOrder().stream().map(Csv::briefly))
                .containsExactly(
                        "2 family_name UNREADABLE_CHARACTERS NOTE", "3 family_name UNREADABLE_CHARACTERS NOTE");
    }

    @Test
    void everyEndOfLineGivesTheSameLineNumbers() throws Exception {
        for (String end : List.of("\n", "\r\n", "\r")) {
            assertThat(rows(utf8(TEXT.replace("\n", end)))).containsExactly("2 001 Núñez", "3 002 Ost, van");
        }
    }

    @Test
    void theSeparatorIsFoundByTheHeader() throws Exception {
        for (String separator : List.of(";", "\t", "|")) {
            String text =
                    TEXT.replace("\"Ost, van\"", "#").replace(",", separator).replace("#", "Ost, van");
            assertThat(rows(utf8(text))).containsExactly("2 001 Núñez", "3 002 Ost, van");
        }
    }

    @Test
    void aSeparatorWithinACellDoesNotMislead() throws Exception {
        String text = "worker_id;birth_date;sex;family_name;\"a,b,c,d,e,f,g\"\n7;1980-01-01;F;Ost;1,2,3,4,5,6,7\n";
        assertThat(rows(utf8(text))).containsExactly("2 7 Ost");
    }

    @Test
    void aFirstLineThatNamesTheSeparatorIsObeyedAndCounted() throws Exception {
        for (String hint : List.of("sep=;", "SEP=;", "\uFEFFsep=;")) {
            String text = hint + "\r\n"
                    + TEXT.replace("\"Ost, van\"", "Ost").replace(",", ";").replace("\n", "\r\n");
            assertThat(rows(utf8(text))).containsExactly("3 001 Núñez", "4 002 Ost");
        }
    }

    @Test
    void columnNamesMayStandInAnyCaseAndOrderWithSpaceAround() throws Exception {
        String text = " Sex ;FAMILY_NAME;\"Worker_ID\";birth_date\u00a0\nF;Ost;001;1980-01-01\n";
        assertThat(rows(utf8(text))).containsExactly("2 001 Ost");
    }

    @Test
    void blankLinesBeforeTheHeaderAndBetweenRowsArePassedOver() throws Exception {
        String text = "\n ,,\nworker_id,birth_date,sex,family_name\n\n1,1980-01-01,F,Ost\n,,,\n  \n \t, ,,,,,\n2,,,\n";
        ProblemList problems = new ProblemList();
        assertThat(rows(utf8(text), problems)).containsExactly("5 1 Ost", "9 2 ");
        assertThat(problems.inFileOrder()).isEmpty();
    }

    @Test
    void quotedLineBreaksCountAsLines() throws Exception {
        String text = "worker_id,birth_date,sex,family_name\n1,1980-01-01,F,\"Ost\r\nvan\"\n2,x,F,\n";
        ProblemList problems = new ProblemList();
        assertThat(rows(utf8(text), problems)).containsExactly("2 1 Ost\nvan", "4 2 ");
        assertThat(problems.inFileOrder().stream().map(Csv::briefly))
                .containsExactly("4 birth_date UNREADABLE_DATE CELL_LEFT_BLANK");
    }

    @Test
    void twoStrayQuotesDoNotJoinRows() throws Exception {
        String text = "worker_id,birth_date,sex,family_name\n"
                + "1,\",F,Ost\n"
                + "2,\",F,West\n"
                + "3,,F,\"Nord\n"
                + "4,,F,Sud\n"
                + "5,,F,\"Mid\"\n";
        ProblemList problems = new ProblemList();
        assertThat(rows(utf8(text), problems)).containsExactly("5 4 Sud", "6 5 Mid");
        assertThat(problems.inFileOrder().stream().map(Csv::briefly))
                .containsExactly(
                        "2 - MISPLACED_QUOTE ROW_LEFT_OUT",
                        "3 - MISPLACED_QUOTE ROW_LEFT_OUT",
                        "4 - MISPLACED_QUOTE ROW_LEFT_OUT");
    }

    @Test
    void columnsThatAreNotReadAreNoted() throws Exception {
        String text = "worker_id,Shoe Size,birth_date,,sex,,\n1,43,1980-01-01,x,F,,\n";
        ProblemList problems = new ProblemList();
        assertThat(rows(utf8(text), problems)).containsExactly("2 1 ");
        assertThat(problems.inFileOrder().stream().map(Csv::briefly))
                .containsExactly("1 - NAMELESS_COLUMN NOTE", "1 Shoe Size UNKNOWN_COLUMN NOTE");
    }

    @Test
    void rowsThatDoNotFitTheHeaderAreReported() throws Exception {
        String text = "worker_id,birth_date,sex,family_name,site\n"
                + "1,1980-01-01\n"
                + "2,1980-01-01,F\n"
                + "3,1980-01-01,F,Ost,Kiln hall,, \n"
                + "4,1980-01-01,F,Ost,Kiln hall,more\n";
        ProblemList problems = new ProblemList();
        assertThat(rows(utf8(text), problems)).containsExactly("3 2 ", "4 3 Ost");
        assertThat(problems.inFileOrder().stream().map(Csv::briefly))
                .containsExactly(
                        "2 sex ROW_TOO_SHORT ROW_LEFT_OUT",
                        "3 family_name OPTIONAL_CELLS_MISSING NOTE",
                        "5 - EXTRA_CELLS ROW_LEFT_OUT");
        assertThat(problems.inFileOrder().get(1).problem()).contains("family_name, site");
        assertThat(problems.inFileOrder().get(2).value()).isEqualTo("more");
    }

    @Test
    void aMissingColumnMakesTheFileUnusableAndIsNamed() {
        assertUnusable("worker_id,sex\n1,F\n", Reason.MISSING_COLUMNS, "birth_date");
        assertUnusable("worker_id\n1\n", Reason.MISSING_COLUMNS, "birth_date", "sex");
        assertUnusable("1,1980-01-01,F\n", Reason.MISSING_COLUMNS, "worker_id", "birth_date", "sex");
    }

    @Test
    void aColumnNamedTwiceMakesTheFileUnusableAndIsNamed() {
        assertUnusable("worker_id,birth_date,sex,SEX \n1,,F,M\n", Reason.COLUMN_TWICE, "sex");
        assertUnusable("worker_id,birth_date,sex,note,note\n", Reason.COLUMN_TWICE, "note");
    }

    @Test
    void anEmptyFileAWorkbookAndAHeaderThatCannotBeReadAreUnusable() {
        assertUnusable("", Reason.EMPTY);
        assertUnusable("\uFEFF", Reason.EMPTY);
        assertUnusable("\n\n , \n", Reason.EMPTY);
        assertUnusable("sep=,\n", Reason.EMPTY);
        assertUnusable("PK\3\4 and so on", Reason.WORKBOOK);
        assertUnusable("worker_id,\"birth_date,sex\n", Reason.UNREADABLE_HEADER);
    }

    @Test
    void aHeaderAloneIsAFileWithoutRows() throws Exception {
        assertThat(rows(utf8("worker_id,birth_date,sex"))).isEmpty();
    }

    private static void assertUnusable(String text, Reason reason, String... columns) {
        assertThatThrownBy(() -> rows(utf8(text))).isInstanceOfSatisfying(UnusableFileException.class, unusable -> {
            assertThat(unusable.reason()).isEqualTo(reason);
            assertThat(unusable.columns()).containsExactly(columns);
            assertThat(unusable.getMessage()).startsWith("roster.csv ").contains(String.join(", ", columns));
        });
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> rows(byte[] bytes) throws IOException, UnusableFileException {
        return rows(bytes, ProblemSink.ignoring());
    }

    private static List<String> rows(byte[] bytes, ProblemSink problems) throws IOException, UnusableFileException {
        List<String> rows = new ArrayList<>();
        new RosterReader(Csv.AS_OF, problems)
                .read(
                        SourceFile.of("roster.csv", bytes),
                        row -> rows.add(row.line() + " " + row.workerId() + " " + row.familyName()));
        return rows;
    }
}
