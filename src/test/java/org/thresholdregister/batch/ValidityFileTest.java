package org.thresholdregister.batch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import com.opencsv.CSVReaderHeaderAware;
import com.opencsv.exceptions.CsvException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code evaluate --validity}, on the sample roster and on a few rows. */
class ValidityFileTest {

    private static final Path SAMPLE = Path.of("sample-roster");
    private static final String DAY = "2026-11-24";

    @TempDir
    Path folder;

    private final StringWriter errors = new StringWriter();

    private int evaluate(Path roster, Path audiograms, Path out, String... options) {
        List<String> arguments = new ArrayList<>(List.of("evaluate", "--as-of", DAY));
        arguments.addAll(List.of("--roster", roster.toString(), "--audiograms", audiograms.toString()));
        arguments.addAll(List.of("--out", out.toString()));
        arguments.addAll(List.of(options));
        return RegisterCommand.commandLine()
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(errors, true))
                .execute(arguments.toArray(String[]::new));
    }

    private int evaluateSample(Path out, String... options) {
        return evaluate(SAMPLE.resolve("roster.csv"), SAMPLE.resolve("audiograms.csv"), out, options);
    }

    private static List<Map<String, String>> flags(Path out) throws IOException, CsvException {
        List<Map<String, String>> rows = new ArrayList<>();
        try (var reader = new CSVReaderHeaderAware(Files.newBufferedReader(out.resolve("validity.csv")))) {
            for (Map<String, String> row = reader.readMap(); row != null; row = reader.readMap()) {
                rows.add(row);
            }
        }
        return rows;
    }

    private static Map<String, byte[]> files(Path out) throws IOException {
        Map<String, byte[]> files = new HashMap<>();
        try (Stream<Path> paths = Files.list(out)) {
            for (Path path : paths.toList()) {
                files.put(path.getFileName().toString(), Files.readAllBytes(path));
            }
        }
        return files;
    }

    @Test
    void theExchangedEarsOfTheSampleAreFoundAndNoOthers() throws Exception {
        assertThat(evaluateSample(folder, "--validity")).isZero();

        assertThat(Files.readAllLines(folder.resolve("validity.csv")).getFirst())
                .isEqualTo("worker_id,test_date,purpose,ear,frequency,flag,reason,source");
        List<Map<String, String>> flags = flags(folder);
        assertThat(flags.stream().filter(row -> row.get("flag").equals("ears-look-swapped")))
                .extracting(row -> row.get("worker_id"), row -> row.get("test_date"), row -> row.get("ear"))
                .containsExactly(tuple("FG-0124", "2020-10-06", "both"));
        assertThat(flags)
                .extracting(row -> row.get("flag"))
                .doesNotContain("looks-exchanged-with-another-worker", "room-noise")
                .contains("quiet-time-short", "frequencies-missing", "could-not-be-tested");
        assertThat(flags).allSatisfy(row -> {
            assertThat(row.get("reason")).endsWith(".");
            assertThat(row.get("source")).isNotBlank();
        });
    }

    @Test
    void noOtherFileChangesByAByte() throws Exception {
        Path without = folder.resolve("without");
        Path with = folder.resolve("with");
        assertThat(evaluateSample(without, "--workings")).isZero();
        assertThat(evaluateSample(with, "--workings", "--validity")).isZero();

        Map<String, byte[]> plain = files(without);
        Map<String, byte[]> flagged = files(with);
        assertThat(flagged.remove("validity.csv")).isNotEmpty();
        assertThat(flagged).containsOnlyKeys(plain.keySet());
        plain.forEach((name, bytes) -> assertThat(flagged.get(name)).as(name).isEqualTo(bytes));

        assertThat(evaluateSample(with)).isZero();
        assertThat(with.resolve("validity.csv")).as("of an earlier run").doesNotExist();
    }

    @Test
    void theOrderOfTheInputRowsDoesNotMatter() throws Exception {
        Path first = folder.resolve("first");
        Path second = folder.resolve("second");
        assertThat(evaluateSample(first, "--validity")).isZero();
        Random random = new Random(7);
        assertThat(evaluate(shuffled("roster.csv", random), shuffled("audiograms.csv", random), second, "--validity"))
                .isZero();
        assertThat(second.resolve("validity.csv")).hasSameTextualContentAs(first.resolve("validity.csv"));
    }

    private Path shuffled(String name, Random random) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(SAMPLE.resolve(name)));
        String header = lines.removeFirst();
        Collections.shuffle(lines, random);
        lines.addFirst(header);
        return Files.write(folder.resolve(name), lines);
    }

    /** W1 and W2 were tested on the same day at the same site, and their tests filed under each other's numbers. */
    @Test
    void testsOfTheSameDayAndSiteAreCompared() throws Exception {
        Path out = folder.resolve("out");
        Path audiograms = Files.writeString(folder.resolve("audiograms.csv"), """
                worker_id,test_date,purpose,left_500,left_1000,left_2000,left_3000,left_4000,left_6000,left_8000,right_500,right_1000,right_2000,right_3000,right_4000,right_6000,right_8000,hours_since_noise,transducer
                W1,2024-03-05,baseline,5,5,5,10,10,15,10,5,5,10,10,10,15,10,13,insert
                W2,2024-04-05,baseline,10,15,30,45,55,50,40,10,15,30,40,55,50,40,15,insert
                W1,2025-03-05,annual,10,15,30,45,55,50,40,10,15,30,40,55,50,40,1,insert
                W2,2025-03-05,annual,5,5,5,10,10,15,10,5,5,10,10,10,15,10,1,insert
                W3,2025-03-05,annual,5,5,5,10,10,65,10,5,5,10,10,10,10,10,,insert
                """);
        Path sameSite = Files.writeString(
                folder.resolve("roster.csv"), "worker_id,birth_date,sex,site\nW1,,,Mill\nW2,,,Mill\nW3,,,Mill\n");

        assertThat(evaluate(sameSite, audiograms, out, "--validity")).isZero();
        assertThat(flags(out).stream()
                        .filter(row -> !row.get("flag").contains("previous")
                                && !row.get("flag").contains("better")))
                .extracting(
                        row -> row.get("worker_id"),
                        row -> row.get("test_date"),
                        row -> row.get("ear"),
                        row -> row.get("frequency"),
                        row -> row.get("flag"))
                .containsExactly(
                        tuple("W1", "2024-03-05", "both", "", "quiet-time-short"),
                        tuple("W1", "2025-03-05", "both", "", "looks-exchanged-with-another-worker"),
                        tuple("W2", "2025-03-05", "both", "", "looks-exchanged-with-another-worker"),
                        tuple("W3", "2025-03-05", "both", "", "quiet-time-not-on-record"),
                        tuple("W3", "2025-03-05", "left", "6000", "masking-called-for"));

        Path otherSites = Files.writeString(
                folder.resolve("roster.csv"), "worker_id,birth_date,sex,site\nW1,,,Mill\nW2,,,Yard\nW3,,,Mill\n");
        assertThat(evaluate(otherSites, audiograms, out, "--validity", "--rules", "niosh"))
                .isZero();
        assertThat(flags(out))
                .extracting(row -> row.get("flag"))
                .doesNotContain("looks-exchanged-with-another-worker", "quiet-time-short");
    }
}
