package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ProblemSpoolTest {

    @TempDir
    Path directory;

    @Test
    void theSpoolGivesTheSameOrderAsTheList() throws Exception {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            ProblemList list = new ProblemList();
            try (ProblemSpool spool = new ProblemSpool(directory)) {
                for (int i = random.nextInt(100); i > 0; i--) {
                    RowProblem problem = problem(random);
                    list.report(problem);
                    spool.report(problem);
                }
                assertThat(all(spool)).isEqualTo(list.inFileOrder());
                assertThat(all(spool)).as("read again").isEqualTo(list.inFileOrder());
            }
        }
    }

    @Test
    void manyProblemsSurviveTheFile() throws Exception {
        try (ProblemSpool spool = new ProblemSpool(directory)) {
            for (int run = 0; run < 3; run++) {
                for (int line = 1; line <= 20_000; line++) {
                    spool.report(new RowProblem(
                            Table.AUDIOGRAMS,
                            "a.csv",
                            line,
                            "",
                            "run " + run,
                            ProblemKind.EXTRA_CELLS,
                            "",
                            Effect.NOTE));
                }
            }
            List<RowProblem> problems = all(spool);
            assertThat(problems).hasSize(60_000);
            for (int i = 0; i < problems.size(); i++) {
                assertThat(problems.get(i).line()).isEqualTo(1 + i / 3);
                assertThat(problems.get(i).value()).isEqualTo("run " + i % 3);
            }
        }
    }

    @Test
    void readingThreeFilesGivesFewRunsToMerge() throws Exception {
        String header = Csv.AUDIOGRAM_HEADER.strip() + ",tester\n";
        StringBuilder audiograms = new StringBuilder(header);
        StringBuilder decisions = new StringBuilder(Csv.DECISION_HEADER);
        StringBuilder roster = new StringBuilder(Csv.ROSTER_HEADER);
        for (int i = 0; i < 300; i++) {
            roster.append(i % 100).append(",soon,X\n");
            audiograms
                    .append(i % 50)
                    .append(",2025-03-01,annual,x")
                    .append(Csv.LEVELS.substring(2))
                    .append("\n");
            audiograms.append(i).append(",2025-03-02,annual,x\n");
            decisions.append(i % 50).append(",left,2025-03-03,recorded,2025-03-02,,\n");
        }
        FileSet files = FileSet.of(
                        Csv.file("roster.csv", roster.toString()), Csv.file("audiograms.csv", audiograms.toString()))
                .withDecisions(Csv.file("decisions.csv", decisions.toString()));
        List<RowProblem> arrival = new ArrayList<>();
        ProblemList list = new ProblemList();
        try (ProblemSpool spool = new ProblemSpool(directory)) {
            Intake.read(files, Csv.AS_OF, problem -> {
                arrival.add(problem);
                list.report(problem);
                spool.report(problem);
            });
            assertThat(all(spool)).isEqualTo(list.inFileOrder());
        }
        int runs = 1;
        for (int i = 1; i < arrival.size(); i++) {
            runs += RowProblem.FILE_ORDER.compare(arrival.get(i - 1), arrival.get(i)) > 0 ? 1 : 0;
        }
        assertThat(arrival).hasSizeGreaterThan(2_000);
        assertThat(runs)
                .as("only the duplicates of a file begin a run of their own")
                .isEqualTo(1 + Table.values().length);
    }

    @Test
    void nothingIsLeftBehind() throws Exception {
        try (ProblemSpool spool = new ProblemSpool(directory)) {
            spool.report(problem(new Random(1)));
            assertThat(all(spool)).hasSize(1);
        }
        try (var files = Files.list(directory)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void longValuesAreCutOffBetweenCharacters() {
        String value = "x".repeat(RowProblem.LONGEST_TEXT - 1) + "🔔🔔";
        RowProblem problem =
                new RowProblem(Table.ROSTER, "r.csv", 2, "", value, ProblemKind.TOO_LONG, "", Effect.ROW_LEFT_OUT);
        assertThat(problem.value()).isEqualTo("x".repeat(RowProblem.LONGEST_TEXT - 1) + "…");
    }

    private static RowProblem problem(Random random) {
        Table table = Table.values()[random.nextInt(3)];
        String column = random.nextInt(4) == 0
                ? ""
                : table.columns().get(random.nextInt(table.columns().size())).columnName();
        return new RowProblem(
                table,
                table + ".csv",
                random.nextInt(20),
                column,
                List.of("", "é", "🔔", "\uD83D", "\0").get(random.nextInt(5)),
                ProblemKind.values()[random.nextInt(ProblemKind.values().length)],
                "detail",
                Effect.values()[random.nextInt(3)]);
    }

    private static List<RowProblem> all(ProblemSpool spool) throws Exception {
        List<RowProblem> problems = new ArrayList<>();
        spool.forEachInFileOrder(problems::add);
        return problems;
    }
}
