package org.thresholdregister.benchmark;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;

/**
 * A roster and its audiograms of any size, for measuring: ten tests a worker, filed year after year as they were made.
 * Every row is in order; what bad rows cost is not measured.
 */
record BenchmarkFiles(Path roster, Path audiograms, int audiogramCount) {

    /** The day on which the files are judged; no test is later. */
    static final LocalDate AS_OF = LocalDate.of(2026, 6, 30);

    static final int TESTS_PER_WORKER = 10;

    private static final String ROSTER_HEADER = "worker_id,birth_date,sex,site,department,enrolled_from\n";
    private static final String AUDIOGRAMS_HEADER = "worker_id,test_date,purpose,"
            + "left_500,left_1000,left_2000,left_3000,left_4000,left_6000,left_8000,"
            + "right_500,right_1000,right_2000,right_3000,right_4000,right_6000,right_8000\n";

    /** @throws IllegalArgumentException if the number of audiograms is not one of whole workers */
    static BenchmarkFiles write(Path folder, int audiogramCount, long seed) throws IOException {
        if (audiogramCount < TESTS_PER_WORKER || audiogramCount % TESTS_PER_WORKER != 0) {
            throw new IllegalArgumentException(
                    "each worker has " + TESTS_PER_WORKER + " audiograms, so there cannot be " + audiogramCount);
        }
        InventedWorker[] workers = new InventedWorker[audiogramCount / TESTS_PER_WORKER];
        for (int i = 0; i < workers.length; i++) {
            workers[i] = new InventedWorker(i, seed);
        }
        Files.createDirectories(folder);
        BenchmarkFiles files =
                new BenchmarkFiles(folder.resolve("roster.csv"), folder.resolve("audiograms.csv"), audiogramCount);
        files.writeRoster(workers);
        files.writeAudiograms(workers);
        return files;
    }

    private void writeRoster(InventedWorker[] workers) throws IOException {
        try (BufferedWriter writer = Files.newBufferedWriter(roster, StandardCharsets.UTF_8)) {
            writer.write(ROSTER_HEADER);
            for (InventedWorker worker : workers) {
                writer.write(String.join(
                        ",",
                        worker.workerId(),
                        worker.birthDate(),
                        worker.sex(),
                        worker.site(),
                        worker.department(),
                        worker.enrolledFrom().toString()));
                writer.write('\n');
            }
        }
    }

    private void writeAudiograms(InventedWorker[] workers) throws IOException {
        try (BufferedWriter writer = Files.newBufferedWriter(audiograms, StandardCharsets.UTF_8)) {
            writer.write(AUDIOGRAMS_HEADER);
            for (int round = 0; round < TESTS_PER_WORKER; round++) {
                for (InventedWorker worker : workers) {
                    worker.takeTest();
                    writer.write(worker.workerId());
                    writer.write(',');
                    writer.write(worker.date().toString());
                    writer.write(',');
                    writer.write(worker.purpose());
                    for (String cell : worker.cells()) {
                        writer.write(',');
                        writer.write(cell);
                    }
                    writer.write('\n');
                }
            }
        }
    }
}
