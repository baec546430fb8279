package org.thresholdregister.intake;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.intake.CellReader.ThresholdCell;
import org.thresholdregister.intake.CellReader.Words;

/** Reads an audiograms file row by row. Whether a test stands in it twice is for the receiver of the rows to see. */
public final class AudiogramReader {

    static final BigDecimal MOST_HOURS = BigDecimal.valueOf(999_999);
    private static final Words<TestPurpose> PURPOSES = new Words<>(List.of(TestPurpose.values()), TestPurpose::word);
    private static final Words<Boolean> YES_NO = new Words<>(List.of(true, false), yes -> yes ? "yes" : "no");

    private final LocalDate asOf;
    private final ExistingRecords existing;
    private final ProblemSink problems;

    /**
     * @param asOf the last day of which tests are taken
     * @param existing the workers whose tests are taken
     */
    public AudiogramReader(LocalDate asOf, ExistingRecords existing, ProblemSink problems) {
        this.asOf = asOf;
        this.existing = existing;
        this.problems = problems;
    }

    /**
     * Reads the whole file and hands on every row that is not left out, in the order of the file.
     *
     * @return how many rows the file has, blank ones not counted
     */
    public int read(SourceFile file, Consumer<AudiogramRow> rows) throws IOException, UnusableFileException {
        return read(file, (header, separator, encoding) -> PlainRows.NONE, rows);
    }

    /** Likewise, but hands on only those rows that are not taken as plain. */
    int read(SourceFile file, TableReader.PlainRowsFactory<AudiogramColumn> plain, Consumer<AudiogramRow> rows)
            throws IOException, UnusableFileException {
        return new TableReader<>(Table.AUDIOGRAMS, AudiogramColumn.values(), file, problems).read(plain, row -> {
            Optional<AudiogramRow> test = parse(row);
            row.reportTo(problems);
            test.ifPresent(rows);
        });
    }

    private Optional<AudiogramRow> parse(Row<AudiogramColumn> row) {
        Optional<WorkerFacts> worker = KnownWorker.of(row, AudiogramColumn.WORKER_ID, existing);
        Optional<LocalDate> date = row.requiredDate(AudiogramColumn.TEST_DATE);
        date.ifPresent(day -> checkDate(row, day, worker.flatMap(WorkerFacts::birthDate)));
        Optional<TestPurpose> purpose = row.requiredWord(AudiogramColumn.PURPOSE, PURPOSES);
        Audiogram.Builder audiogram =
                new Audiogram.Builder(date.orElse(LocalDate.EPOCH), purpose.orElse(TestPurpose.OTHER));
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                audiogram.set(ear, frequency, threshold(row, AudiogramColumn.of(ear, frequency)));
            }
        }
        AudiogramRow test = new AudiogramRow(
                row.line(),
                row.workerId(AudiogramColumn.WORKER_ID),
                audiogram.build(),
                row.decimal(AudiogramColumn.HOURS_SINCE_NOISE, MOST_HOURS),
                row.word(AudiogramColumn.PROTECTORS_WORN, YES_NO, Effect.CELL_LEFT_BLANK),
                row.text(AudiogramColumn.TESTER),
                row.text(AudiogramColumn.INSTRUMENT),
                row.text(AudiogramColumn.TRANSDUCER),
                row.text(AudiogramColumn.REMARK),
                PerEar.from(ear -> threshold(row, AudiogramColumn.repeatAt1000Hz(ear))),
                row.contentHash());
        return row.isLeftOut() ? Optional.empty() : Optional.of(test);
    }

    private void checkDate(Row<AudiogramColumn> row, LocalDate date, Optional<LocalDate> birthDate) {
        if (date.isAfter(asOf)) {
            row.problem(
                    AudiogramColumn.TEST_DATE, ProblemKind.TESTED_AFTER_AS_OF, asOf.toString(), Effect.ROW_LEFT_OUT);
        }
        if (birthDate.isPresent() && date.isBefore(birthDate.get())) {
            row.problem(AudiogramColumn.TEST_DATE, ProblemKind.TESTED_BEFORE_BIRTH, "", Effect.ROW_LEFT_OUT);
        }
    }

    /** Not given where the cell cannot be read, which is reported. */
    private static Threshold threshold(Row<AudiogramColumn> row, AudiogramColumn column) {
        return switch (CellReader.threshold(row.cell(column))) {
            case ThresholdCell.Given given -> given.threshold();
            case ThresholdCell.Unreadable unreadable -> {
                row.problem(column, unreadable.kind(), "", Effect.CELL_LEFT_BLANK);
                yield Threshold.notGiven();
            }
        };
    }
}
