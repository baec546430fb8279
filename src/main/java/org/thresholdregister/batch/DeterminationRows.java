package org.thresholdregister.batch;

import java.util.Locale;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.columnar.JudgedPopulation;
import org.thresholdregister.core.columnar.JudgedRow;
import org.thresholdregister.core.columnar.Population;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

/** The rows of {@code determinations.csv} from columns, byte for byte as {@link DeterminationsFile} writes them. */
final class DeterminationRows {

    private static final byte[][] PURPOSES = CsvCells.ofWords(TestPurpose.values(), TestPurpose::word);
    private static final byte[][] EARS = CsvCells.ofWords(Ear.values(), Ear::word);
    private static final byte[][] OUTCOMES = CsvCells.ofWords(Outcome.values(), Outcome::word);
    private static final byte[][] RECORDABILITIES = CsvCells.ofWords(Recordability.values(), Recordability::word);
    private static final byte[][] ANSWERS =
            CsvCells.ofWords(Answer.values(), answer -> answer.name().toLowerCase(Locale.ROOT));
    private static final Frequency[] FREQUENCIES = Frequency.AVERAGED.toArray(Frequency[]::new);

    /** From the baseline's date to the answer. */
    private static final int CELLS_OF_A_COMPARISON = 5 + 2 * FREQUENCIES.length;

    private final Population population;
    private final byte[] ruleSet;
    private final boolean withReference;

    DeterminationRows(JudgedPopulation judged) {
        population = judged.population();
        JudgingOptions options = judged.options();
        ruleSet = CsvCells.of(options.ruleSet().word());
        withReference = DeterminationsFile.withReference(options);
    }

    void add(byte[] workerId, JudgedRow row, RowBytes bytes) {
        int test = row.test();
        bytes.add(workerId);
        bytes.add(CsvCells.ofDay(population.day(test)));
        bytes.add(PURPOSES[population.purpose(test).ordinal()]);
        bytes.add(EARS[row.ear().ordinal()]);
        bytes.add(ruleSet);
        addComparison(row, bytes);
        bytes.add(CsvCells.ofMean(row.levelSum()));
        bytes.add(OUTCOMES[row.outcome().ordinal()]);
        addAnswer(row, bytes);
        bytes.endRow();
    }

    private static void addComparison(JudgedRow row, RowBytes bytes) {
        Optional<Answer> shifted = row.standardShift();
        if (shifted.isEmpty()) {
            for (int i = 0; i < CELLS_OF_A_COMPARISON; i++) {
                bytes.add(CsvCells.BLANK);
            }
            return;
        }
        bytes.add(CsvCells.ofDay(row.baselineDay()));
        bytes.add(CsvCells.ofNumber(row.ageAtBaseline()));
        bytes.add(CsvCells.ofNumber(row.ageAtTest()));
        for (Frequency frequency : FREQUENCIES) {
            bytes.add(CsvCells.ofNumber(row.shift(frequency)));
        }
        for (Frequency frequency : FREQUENCIES) {
            bytes.add(CsvCells.ofNumber(row.allowance(frequency)));
        }
        bytes.add(CsvCells.ofMean(row.shiftSum()));
        bytes.add(ANSWERS[shifted.get().ordinal()]);
    }

    private void addAnswer(JudgedRow row, RowBytes bytes) {
        Optional<Recordability> recordable = row.recordable();
        bytes.add(recordable.isPresent() ? RECORDABILITIES[recordable.get().ordinal()] : CsvCells.BLANK);
        bytes.add(CsvCells.ofDay(row.retestByDay()));
        bytes.add(CsvCells.ofDay(row.notifyByDay()));
        bytes.add(CsvCells.ofDay(row.recordByDay()));
        if (withReference) {
            bytes.add(CsvCells.ofDay(row.referenceDay()));
            bytes.add(CsvCells.ofMean(row.referenceShiftSum()));
        }
    }
}
