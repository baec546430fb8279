package org.thresholdregister.intake;

import static org.thresholdregister.core.columnar.Population.NO_DAY;
import static org.thresholdregister.intake.PlainCells.NOT_PLAIN;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
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

    /** @param lastDay nobody was born after it */
    PlainWorkers(PlainRow<RosterColumn> row, int lastDay, PopulationBuilder population, WorkerRegister register) {
        this.row = row;
        this.lastDay = lastDay;
        this.population = population;
        this.register = register;
    }

    @Override
    public int take(byte[] bytes, int from, int to, int line) throws IOException {
        int length = row.moveTo(bytes, from, to);
        if (length == 0 || !areDaysPlain() || !areOtherCellsPlain()) {
            return 0;
        }
        int worker = register.add(
                bytes, row.start(RosterColumn.WORKER_ID), row.end(RosterColumn.WORKER_ID), line, row.contentHash());
        if (worker != PopulationBuilder.NO_WORKER) {
            addFacts(worker);
        }
        return length;
    }

    private boolean areDaysPlain() {
        int born = row.dayIfGiven(RosterColumn.BIRTH_DATE);
        int hired = row.dayIfGiven(RosterColumn.HIRE_DATE);
        int ended = row.dayIfGiven(RosterColumn.END_DATE);
        return born != NOT_PLAIN
                && born <= lastDay
                && hired != NOT_PLAIN
                && ended != NOT_PLAIN
                && (ended == NO_DAY || hired <= ended)
                && row.dayIfGiven(RosterColumn.ENROLLED_FROM) != NOT_PLAIN;
    }

    private boolean areOtherCellsPlain() {
        return row.isBareText(RosterColumn.WORKER_ID)
                && row.isBlankOrWord(RosterColumn.SEX, SEXES)
                && (row.isBlank(RosterColumn.SITE) || row.isBareText(RosterColumn.SITE))
                && (row.isBlank(RosterColumn.DEPARTMENT) || row.isBareText(RosterColumn.DEPARTMENT))
                && row.isBlankOrBelow(RosterReader.HIGHEST_TWA_DBA.intValue(), RosterColumn.TWA_DBA)
                && row.isBlankOrWord(RosterColumn.LANGUAGE, LANGUAGES);
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
