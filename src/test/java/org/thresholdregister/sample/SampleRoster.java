package org.thresholdregister.sample;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.decision.Decision;

/**
 * Writes the files of the invented plant.
 *
 * <pre>
 * java -cp target/test-classes:target/classes org.thresholdregister.sample.SampleRoster sample-roster
 * java -cp target/test-classes:target/classes org.thresholdregister.sample.SampleRoster DIR 100000
 * </pre>
 *
 * The first rewrites the committed sample. The second writes a roster of that many workers, who all stay for ten years
 * and come to a baseline and about ten yearly tests each, retests aside; one worker is in memory at a time.
 */
final class SampleRoster {

    static final String ROSTER = "roster.csv";
    static final String AUDIOGRAMS = "audiograms.csv";
    static final String DECISIONS = "decisions.csv";
    static final String README = "README.md";

    private static final List<String> ROSTER_HEADER = List.of(
            "worker_id",
            "family_name",
            "given_name",
            "birth_date",
            "sex",
            "hire_date",
            "end_date",
            "site",
            "department",
            "job_title",
            "noise_group",
            "twa_dba",
            "enrolled_from",
            "email",
            "language");

    private static final List<String> DECISIONS_HEADER =
            List.of("worker_id", "ear", "test_date", "kind", "date", "by", "reason");

    private final Workforce workforce;

    SampleRoster(Workforce workforce) {
        this.workforce = workforce;
    }

    public static void main(String[] arguments) throws IOException {
        if (arguments.length < 1 || arguments.length > 2) {
            System.err.println("Usage: SampleRoster DIRECTORY [WORKERS]");
            System.exit(2);
        }
        Path directory = Path.of(arguments[0]);
        Workforce workforce =
                arguments.length == 1 ? Workforce.SAMPLE : new Workforce(Integer.parseInt(arguments[1]), false);
        SampleRoster sample = new SampleRoster(workforce);
        Files.createDirectories(directory);
        try (BufferedWriter roster = Files.newBufferedWriter(directory.resolve(ROSTER));
                BufferedWriter audiograms = Files.newBufferedWriter(directory.resolve(AUDIOGRAMS));
                BufferedWriter decisions = Files.newBufferedWriter(directory.resolve(DECISIONS))) {
            sample.write(roster, audiograms, decisions);
        }
        if (arguments.length == 1) {
            Files.writeString(directory.resolve(README), SampleReadme.text());
        }
    }

    /** Writes all three files, worker by worker in order of the worker ids. */
    void write(Writer roster, Writer audiograms, Writer decisions) throws IOException {
        writeRow(roster, ROSTER_HEADER);
        writeRow(audiograms, audiogramsHeader());
        writeRow(decisions, DECISIONS_HEADER);
        for (int number = 1; number <= workforce.size(); number++) {
            Worker worker = workforce.worker(number);
            writeRow(roster, worker.rosterCells());
            for (HearingTest test : worker.testsInOrder()) {
                writeRow(audiograms, cells(worker, test));
            }
            for (Decision decision : worker.decisionsInOrder()) {
                writeRow(decisions, cells(worker, decision));
            }
        }
    }

    private static List<String> audiogramsHeader() {
        List<String> header = new ArrayList<>(List.of("worker_id", "test_date", "purpose"));
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                header.add(ear.word() + "_" + frequency.hertz());
            }
        }
        header.addAll(List.of("hours_since_noise", "protectors_worn", "tester", "instrument", "transducer", "remark"));
        return header;
    }

    private static List<String> cells(Worker worker, HearingTest test) {
        List<String> cells = new ArrayList<>(
                List.of(worker.id, test.date().toString(), test.purpose().word()));
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                cells.add(cell(test.audiogram().threshold(ear, frequency)));
            }
        }
        cells.addAll(List.of(
                test.hoursSinceNoise(),
                test.protectorsWorn(),
                test.tester(),
                test.instrument(),
                test.transducer(),
                test.remark()));
        return cells;
    }

    private static String cell(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured(var level) -> Integer.toString(level.decibels());
            case Threshold.NoResponse(var limit) ->
                limit.map(level -> ">" + level.decibels()).orElse("NR");
            case Threshold.NotTested(var reason) ->
                switch (reason) {
                    case NOT_GIVEN -> "";
                    case DID_NOT_TEST -> "DNT";
                    case COULD_NOT_TEST -> "CNT";
                };
        };
    }

    private static List<String> cells(Worker worker, Decision decision) {
        return List.of(
                worker.id,
                decision.ears().word(),
                decision.testDate().toString(),
                decision.kind().word(),
                decision.decidedOn().toString(),
                decision.by(),
                decision.reason());
    }

    private static void writeRow(Writer writer, List<String> cells) throws IOException {
        String separator = "";
        for (String cell : cells) {
            writer.write(separator);
            writer.write(cell.contains(",") || cell.contains("\"") ? '"' + cell.replace("\"", "\"\"") + '"' : cell);
            separator = ",";
        }
        writer.write('\n');
    }
}
