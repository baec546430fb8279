package org.thresholdregister.batch;

import static org.thresholdregister.core.columnar.Population.NO_DAY;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
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

    /** In place of everything from the baseline's date to the answer. */
    private static final byte[] NO_COMPARISON = CsvCells.blanks(5 + 2 * FREQUENCIES.length);

    private static final byte[] NO_DATES = CsvCells.blanks(3);

    private final Population population;
    /** An ear and the rule set, by the ordinal of the ear. */
    private final byte[][] earAndRules;

    private final boolean withReference;

    /** What the rows of both ears of a test begin with. */
    private final RowBytes beginning = new RowBytes();

    private int testOfBeginning = Population.NO_TEST;

    DeterminationRows(JudgedPopulation judged) {
        population = judged.population();
        JudgingOptions options = judged.options();
        byte[] ruleSet = CsvCells.of(options.ruleSet().word());
        earAndRules = Stream.of(EARS).map(ear -> CsvCells.ofAll(ear, ruleSet)).toArray(byte[][]::new);
        withReference = DeterminationsFile.withReference(options);
    }

    void add(byte[] workerId, JudgedRow row, RowBytes bytes) {
        addBeginning(workerId, row.test(), bytes);
        bytes.add(earAndRules[row.ear().ordinal()]);
        addComparison(row, bytes);
        bytes.add(CsvCells.ofMean(row.levelSum()));
        bytes.add(OUTCOMES[row.outcome().ordinal()]);
        addAnswer(row, bytes);
        bytes.endRow();
    }

    private void addBeginning(byte[] workerId, int test, RowBytes bytes) {
        if (test != testOfBeginning) {
            testOfBeginning = test;
            beginning.clear();
            beginning.add(workerId);
            beginning.add(CsvCells.ofDay(population.day(test)));
            beginning.add(PURPOSES[population.purpose(test).ordinal()]);
        }
        bytes.add(beginning);
    }

    private static void addComparison(JudgedRow row, RowBytes bytes) {
        Optional<Answer> shifted = row.standardShift();
        if (shifted.isEmpty()) {
            bytes.add(NO_COMPARISON);
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
        addDates(row, bytes);
        if (withReference) {
            bytes.add(CsvCells.ofDay(row.referenceDay()));
            bytes.add(CsvCells.ofMean(row.referenceShiftSum()));
        }
    }

    private static void addDates(JudgedRow row, RowBytes bytes) {
        int retestBy = row.retestByDay();
        int notifyBy = row.notifyByDay();
        int recordBy = row.recordByDay();
        if (retestBy == NO_DAY && notifyBy == NO_DAY && recordBy == NO_DAY) {
            bytes.add(NO_DATES);
            return;
        }
        bytes.add(CsvCells.ofDay(retestBy));
        bytes.add(CsvCells.ofDay(notifyBy));
        bytes.add(CsvCells.ofDay(recordBy));
    }
}
