package org.thresholdregister.batch;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Random;

/**
 * Writes a roster and its audiograms of any size, to measure {@code evaluate} by: each worker with a baseline and nine
 * annual tests, some retests, hearing that worsens in some ears, and about one odd cell in a hundred. The same size and
 * seed give the same bytes.
 */
public final class LargeFiles {

    private static final int TESTS_OF_A_WORKER = 10;
    private static final int LEVELS = 14;
    private static final String[] SITES = {"Fernhollow", "Millbrook", "Quarry Lane", "Saltmarsh", "Tannery Row"};
    private static final String[] DEPARTMENTS = {"Batch house", "Furnace", "Grinding", "Kiln hall", "Moulds", "Packing"
    };
    private static final String[] FAMILY_NAMES = {"Abara", "Birch", "Castell", "Núñez", "Ostrom", "Quill", "Vale"};
    private static final String[] TESTERS = {"R. Vale", "T. Abara", "J. Quill"};
    private static final String[] UNUSUAL = {"", "DNT", "NR", ">95", ">90", "CNT", "", "NR"};
    private static final String[] BROKEN = {"125", "-15", "12.5", "x", " 20", "nr", "+10", "015"};

    private final Random random;
    private final StringBuilder row = new StringBuilder();

    private LargeFiles(long seed) {
        random = new Random(seed);
    }

    /** @param args a folder, how many workers, and a seed */
    public static void main(String[] args) throws IOException {
        write(Path.of(args[0]), Integer.parseInt(args[1]), Long.parseLong(args[2]));
    }

    /** Writes {@code roster.csv} and {@code audiograms.csv} into the folder. */
    static void write(Path folder, int workers, long seed) throws IOException {
        Files.createDirectories(folder);
        LargeFiles files = new LargeFiles(seed);
        try (BufferedWriter roster = Files.newBufferedWriter(folder.resolve("roster.csv"));
                BufferedWriter audiograms = Files.newBufferedWriter(folder.resolve("audiograms.csv"))) {
            roster.write("worker_id,birth_date,sex,family_name,given_name,hire_date,end_date,site,department,"
                    + "job_title,noise_group,twa_dba,enrolled_from,email,language\n");
            audiograms.write("worker_id,test_date,purpose,left_500,left_1000,left_2000,left_3000,left_4000,left_6000,"
                    + "left_8000,right_500,right_1000,right_2000,right_3000,right_4000,right_6000,right_8000,"
                    + "hours_since_noise,protectors_worn,tester,remark\n");
            for (int worker = 0; worker < workers; worker++) {
                files.writeWorker(String.format("W%06d", worker), roster, audiograms);
            }
        }
    }

    private void writeWorker(String id, BufferedWriter roster, BufferedWriter audiograms) throws IOException {
        LocalDate hired = LocalDate.of(2015, 1, 1).plusDays(random.nextInt(365));
        row.setLength(0);
        row.append(id).append(',');
        row.append(chance(200) ? "" : hired.minusDays(18 * 365 + random.nextInt(40 * 365)))
                .append(',');
        row.append(chance(200) ? "" : random.nextBoolean() ? "F" : "M").append(',');
        row.append(pick(FAMILY_NAMES)).append(",Robin,").append(hired).append(',');
        row.append(chance(20) ? hired.plusDays(random.nextInt(4500)) : "").append(',');
        row.append(chance(100) ? "" : pick(SITES)).append(',');
        row.append(chance(100) ? "\"Kiln, cold end\"" : pick(DEPARTMENTS)).append(',');
        row.append("operator,B,")
                .append(85 + random.nextInt(15))
                .append(',')
                .append(hired)
                .append(",,en\n");
        roster.append(row);
        writeTests(id, hired, audiograms);
    }

    private void writeTests(String id, LocalDate hired, BufferedWriter audiograms) throws IOException {
        int[] levels = new int[LEVELS];
        for (int i = 0; i < LEVELS; i++) {
            levels[i] = 5 * random.nextInt(5);
        }
        for (int year = 0; year < TESTS_OF_A_WORKER; year++) {
            LocalDate date = hired.plusDays(30 + 365L * year + random.nextInt(30));
            boolean worse = year > 0 && chance(12);
            for (int i = 0; worse && i < LEVELS; i++) {
                levels[i] += random.nextInt(2) * 5 * random.nextInt(4);
            }
            writeTest(id, date, year == 0 ? "baseline" : "annual", levels, audiograms);
            if (worse && chance(3)) {
                writeTest(id, date.plusDays(random.nextInt(40)), "retest", levels, audiograms);
            }
        }
    }

    private void writeTest(String id, LocalDate date, String purpose, int[] levels, BufferedWriter audiograms)
            throws IOException {
        row.setLength(0);
        row.append(chance(3000) ? "X" : "").append(id).append(',');
        row.append(chance(3000) ? "soon" : date).append(',').append(purpose);
        for (int level : levels) {
            row.append(',').append(cell(Math.min(level + 5 * (random.nextInt(3) - 1), 120)));
        }
        row.append(chance(3) ? ",14," : ",,").append(chance(5) ? "yes," : ",").append(pick(TESTERS));
        row.append(',').append(chance(300) ? "\"tired, \"\"cold\"\"\nonce more\"" : chance(50) ? "restless" : "");
        row.append('\n');
        audiograms.append(row);
        if (chance(2000)) {
            audiograms.append(row);
        } else if (chance(3000)) {
            row.setCharAt(row.length() - 1, '.');
            audiograms.append(row.append('\n'));
        }
    }

    private String cell(int level) {
        if (chance(100)) {
            return chance(50) ? pick(BROKEN) : pick(UNUSUAL);
        }
        return Integer.toString(level);
    }

    private boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    private String pick(String[] words) {
        return words[random.nextInt(words.length)];
    }
}
