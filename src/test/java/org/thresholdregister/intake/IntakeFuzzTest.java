package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Damaged files: nothing is thrown but the one answer for files that cannot be used, and no line goes unmentioned. */
class IntakeFuzzTest {

    private static final String ROSTER = "worker_id,birth_date,sex,family_name\n001,1980-01-01,F,\"Ost, van\"\n"
            + "002,,M,Núñez\n003,1990-05-05,,\n";
    private static final String AUDIOGRAMS = Csv.AUDIOGRAM_HEADER.strip() + ",remark\n"
            + "001,2024-03-01,baseline" + Csv.LEVELS + ",\n"
            + "001,2025-03-01,annual,>95,NR,DNT,,5,5,5,5,5,5,5,5,5,5,\"two\nlines, \"\"quoted\"\"\"\n"
            + "002,2025-03-01,annual" + Csv.LEVELS + ",fine\n\n"
            + "003,2025-03-01,exit" + Csv.LEVELS + ",\n"
            + "003,2025-03-01,exit" + Csv.LEVELS + ",\n";
    private static final String DECISIONS = Csv.DECISION_HEADER
            + "001,left,2025-03-01,recorded,2025-03-20,R. Vale,\n002,both,2025-03-01,baseline,2025-03-20,,\n";
    private static final byte[] SPICE = "\",;\t|\r\n\n\"'=>-0 \u00e9\u0000".getBytes(StandardCharsets.ISO_8859_1);

    @Test
    void randomBytesAreUnusableOrReported() throws IOException {
        Random random = new Random(42);
        for (int round = 0; round < 1_000; round++) {
            byte[] bytes = new byte[random.nextInt(400)];
            random.nextBytes(bytes);
            readAll(bytes, bytes, bytes);
        }
    }

    @Test
    void damagedFilesAreUnusableOrReportedLineByLine() throws IOException {
        Random random = new Random(4242);
        int usable = 0;
        for (int round = 0; round < 3_000; round++) {
            usable += readAll(damaged(ROSTER, random), damaged(AUDIOGRAMS, random), damaged(DECISIONS, random)) ? 1 : 0;
        }
        assertThat(usable).as("files that could still be read").isBetween(750, 2_750);
    }

    private static byte[] damaged(String text, Random random) {
        Charset charset = random.nextBoolean() ? StandardCharsets.UTF_8 : Charset.forName("windows-1252");
        byte[] bytes = text.getBytes(charset);
        int headerEnd = text.indexOf('\n');
        int from = random.nextInt(8) == 0 ? 0 : headerEnd;
        for (int i = random.nextInt(4); i > 0; i--) {
            int at = from + random.nextInt(bytes.length - from);
            byte spice = random.nextInt(4) == 0 ? (byte) random.nextInt(256) : SPICE[random.nextInt(SPICE.length)];
            bytes = switch (random.nextInt(3)) {
                case 0 -> splice(bytes, at, at, spice);
                case 1 -> splice(bytes, at, at + 1, spice);
                default -> splice(bytes, at, at + 1);
            };
        }
        return bytes;
    }

    private static byte[] splice(byte[] bytes, int start, int end, byte... middle) {
        byte[] spliced = new byte[start + middle.length + bytes.length - end];
        System.arraycopy(bytes, 0, spliced, 0, start);
        System.arraycopy(middle, 0, spliced, start, middle.length);
        System.arraycopy(bytes, end, spliced, start + middle.length, bytes.length - end);
        return spliced;
    }

    /** Reads the files and checks that each line is accounted for; false where a file was unusable. */
    private static boolean readAll(byte[] roster, byte[] audiograms, byte[] decisions) throws IOException {
        FileSet files = FileSet.of(SourceFile.of("roster.csv", roster), SourceFile.of("audiograms.csv", audiograms))
                .withDecisions(SourceFile.of("decisions.csv", decisions));
        ProblemList problems = new ProblemList();
        Intake intake;
        try {
            intake = Intake.read(files, Csv.AS_OF, problems);
        } catch (UnusableFileException unusable) {
            assertThat(unusable.getMessage()).contains(unusable.fileName());
            return false;
        }
        problems.inFileOrder().forEach(problem -> assertThat(problem.problem()).isNotBlank());
        for (Table table : Table.values()) {
            SourceFile file = files.roster().orElseThrow();
            if (table != Table.ROSTER) {
                file = table == Table.AUDIOGRAMS
                        ? files.audiograms().orElseThrow()
                        : files.decisions().orElseThrow();
            }
            assertEveryLineIsAccountedFor(table, file, intake, problems);
        }
        return true;
    }

    private static void assertEveryLineIsAccountedFor(Table table, SourceFile file, Intake intake, ProblemList problems)
            throws IOException {
        BitSet mentioned = new BitSet();
        BitSet leftOut = new BitSet();
        for (RowProblem problem : problems.inFileOrder()) {
            if (problem.table() == table) {
                mentioned.set(problem.line());
                boolean doesNotCount =
                        problem.effect() == Effect.ROW_LEFT_OUT || problem.kind() == ProblemKind.SAME_ROW_AGAIN;
                leftOut.set(problem.line(), doesNotCount || leftOut.get(problem.line()));
            }
        }
        assertThat(intake.rowsKept(table) + leftOut.cardinality())
                .as("rows kept and rows left out of %s", table)
                .isEqualTo(intake.rowsRead(table));
        try (LineSource lines = TextEncoding.detect(file).open()) {
            LineSource.Line line;
            LineSource.Line rowAbove = null;
            while ((line = lines.next()) != null) {
                boolean kept = intake.keeps(table, line.number());
                assertThat(kept && leftOut.get(line.number())).isFalse();
                boolean blank = line.text().chars().allMatch(c -> c <= ' ' || ",;|\"\u00a0".indexOf(c) >= 0);
                boolean header = rowAbove == null && !blank;
                if (kept || header || mentioned.get(line.number())) {
                    rowAbove = line;
                } else if (!blank) {
                    assertThat(rowAbove)
                            .as("line %d of %s can only be the rest of a row above it", line.number(), table)
                            .isNotNull()
                            .extracting(LineSource.Line::text)
                            .asString()
                            .contains("\"");
                }
            }
        }
    }
}
