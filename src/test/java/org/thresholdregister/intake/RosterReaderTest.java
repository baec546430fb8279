package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.aging.Sex;

class RosterReaderTest {

    private final ProblemList problems = new ProblemList();

    @Test
    void everyColumnIsRead() throws Exception {
        RosterRow row = read("""
                worker_id,birth_date,sex,family_name,given_name,hire_date,end_date,site,department,job_title,noise_group,twa_dba,enrolled_from,email,language
                0042,1980-02-29,F,Ost,Ada,2001-04-02,2026-01-31,Kiln hall,Forming,Gatherer,G2,87.5,2001-04-09,ada@example.org,es
                """).getFirst();

        assertThat(row.line()).isEqualTo(2);
        assertThat(row.workerId()).isEqualTo("0042");
        assertThat(row.birthDate()).contains(LocalDate.of(1980, 2, 29));
        assertThat(row.sex()).contains(Sex.FEMALE);
        assertThat(row.familyName()).isEqualTo("Ost");
        assertThat(row.givenName()).isEqualTo("Ada");
        assertThat(row.hireDate()).contains(LocalDate.of(2001, 4, 2));
        assertThat(row.endDate()).contains(LocalDate.of(2026, 1, 31));
        assertThat(row.site()).isEqualTo("Kiln hall");
        assertThat(row.department()).isEqualTo("Forming");
        assertThat(row.jobTitle()).isEqualTo("Gatherer");
        assertThat(row.noiseGroup()).isEqualTo("G2");
        assertThat(row.twaDba()).contains(new BigDecimal("87.5"));
        assertThat(row.enrolledFrom()).contains(LocalDate.of(2001, 4, 9));
        assertThat(row.email()).isEqualTo("ada@example.org");
        assertThat(row.language()).contains(Locale.of("es"));
        assertThat(row.facts().workerId()).isEqualTo("0042");
        assertThat(problems.inFileOrder()).isEmpty();
    }

    @Test
    void birthDateAndSexMayBeBlank() throws Exception {
        RosterRow row = read("worker_id,birth_date,sex\n1,,\n").getFirst();
        assertThat(row.birthDate()).isEmpty();
        assertThat(row.sex()).isEmpty();
        assertThat(problems.inFileOrder()).isEmpty();
    }

    @Test
    void sexIsReadInAnyCase() throws Exception {
        assertThat(read("worker_id,birth_date,sex\n1,,f\n2,, M \n"))
                .extracting(RosterRow::sex)
                .containsExactly(Optional.of(Sex.FEMALE), Optional.of(Sex.MALE));
    }

    @Test
    void aRowWithoutAWorkerIdIsLeftOutAndSaysAllThatIsWrong() throws Exception {
        assertThat(read("worker_id,birth_date,sex\n  ,soon,X\n")).isEmpty();
        assertProblems(
                "2 worker_id REQUIRED_CELL_BLANK ROW_LEFT_OUT",
                "2 birth_date UNREADABLE_DATE ROW_LEFT_OUT",
                "2 sex UNKNOWN_WORD ROW_LEFT_OUT");
    }

    @Test
    void aWorkerIdThatCannotBeReadLeavesTheRowOut() throws Exception {
        assertThat(read("worker_id,birth_date,sex\n1\u00002,,\n1\uFFFD2,,\n")).isEmpty();
        assertProblems(
                "2 worker_id UNREADABLE_CHARACTERS ROW_LEFT_OUT", "3 worker_id UNREADABLE_CHARACTERS ROW_LEFT_OUT");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "29.02.1980", "2/29/1980", "1980-2-29", "1981-02-29", "1980-13-01", "1980-00-10", "1980-01-00",
                "1980-04-31", "1980-01-01T00:00", "19800101", "１９８０-01-01", "1899-12-31", "-980-01-01", "29 Feb 1980"
            })
    void whatIsNoIsoDateLeavesTheCellBlank(String date) throws Exception {
        List<RosterRow> rows = read("worker_id,birth_date,sex\n1," + date + ",F\n");
        assertThat(rows).extracting(RosterRow::birthDate).containsExactly(Optional.empty());
        assertProblems("2 birth_date UNREADABLE_DATE CELL_LEFT_BLANK");
        assertThat(problems.inFileOrder().getFirst().value()).isEqualTo(date);
    }

    @Test
    void nobodyIsBornAfterTheAsOfDate() throws Exception {
        List<RosterRow> rows = read("worker_id,birth_date,sex\n1,2026-06-30,F\n2,2026-07-01,F\n");
        assertThat(rows).extracting(RosterRow::birthDate).containsExactly(Optional.of(Csv.AS_OF), Optional.empty());
        assertProblems("3 birth_date BORN_AFTER_AS_OF CELL_LEFT_BLANK");
        assertThat(problems.inFileOrder().getFirst().problem()).contains("2026-06-30");
    }

    @Test
    void optionalCellsThatCannotBeReadAreLeftBlank() throws Exception {
        RosterRow row = read("worker_id,birth_date,sex,hire_date,end_date,twa_dba,enrolled_from,language\n"
                        + "1,,,soon,later,loud,now,fr\n")
                .getFirst();
        assertThat(row.hireDate()).isEmpty();
        assertThat(row.endDate()).isEmpty();
        assertThat(row.twaDba()).isEmpty();
        assertThat(row.enrolledFrom()).isEmpty();
        assertThat(row.language()).isEmpty();
        assertProblems(
                "2 hire_date UNREADABLE_DATE CELL_LEFT_BLANK",
                "2 end_date UNREADABLE_DATE CELL_LEFT_BLANK",
                "2 twa_dba UNREADABLE_NUMBER CELL_LEFT_BLANK",
                "2 enrolled_from UNREADABLE_DATE CELL_LEFT_BLANK",
                "2 language UNKNOWN_WORD CELL_LEFT_BLANK");
    }

    @Test
    void employmentDoesNotEndBeforeItBegins() throws Exception {
        List<RosterRow> rows = read("worker_id,birth_date,sex,end_date,hire_date\n"
                + "1,,,2020-01-01,2020-01-01\n2,,,2019-12-31,2020-01-01\n");
        assertThat(rows)
                .extracting(RosterRow::endDate)
                .containsExactly(Optional.of(LocalDate.of(2020, 1, 1)), Optional.empty());
        assertProblems("3 end_date ENDED_BEFORE_HIRED CELL_LEFT_BLANK");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "140.1", "85 dB", "8.5e1", "+85", ".5", "85.", "٨٥"})
    void exposureIsAPlainNumberUpTo140(String twa) throws Exception {
        assertThat(read("worker_id,birth_date,sex,twa_dba\n1,,," + twa + "\n")
                        .getFirst()
                        .twaDba())
                .isEmpty();
        assertProblems("2 twa_dba UNREADABLE_NUMBER CELL_LEFT_BLANK");
    }

    @Test
    void exposureReachesFrom0To140() throws Exception {
        assertThat(read("worker_id,birth_date,sex,twa_dba\n1,,,0\n2,,,140\n3,,, 84.95 \n4,,,\n"))
                .extracting(RosterRow::twaDba)
                .containsExactly(
                        Optional.of(new BigDecimal("0")),
                        Optional.of(new BigDecimal("140")),
                        Optional.of(new BigDecimal("84.95")),
                        Optional.empty());
        assertThat(problems.inFileOrder()).isEmpty();
    }

    @Test
    void anApostropheBeforeAFormulaSignIsNotPartOfTheText() throws Exception {
        List<RosterRow> rows = read(
                "worker_id,birth_date,sex,family_name\n" + "'-7,,,'=Ost\n8,,,'Ost\n9,,,''=Ost\n10,,,O'Neill\n11,,,'\n");
        assertThat(rows).extracting(RosterRow::workerId).containsExactly("-7", "8", "9", "10", "11");
        assertThat(rows).extracting(RosterRow::familyName).containsExactly("=Ost", "'Ost", "''=Ost", "O'Neill", "'");
    }

    @Test
    void rowsNeverShowWhatTheyHoldWhenPrinted() throws Exception {
        RosterRow row = read("worker_id,birth_date,sex,family_name\n0042,1980-01-01,F,Ost\n")
                .getFirst();
        assertThat(row).hasToString("roster row on line 2");
        read("worker_id,birth_date,sex\n0042,secret,F\n");
        assertThat(problems.inFileOrder().getFirst().toString()).doesNotContain("secret", "0042");
    }

    private List<RosterRow> read(String text) throws Exception {
        List<RosterRow> rows = new ArrayList<>();
        new RosterReader(Csv.AS_OF, problems).read(Csv.file("roster.csv", text), rows::add);
        return rows;
    }

    private void assertProblems(String... expected) {
        assertThat(problems.inFileOrder().stream().map(Csv::briefly)).containsExactly(expected);
    }
}
