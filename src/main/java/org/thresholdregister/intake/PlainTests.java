package org.thresholdregister.intake;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.columnar.PopulationBuilder;
import org.thresholdregister.core.columnar.ThresholdCode;

/** Takes the plain rows of an audiograms file: those that {@link AudiogramReader} would accept without a word. */
final class PlainTests implements PlainRows {

    private static final PlainWords<TestPurpose> PURPOSES =
            new PlainWords<>(List.of(TestPurpose.values()), TestPurpose::word);
    private static final PlainWords<String> YES_NO = new PlainWords<>(List.of("yes", "no"), word -> word);

    /** The columns of the thresholds, by {@link ThresholdCode#place}. */
    private static final AudiogramColumn[] THRESHOLDS = new AudiogramColumn[ThresholdCode.PER_AUDIOGRAM];

    static {
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                THRESHOLDS[ThresholdCode.place(ear, frequency)] = AudiogramColumn.of(ear, frequency);
            }
        }
    }

    private final PlainRow<AudiogramColumn> row;
    private final int lastDay;
    private final PopulationBuilder population;
    private final AudiogramRegister register;
    /** Those that the file has. */
    private final AudiogramColumn[] optionalColumns;

    private byte[] latestId = {};
    private int latestWorker = PopulationBuilder.NO_WORKER;
    private final short[] codes = new short[ThresholdCode.PER_AUDIOGRAM];

    /**
     * @param lastDay the last day of which tests are taken
     * @param population the workers whose tests are taken
     */
    PlainTests(PlainRow<AudiogramColumn> row, int lastDay, PopulationBuilder population, AudiogramRegister register) {
        this.row = row;
        this.lastDay = lastDay;
        this.population = population;
        this.register = register;
        this.optionalColumns = Stream.of(AudiogramColumn.values())
                .filter(column -> !column.required() && row.has(column))
                .toArray(AudiogramColumn[]::new);
    }

    @Override
    public int take(byte[] bytes, int from, int to, int line) throws IOException {
        int length = row.moveTo(bytes, from, to);
        if (length == 0 || !readThresholds() || !areOptionalCellsPlain()) {
            return 0;
        }
        int worker = worker(row.start(AudiogramColumn.WORKER_ID), row.end(AudiogramColumn.WORKER_ID), bytes);
        int day = row.day(AudiogramColumn.TEST_DATE);
        TestPurpose purpose = row.word(AudiogramColumn.PURPOSE, PURPOSES);
        if (worker == PopulationBuilder.NO_WORKER
                || purpose == null
                || day == PlainCells.NOT_PLAIN
                || day > lastDay
                || population.isBornAfter(worker, day)) {
            return 0;
        }
        register.add(population.addTest(worker, day, purpose, codes), line, row.contentHash());
        return length;
    }

    /** Rows of one worker mostly stand together, so that the id of the row before is tried before all others. */
    private int worker(int start, int end, byte[] bytes) {
        int length = end - start;
        if (length != latestId.length || !Arrays.equals(latestId, 0, length, bytes, start, end)) {
            latestId = Arrays.copyOfRange(bytes, start, end);
            latestWorker = population.findWorker(bytes, start, end);
        }
        return latestWorker;
    }

    private boolean readThresholds() {
        for (int place = 0; place < codes.length; place++) {
            int code = row.threshold(THRESHOLDS[place]);
            if (code == PlainCells.NOT_PLAIN) {
                return false;
            }
            codes[place] = (short) code;
        }
        return true;
    }

    private boolean areOptionalCellsPlain() {
        for (AudiogramColumn column : optionalColumns) {
            if (!isPlain(column)) {
                return false;
            }
        }
        return true;
    }

    /** Whether nothing is to be said of an optional cell. Without a default, so that no new column is forgotten. */
    private boolean isPlain(AudiogramColumn column) {
        return switch (column) {
            case HOURS_SINCE_NOISE -> row.isBlankOrBelow(AudiogramReader.MOST_HOURS.intValue(), column);
            case PROTECTORS_WORN -> row.isBlankOrWord(column, YES_NO);
            case LEFT_1000_REPEAT, RIGHT_1000_REPEAT -> row.threshold(column) != PlainCells.NOT_PLAIN;
            case TESTER, INSTRUMENT, TRANSDUCER, REMARK -> true;
            case WORKER_ID, TEST_DATE, PURPOSE -> throw new IllegalArgumentException("not optional: " + column);
            case LEFT_500, LEFT_1000, LEFT_2000, LEFT_3000, LEFT_4000, LEFT_6000, LEFT_8000 ->
                throw new IllegalArgumentException("not optional: " + column);
            case RIGHT_500, RIGHT_1000, RIGHT_2000, RIGHT_3000, RIGHT_4000, RIGHT_6000, RIGHT_8000 ->
                throw new IllegalArgumentException("not optional: " + column);
        };
    }
}
