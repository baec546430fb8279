package org.thresholdregister.intake;

import static org.thresholdregister.core.columnar.Population.NO_DAY;
import static org.thresholdregister.intake.PlainCells.NOT_PLAIN;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.columnar.PopulationBuilder;

/** Takes the plain rows of a roster file: those that {@link RosterReader} would accept without a word. */
final class PlainWorkers implements PlainRows {

    private static final PlainWords<Sex> SEXES = new PlainWords<>(List.of(Sex.values()), Sex::code);
    private static final PlainWords<Locale> LANGUAGES = new PlainWords<>(RosterReader.LOCALES, Locale::getLanguage);

    private final PlainRow<RosterColumn> row;
    private final int lastDay;
    private final PopulationBuilder population;
    private final WorkerRegister register;
    /** Those that the file has. */
    private final RosterColumn[] columns;

    /** @param lastDay nobody was born after it */
    PlainWorkers(PlainRow<RosterColumn> row, int lastDay, PopulationBuilder population, WorkerRegister register) {
        this.row = row;
        this.lastDay = lastDay;
        this.population = population;
        this.register = register;
        this.columns = Stream.of(RosterColumn.values()).filter(row::has).toArray(RosterColumn[]::new);
    }

    @Override
    public int take(byte[] bytes, int from, int to, int line) throws IOException {
        int length = row.moveTo(bytes, from, to);
        if (length == 0 || !areCellsPlain()) {
            return 0;
        }
        int worker = register.add(
                bytes, row.start(RosterColumn.WORKER_ID), row.end(RosterColumn.WORKER_ID), line, row.contentHash());
        if (worker != PopulationBuilder.NO_WORKER) {
            addFacts(worker);
        }
        return length;
    }

    private boolean areCellsPlain() {
        for (RosterColumn column : columns) {
            if (!isPlain(column)) {
                return false;
            }
        }
        return true;
    }

    /** Whether nothing is to be said of a cell. Without a default, so that no new column is forgotten. */
    private boolean isPlain(RosterColumn column) {
        return switch (column) {
            case WORKER_ID -> row.isBareText(column);
            case SITE, DEPARTMENT -> row.isBlank(column) || row.isBareText(column);
            case BIRTH_DATE -> row.dayIfGiven(column) != NOT_PLAIN && row.dayIfGiven(column) <= lastDay;
            case HIRE_DATE, ENROLLED_FROM -> row.dayIfGiven(column) != NOT_PLAIN;
            case END_DATE -> isPlainEnd(row.dayIfGiven(column), row.dayIfGiven(RosterColumn.HIRE_DATE));
            case SEX -> row.isBlankOrWord(column, SEXES);
            case LANGUAGE -> row.isBlankOrWord(column, LANGUAGES);
            case TWA_DBA -> row.isBlankOrBelow(RosterReader.HIGHEST_TWA_DBA.intValue(), column);
            case FAMILY_NAME, GIVEN_NAME, JOB_TITLE, NOISE_GROUP, EMAIL -> true;
        };
    }

    private static boolean isPlainEnd(int ended, int hired) {
        return ended != NOT_PLAIN && (ended == NO_DAY || hired <= ended);
    }

    private void addFacts(int worker) {
        Sex sex = row.word(RosterColumn.SEX, SEXES);
        if (sex != null) {
            population.setSex(worker, sex);
        }
        int born = row.dayIfGiven(RosterColumn.BIRTH_DATE);
        if (born != NO_DAY) {
            population.setBirthDay(worker, born);
        }
        int enrolledFrom = row.dayIfGiven(RosterColumn.ENROLLED_FROM);
        if (enrolledFrom != NO_DAY) {
            population.setEnrolledFrom(worker, enrolledFrom);
        }
        int ended = row.dayIfGiven(RosterColumn.END_DATE);
        if (ended != NO_DAY) {
            population.setEndDay(worker, ended);
        }
        register.setPlace(worker, row.text(RosterColumn.SITE), row.text(RosterColumn.DEPARTMENT));
    }
}
