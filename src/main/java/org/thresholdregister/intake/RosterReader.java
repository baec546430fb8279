package org.thresholdregister.intake;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.intake.CellReader.Words;

/** Reads a roster file row by row. Whether a worker stands in it twice is for the receiver of the rows to see. */
public final class RosterReader {

    static final BigDecimal HIGHEST_TWA_DBA = BigDecimal.valueOf(140);
    private static final Words<Sex> SEXES = new Words<>(List.of(Sex.values()), Sex::code);
    static final List<Locale> LOCALES = List.of(Locale.ENGLISH, Locale.of("es"));
    private static final Words<Locale> LANGUAGES = new Words<>(LOCALES, Locale::getLanguage);

    private final LocalDate asOf;
    private final ProblemSink problems;

    /** @param asOf the day the file is read for; nobody was born after it */
    public RosterReader(LocalDate asOf, ProblemSink problems) {
        this.asOf = asOf;
        this.problems = problems;
    }

    /**
     * Reads the whole file and hands on every row that is not left out, in the order of the file.
     *
     * @return how many rows the file has, blank ones not counted
     */
    public int read(SourceFile file, Consumer<RosterRow> rows) throws IOException, UnusableFileException {
        return read(file, (header, separator, encoding) -> PlainRows.NONE, rows);
    }

    /** Likewise, but hands on only those rows that are not taken as plain. */
    int read(SourceFile file, TableReader.PlainRowsFactory<RosterColumn> plain, Consumer<RosterRow> rows)
            throws IOException, UnusableFileException {
        return new TableReader<>(Table.ROSTER, RosterColumn.values(), file, problems).read(plain, row -> {
            RosterRow worker = parse(row);
            row.reportTo(problems);
            if (!row.isLeftOut()) {
                rows.accept(worker);
            }
        });
    }

    private RosterRow parse(Row<RosterColumn> row) {
        row.requireCell(RosterColumn.WORKER_ID);
        row.requireReadable(RosterColumn.WORKER_ID);
        Optional<LocalDate> hireDate = row.date(RosterColumn.HIRE_DATE, Effect.CELL_LEFT_BLANK);
        return new RosterRow(
                row.line(),
                row.workerId(RosterColumn.WORKER_ID),
                birthDate(row),
                row.word(RosterColumn.SEX, SEXES, Effect.CELL_LEFT_BLANK),
                row.text(RosterColumn.FAMILY_NAME),
                row.text(RosterColumn.GIVEN_NAME),
                hireDate,
                endDate(row, hireDate),
                row.isGivenBlank(RosterColumn.END_DATE),
                row.text(RosterColumn.SITE),
                row.text(RosterColumn.DEPARTMENT),
                row.text(RosterColumn.JOB_TITLE),
                row.text(RosterColumn.NOISE_GROUP),
                row.decimal(RosterColumn.TWA_DBA, HIGHEST_TWA_DBA),
                row.date(RosterColumn.ENROLLED_FROM, Effect.CELL_LEFT_BLANK),
                row.text(RosterColumn.EMAIL),
                row.word(RosterColumn.LANGUAGE, LANGUAGES, Effect.CELL_LEFT_BLANK),
                row.contentHash());
    }

    private Optional<LocalDate> birthDate(Row<RosterColumn> row) {
        Optional<LocalDate> birthDate = row.date(RosterColumn.BIRTH_DATE, Effect.CELL_LEFT_BLANK);
        if (birthDate.isPresent() && birthDate.get().isAfter(asOf)) {
            row.problem(RosterColumn.BIRTH_DATE, ProblemKind.BORN_AFTER_AS_OF, asOf.toString(), Effect.CELL_LEFT_BLANK);
            return Optional.empty();
        }
        return birthDate;
    }

    private static Optional<LocalDate> endDate(Row<RosterColumn> row, Optional<LocalDate> hireDate) {
        Optional<LocalDate> endDate = row.date(RosterColumn.END_DATE, Effect.CELL_LEFT_BLANK);
        if (endDate.isPresent() && hireDate.isPresent() && endDate.get().isBefore(hireDate.get())) {
            row.problem(
                    RosterColumn.END_DATE,
                    ProblemKind.ENDED_BEFORE_HIRED,
                    hireDate.get().toString(),
                    Effect.CELL_LEFT_BLANK);
            return Optional.empty();
        }
        return endDate;
    }
}
