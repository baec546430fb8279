package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.columnar.Population;
import org.thresholdregister.core.columnar.PopulationBuilder;

/** Rows taken as bytes and rows read as text: the same files give the same, good or broken. */
class PlainRowsTest {

    private static final String[] WORKERS = {
        "001", "002", "W-3", "Ñandú", " 4", "9 ", "'=5", "'-6", "\"7\"", "8 8", "", "nobody"
    };
    private static final String[] DATES = {
        "2024-03-01", "2025-03-01", "2025-02-28", "2024-02-29", "1985-05-05", "2026-06-30"
    };
    private static final String[] ODD_DATES = {
        "",
        "2025-02-29",
        "2026-07-01",
        "1899-12-31",
        "1900-01-01",
        "2100-01-01",
        "2099-12-31",
        "9999-12-31",
        "2025-3-1",
        " 2025-03-01",
        "2025-13-01",
        "2025-00-10",
        "2025-04-31",
        "soon",
        "2025/03/01",
        "２025-03-01",
        "-025-03-01"
    };
    private static final String[] PURPOSES = {"baseline", "annual", "retest", "exit", "other"};
    private static final String[] ODD_PURPOSES = {"", "Annual", " annual", "annually", "x", "baseline\u00a0"};
    private static final String[] LEVELS = {
        "0", "5", "10", "15", "35", "95", "100", "120", "-5", "-10", "", ">95", "NR", "DNT"
    };
    private static final String[] ODD_LEVELS = {
        "121", "-11", "-0", "00", "007", "0005", "1e1", "12.5", ">", ">-5", "> 95", ">121", ">007", "nr", "CNT", "CNx",
        "DNTT", "N", "+5", " 5", "5 ", "5-", "--5", "999999999", "9999999999", "é", "\"5\"", "1 0", "x", ":0", "/0", "-"
    };
    private static final String[] HOURS = {"", "14", "14.5", "0", "999998.9"};
    private static final String[] ODD_HOURS = {
        "999999", "1000000", "-1", "14,5", "14.", ".5", "1.1234567890", "long", "1234567890"
    };
    private static final String[] TEXTS = {"", "R. Vale", "Núñez", "a;b", "it's", "'=1+1", " x", "x ", "Ünal Жук", "-"};
    private static final String[] ODD_TEXTS = {
        "\"two, cells\"",
        "\"say \"\"so\"\"\"",
        "\"two\nlines\"",
        "\"two\r\nlines\"",
        "stray\"mark",
        "\"open",
        "tab\there",
        "\u0007bell",
        "\u0085next",
        "\u00a0",
        "\ufffd",
        "東京",
        "\uD83C\uDFED",
        "\u007f",
        "more,cells",
        "\ufeffmark"
    };
    private static final String[] ENDS = {"\n", "\r\n", "\r"};
    private static final char[] SEPARATORS = {',', ',', ';', '\t', '|'};

    private final Random random = new Random(20_26);

    @Test
    void randomFilesGiveTheSame() throws IOException {
        int usable = 0;
        int kept = 0;
        int problems = 0;
        for (int round = 0; round < 1_500; round++) {
            int oneOddIn = round % 5 == 0 ? 1_000_000 : 5 + random.nextInt(60);
            Outcome outcome = readBothWays(roster(oneOddIn), audiograms(oneOddIn), decisions());
            usable += outcome.usable() ? 1 : 0;
            kept += outcome.rowsKept();
            problems += outcome.problems();
        }
        assertThat(usable).as("usable file sets").isGreaterThan(1_200);
        assertThat(kept).as("rows kept").isGreaterThan(6_000);
        assertThat(problems).as("problems").isGreaterThan(6_000);
    }

    @Test
    void damagedFilesGiveTheSame() throws IOException {
        for (int round = 0; round < 1_500; round++) {
            readBothWays(damaged(roster(40)), damaged(audiograms(40)), decisions());
        }
    }

    @Test
    void linesOfManyLengthsAreFoundWhereverTheBlocksOfAFileEnd() throws IOException {
        StringBuilder audiograms = new StringBuilder(Csv.AUDIOGRAM_HEADER.strip()).append(",remark\n");
        for (int i = 0; i < 9_000; i++) {
            String remark = i % 1000 == 7 ? "x".repeat(300_000 + i) : i % 50 == 3 ? "\"a\r\nb\"" : "y".repeat(i % 90);
            audiograms
                    .append("001,")
                    .append(2000 + i % 26)
                    .append("-0")
                    .append(1 + i % 9)
                    .append("-1")
                    .append(i % 10);
            audiograms
                    .append(i % 3 == 0 ? ",annual" : ",exit")
                    .append(Csv.LEVELS)
                    .append(',')
                    .append(remark);
            audiograms.append(ENDS[i % 3]);
        }
        byte[] roster = (Csv.ROSTER_HEADER + "001,1960-01-01,F\n").getBytes(StandardCharsets.UTF_8);
        Outcome outcome = readBothWays(roster, audiograms.toString().getBytes(StandardCharsets.UTF_8), decisions());
        assertThat(outcome.usable()).isTrue();
    }

    /** Without this the other tests would hold with nothing ever taken as bytes. */
    @Test
    void plainRowsAreTakenAndOthersAreNot() throws IOException {
        assertThat(isTaken("001,2025-03-01,annual" + Csv.LEVELS + ",14.5,yes,Núñez\n"))
                .isTrue();
        assertThat(isTaken("001,2025-03-01,annual" + Csv.LEVELS + ",14.5,yes,Núñez\r\n\n"))
                .isTrue();
        assertThat(isTaken("001,2025-03-01,annual" + Csv.LEVELS + ",14.5,yes,\"Vale\"\n"))
                .isFalse();
        assertThat(isTaken("001,2025-03-01,annual" + Csv.LEVELS + ",14.5,maybe,Vale\n"))
                .isFalse();
        assertThat(isTaken("001,2025-03-01,annual" + Csv.LEVELS + ",14.5,yes,Vale,\n"))
                .isFalse();
        assertThat(isTaken("001,2025-03-01,annual" + Csv.LEVELS + ",14.5,yes\n"))
                .isFalse();
        assertThat(isTaken("001,2026-07-01,annual" + Csv.LEVELS + ",14.5,yes,Vale\n"))
                .isFalse();
        assertThat(isTaken("001,1959-12-31,annual" + Csv.LEVELS + ",14.5,yes,Vale\n"))
                .isFalse();
        assertThat(isTaken("002,2025-03-01,annual" + Csv.LEVELS + ",14.5,yes,Vale\n"))
                .isFalse();
        assertThat(isTaken("001,2025-03-01,annual" + Csv.LEVELS + ",14.5,yes,Vale"))
                .isFalse();
    }

    private static boolean isTaken(String row) throws IOException {
        PopulationBuilder population = new PopulationBuilder();
        population.setBirthDay(
                population.worker("001"), (int) LocalDate.of(1960, 1, 1).toEpochDay());
        SourceFile file = Csv.file(
                "audiograms.csv", Csv.AUDIOGRAM_HEADER.strip() + ",hours_since_noise,protectors_worn,tester\n" + row);
        try {
            new TableReader<>(Table.AUDIOGRAMS, AudiogramColumn.values(), file, ProblemSink.ignoring())
                    .read(
                            (header, separator, encoding) -> new PlainTests(
                                    new PlainRow<>(header, AudiogramColumn.values(), separator, encoding),
                                    (int) Csv.AS_OF.toEpochDay(),
                                    population,
                                    new AudiogramRegister(population)),
                            rest -> {});
        } catch (UnusableFileException e) {
            throw new AssertionError(e);
        }
        return population.testsAdded() == 1;
    }

    /** @param problems how many were found */
    private record Outcome(boolean usable, int rowsKept, int problems) {}

    private static Outcome readBothWays(byte[] roster, byte[] audiograms, byte[] decisions) throws IOException {
        FileSet files = FileSet.of(SourceFile.of("roster.csv", roster), SourceFile.of("audiograms.csv", audiograms))
                .withDecisions(SourceFile.of("decisions.csv", decisions));
        ProblemList problems = new ProblemList();
        ProblemList expectedProblems = new ProblemList();
        Intake expected;
        try {
            expected =
                    Intake.read(files, Csv.AS_OF, ExistingRecords.none(), expectedProblems, Intake.Bytes.NEVER_TAKEN);
        } catch (UnusableFileException unusable) {
            assertThatExceptionOfType(UnusableFileException.class)
                    .isThrownBy(() -> Intake.read(files, Csv.AS_OF, problems))
                    .withMessage(unusable.getMessage());
            return new Outcome(false, 0, 0);
        }
        Intake intake;
        try {
            intake = Intake.read(files, Csv.AS_OF, problems);
        } catch (UnusableFileException unusable) {
            throw new AssertionError(unusable);
        }
        assertThat(problems.inFileOrder()).isEqualTo(expectedProblems.inFileOrder());
        int kept = 0;
        for (Table table : Table.values()) {
            assertThat(intake.rowsRead(table)).isEqualTo(expected.rowsRead(table));
            assertThat(intake.rowsKept(table)).isEqualTo(expected.rowsKept(table));
            for (int line = 1; line <= 200; line++) {
                assertThat(intake.keeps(table, line)).isEqualTo(expected.keeps(table, line));
            }
            kept += intake.rowsKept(table);
        }
        assertThat(intake.histories().toList()).isEqualTo(expected.histories().toList());
        assertThat(places(intake)).isEqualTo(places(expected));
        return new Outcome(true, kept, problems.inFileOrder().size());
    }

    private static List<String> places(Intake intake) {
        Population population = intake.population();
        List<String> places = new ArrayList<>();
        for (int worker = 0; worker < population.workerCount(); worker++) {
            int number = population.numberInBuilder(worker);
            places.add(
                    population.workerId(worker) + " at " + intake.siteOf(number) + ", " + intake.departmentOf(number));
        }
        return places;
    }

    private byte[] roster(int oneOddIn) {
        return file(columns(RosterColumn.values(), "shoe_size"), 2 + random.nextInt(10), oneOddIn);
    }

    private byte[] audiograms(int oneOddIn) {
        return file(columns(AudiogramColumn.values(), "booth"), 4 + random.nextInt(20), oneOddIn);
    }

    /** All required columns, most of the optional ones, and now and then one that is not read. */
    private List<String> columns(Column[] known, String notRead) {
        List<String> names = new ArrayList<>();
        for (Column column : known) {
            if (column.required() || random.nextInt(3) > 0) {
                names.add(column.columnName());
            }
        }
        if (random.nextBoolean()) {
            names.add(notRead);
        }
        return names;
    }

    private static byte[] decisions() {
        return (Csv.DECISION_HEADER
                        + "001,left,2025-03-01,recorded,2025-03-20,R. Vale,\n002,both,2024-03-01,baseline,2025-03-20,,\n")
                .getBytes(StandardCharsets.UTF_8);
    }

    private byte[] file(List<String> columns, int rows, int oneOddIn) {
        Collections.shuffle(columns, random);
        char separator = SEPARATORS[random.nextInt(SEPARATORS.length)];
        String end = ENDS[random.nextInt(4) / 2];
        StringBuilder text = new StringBuilder(random.nextInt(8) == 0 ? "\uFEFF" : "");
        text.append(random.nextInt(10) == 0 ? "sep=" + separator + end : "");
        text.append(String.join(String.valueOf(separator), columns));
        text.append(random.nextInt(12) == 0 ? separator : "").append(end);
        List<String> written = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            StringBuilder line = new StringBuilder();
            for (String column : columns) {
                line.append(line.isEmpty() ? "" : separator).append(cell(column, row, random.nextInt(oneOddIn) == 0));
            }
            line.append(random.nextInt(oneOddIn) == 0 ? separator : "");
            boolean again = !written.isEmpty() && random.nextInt(12) == 0;
            String content = again ? written.get(random.nextInt(written.size())) : line.toString();
            written.add(content);
            if (again && random.nextBoolean() && content.indexOf('"') < 0) {
                content = '"' + content.replace(String.valueOf(separator), "\"" + separator + '"') + '"';
            }
            text.append(content).append(random.nextInt(oneOddIn) == 0 ? ENDS[random.nextInt(3)] : end);
            text.append(random.nextInt(oneOddIn) == 0 ? end : "");
        }
        if (random.nextInt(4) == 0) {
            text.setLength(text.length() - 1);
        }
        Charset charset = random.nextInt(6) == 0 ? Charset.forName("windows-1252") : StandardCharsets.UTF_8;
        return text.toString().getBytes(random.nextInt(40) == 0 ? StandardCharsets.UTF_16 : charset);
    }

    private String cell(String column, int row, boolean odd) {
        return switch (column) {
            case "worker_id" -> row < WORKERS.length && random.nextInt(3) > 0 ? WORKERS[row] : pick(WORKERS);
            case "test_date" -> odd || random.nextBoolean() ? pick(DATES, ODD_DATES, odd) : anyDate();
            case "birth_date", "hire_date", "end_date", "enrolled_from" -> pick(DATES, ODD_DATES, odd);
            case "sex" -> pick(new String[] {"F", "M", ""}, new String[] {"f", "x", " M"}, odd);
            case "language" -> pick(new String[] {"en", "es", ""}, new String[] {"EN", "fr"}, odd);
            case "twa_dba" ->
                pick(new String[] {"", "85", "90.5", "139.9"}, new String[] {"140", "140.1", "141", "loud"}, odd);
            case "purpose" -> pick(PURPOSES, ODD_PURPOSES, odd);
            case "hours_since_noise" -> pick(HOURS, ODD_HOURS, odd);
            case "protectors_worn" -> pick(new String[] {"yes", "no", ""}, new String[] {"Yes", "y", "true"}, odd);
            default ->
                column.startsWith("left_") || column.startsWith("right_")
                        ? pick(LEVELS, ODD_LEVELS, odd)
                        : pick(TEXTS, ODD_TEXTS, odd);
        };
    }

    private String anyDate() {
        return "20" + (10 + random.nextInt(16)) + "-0" + (1 + random.nextInt(9)) + "-1" + random.nextInt(10);
    }

    private String pick(String[] usual, String[] unusual, boolean odd) {
        return pick(odd ? unusual : usual);
    }

    private String pick(String... words) {
        return words[random.nextInt(words.length)];
    }

    private byte[] damaged(byte[] file) {
        byte[] bytes = file.clone();
        for (int i = random.nextInt(4); i >= 0; i--) {
            int at = random.nextInt(bytes.length);
            bytes[at] = random.nextBoolean()
                    ? (byte) random.nextInt(256)
                    : (byte) "\",;\t\r\n 0-'>".charAt(random.nextInt(11));
        }
        return bytes;
    }
}
