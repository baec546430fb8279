package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;

class IntakeTest {

    @Test
    void aHistoryHoldsAllThatTheFilesSay() throws Exception {
        Csv.Reading reading = Csv.read(
                "worker_id,birth_date,sex,site,department,enrolled_from,end_date\n"
                        + "007,1980-02-29,M,Kiln hall,Forming,2001-04-09,2026-01-31\n",
                Csv.AUDIOGRAM_HEADER
                        + "007,2025-03-01,annual,5,>95,NR,DNT,CNT,,-10,120,>120,>-10,0,1,2,3\n"
                        + "007,2024-03-01,baseline" + Csv.LEVELS + "\n",
                Csv.DECISION_HEADER + "007,left,2025-03-01,recorded,2025-03-20,R. Vale,\n");

        WorkerHistory history = reading.intake().histories().findFirst().orElseThrow();
        assertThat(history.worker())
                .isEqualTo(new WorkerFacts(
                        "007",
                        Optional.of(LocalDate.of(1980, 2, 29)),
                        Optional.of(Sex.MALE),
                        Optional.of(LocalDate.of(2001, 4, 9)),
                        Optional.of(LocalDate.of(2026, 1, 31))));
        assertThat(history.audiograms())
                .extracting(Audiogram::purpose)
                .containsExactly(TestPurpose.BASELINE, TestPurpose.ANNUAL);
        Audiogram annual = history.audiograms().getLast();
        assertThat(annual.threshold(Ear.LEFT, Frequency.HZ_1000)).isEqualTo(Threshold.noResponseAt(95));
        assertThat(annual.threshold(Ear.LEFT, Frequency.HZ_8000)).isEqualTo(Threshold.measured(-10));
        assertThat(annual.threshold(Ear.RIGHT, Frequency.HZ_500)).isEqualTo(Threshold.measured(120));
        assertThat(annual.threshold(Ear.RIGHT, Frequency.HZ_8000)).isEqualTo(Threshold.measured(3));
        assertThat(history.decisions()).hasSize(1);
        assertThat(reading.intake().siteOf(0)).isEqualTo("Kiln hall");
        assertThat(reading.intake().departmentOf(0)).isEqualTo("Forming");
        assertThat(reading.problems()).isEmpty();
    }

    @Test
    void workersWithoutTestsHaveAHistoryToo() throws Exception {
        Csv.Reading reading = Csv.read(Csv.ROSTER_HEADER + "2,,\n1,,\n", Csv.AUDIOGRAM_HEADER);
        assertThat(ids(reading)).containsExactly("1", "2");
        assertThat(reading.intake().population().workerCount()).isEqualTo(2);
        assertThat(reading.intake().histories())
                .allSatisfy(history -> assertThat(history.audiograms()).isEmpty());
    }

    @Test
    void historiesComeInTheOrderOfCodePoints() throws Exception {
        Csv.Reading reading = Csv.read(
                Csv.ROSTER_HEADER + "\uFF21,,\nb,,\n\uD83D\uDD14,,\n10,,\n9,,\nB,,\né,,\nba,,\n", Csv.AUDIOGRAM_HEADER);
        assertThat(ids(reading)).containsExactly("10", "9", "B", "b", "ba", "é", "\uFF21", "\uD83D\uDD14");
    }

    @Test
    void theSameWorkerRowCountsOnce() throws Exception {
        Csv.Reading reading =
                Csv.read(Csv.ROSTER_HEADER + "1,1980-01-01,F\n2,,\n1,1980-01-01,F\n1,1980-01-01,F\n", tests("1"));
        assertThat(ids(reading)).containsExactly("1", "2");
        assertThat(reading.briefly())
                .containsExactly("4 worker_id SAME_ROW_AGAIN NOTE", "5 worker_id SAME_ROW_AGAIN NOTE");
        assertThat(reading.problems()).extracting(RowProblem::detail).containsOnly("2");
        assertThat(reading.intake().keeps(Table.ROSTER, 2)).isTrue();
        assertThat(reading.intake().keeps(Table.ROSTER, 4)).isFalse();
        assertThat(reading.intake().rowsKept(Table.ROSTER)).isEqualTo(2);
        assertThat(reading.intake().rowsRead(Table.ROSTER)).isEqualTo(4);
    }

    @Test
    void workerRowsThatDifferAreAllLeftOutAndSoAreTheTests() throws Exception {
        Csv.Reading reading =
                Csv.read(Csv.ROSTER_HEADER + "1,1980-01-01,F\n2,,\n1,1980-01-01,F\n1,1980-01-01,M\n", tests("1"));
        assertThat(ids(reading)).containsExactly("2");
        assertThat(reading.briefly())
                .containsExactly(
                        "2 worker_id CONTRADICTING_WORKERS ROW_LEFT_OUT",
                        "4 worker_id CONTRADICTING_WORKERS ROW_LEFT_OUT",
                        "5 worker_id CONTRADICTING_WORKERS ROW_LEFT_OUT",
                        "2 worker_id UNKNOWN_WORKER ROW_LEFT_OUT");
        assertThat(reading.problems().getFirst().problem()).contains("lines 4, 5");
        assertThat(reading.intake().keeps(Table.ROSTER, 2)).isFalse();
        assertThat(reading.intake().rowsKept(Table.ROSTER)).isEqualTo(1);
    }

    @Test
    void rowsThatDifferInNothingButSpaceAreNotTheSame() throws Exception {
        Csv.Reading reading = Csv.read(Csv.ROSTER_HEADER + "1,,\n1 ,,\n", Csv.AUDIOGRAM_HEADER);
        assertThat(ids(reading)).isEmpty();
        assertThat(reading.problems())
                .extracting(RowProblem::kind)
                .containsExactly(ProblemKind.CONTRADICTING_WORKERS, ProblemKind.CONTRADICTING_WORKERS);
    }

    @Test
    void rowsWhoseCellsAreDividedDifferentlyAreNotTheSame() throws Exception {
        String header = "worker_id,birth_date,sex,family_name,given_name\n";
        Csv.Reading reading = Csv.read(header + "1,,,ab,c\n1,,,a,bc\n", Csv.AUDIOGRAM_HEADER);
        assertThat(ids(reading)).isEmpty();
    }

    @Test
    void theSameTestRowCountsOnce() throws Exception {
        String row = "1,2025-03-01,annual" + Csv.LEVELS + "\n";
        Csv.Reading reading = Csv.read(
                Csv.ROSTER_HEADER + "1,,\n",
                Csv.AUDIOGRAM_HEADER + row + "1,2025-03-01,retest" + Csv.LEVELS + "\n" + row);
        assertThat(tests(reading, "1")).containsExactly("annual 2025-03-01", "retest 2025-03-01");
        assertThat(reading.briefly()).containsExactly("4 worker_id SAME_ROW_AGAIN NOTE");
        assertThat(reading.problems().getFirst().problem()).contains("line 2");
        assertThat(reading.intake().keeps(Table.AUDIOGRAMS, 2)).isTrue();
        assertThat(reading.intake().keeps(Table.AUDIOGRAMS, 4)).isFalse();
        assertThat(reading.intake().rowsKept(Table.AUDIOGRAMS)).isEqualTo(2);
    }

    @Test
    void testRowsThatDifferAreAllLeftOut() throws Exception {
        String row = "1,2025-03-01,annual" + Csv.LEVELS + "\n";
        Csv.Reading reading = Csv.read(
                Csv.ROSTER_HEADER + "1,,\n2,,\n",
                Csv.AUDIOGRAM_HEADER + row + "1,2024-03-01,annual" + Csv.LEVELS + "\n" + row + "2,2025-03-01,annual"
                        + Csv.LEVELS + "\n" + row.replace("30", "35"));
        assertThat(tests(reading, "1")).containsExactly("annual 2024-03-01");
        assertThat(tests(reading, "2")).containsExactly("annual 2025-03-01");
        assertThat(reading.briefly())
                .containsExactly(
                        "2 worker_id CONTRADICTING_TESTS ROW_LEFT_OUT",
                        "4 worker_id CONTRADICTING_TESTS ROW_LEFT_OUT",
                        "6 worker_id CONTRADICTING_TESTS ROW_LEFT_OUT");
        assertThat(reading.problems())
                .extracting(RowProblem::detail)
                .containsExactly("lines 4, 6", "lines 2, 6", "lines 2, 4");
        assertThat(reading.intake().keeps(Table.AUDIOGRAMS, 3)).isTrue();
        assertThat(reading.intake().rowsKept(Table.AUDIOGRAMS)).isEqualTo(2);
    }

    @Test
    void aRowLeftOutForAnotherFaultContradictsNothing() throws Exception {
        Csv.Reading reading = Csv.read(
                Csv.ROSTER_HEADER + "1,,\n",
                Csv.AUDIOGRAM_HEADER + "1,2025-03-01,annual" + Csv.LEVELS + "\n1,2025-03-01,annual" + Csv.LEVELS
                        + ",extra\n");
        assertThat(tests(reading, "1")).containsExactly("annual 2025-03-01");
    }

    @Test
    void ofManyContradictingLinesTheFirstTenAreNamed() throws Exception {
        StringBuilder audiograms = new StringBuilder(Csv.AUDIOGRAM_HEADER);
        StringBuilder roster = new StringBuilder(Csv.ROSTER_HEADER);
        for (int i = 0; i < 20; i++) {
            audiograms.append("1,2025-03-01,annual").append(",").append(i).append(",,,,,,,,,,,,,\n");
            roster.append("x,19").append(10 + i).append("-01-01,F\n");
        }
        Csv.Reading reading = Csv.read(roster + "1,,\n", audiograms.toString());
        assertThat(reading.problems())
                .hasSize(40)
                .extracting(RowProblem::detail)
                .startsWith("lines 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 and more")
                .endsWith("lines 2, 3, 4, 5, 6, 7, 8, 9, 10, 11 and more");
    }

    @Test
    void problemsComeFileByFileLineByLineColumnByColumn() throws Exception {
        String twice = "1,2025-03-01,annual,x" + Csv.LEVELS.substring(2) + "\n";
        Csv.Reading reading = Csv.read(
                Csv.ROSTER_HEADER + "1,soon,X\n1,soon,X\n",
                Csv.AUDIOGRAM_HEADER + twice + "9,2025-03-01,annual" + Csv.LEVELS + "\n" + twice,
                Csv.DECISION_HEADER + "1,left,2025-03-02,recorded,2025-03-20,,\n");
        assertThat(reading.problems().stream().map(problem -> problem.file() + " " + Csv.briefly(problem)))
                .containsExactly(
                        "roster.csv 2 birth_date UNREADABLE_DATE CELL_LEFT_BLANK",
                        "roster.csv 2 sex UNKNOWN_WORD CELL_LEFT_BLANK",
                        "roster.csv 3 worker_id SAME_ROW_AGAIN NOTE",
                        "roster.csv 3 birth_date UNREADABLE_DATE CELL_LEFT_BLANK",
                        "roster.csv 3 sex UNKNOWN_WORD CELL_LEFT_BLANK",
                        "audiograms.csv 2 left_500 UNREADABLE_THRESHOLD CELL_LEFT_BLANK",
                        "audiograms.csv 3 worker_id UNKNOWN_WORKER ROW_LEFT_OUT",
                        "audiograms.csv 4 worker_id SAME_ROW_AGAIN NOTE",
                        "audiograms.csv 4 left_500 UNREADABLE_THRESHOLD CELL_LEFT_BLANK",
                        "decisions.csv 2 test_date NO_SUCH_TEST NOTE");
    }

    @Test
    void theOrderOfTheRowsChangesNoHistory() throws Exception {
        Random random = new Random(20260630);
        List<String> roster = new ArrayList<>();
        List<String> audiograms = new ArrayList<>();
        List<String> decisions = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            roster.add(
                    String.format("%03d,19%d-01-%02d,%s", i % 55, 60 + i % 55 / 2, 1 + i % 5, i % 3 == 0 ? "F" : "M"));
        }
        for (int i = 0; i < 600; i++) {
            audiograms.add(String.format(
                    "%03d,%d-0%d-01,%s,%d%s",
                    random.nextInt(60),
                    2015 + random.nextInt(10),
                    1 + random.nextInt(3),
                    TestPurpose.values()[random.nextInt(5)].word(),
                    5 * random.nextInt(30),
                    Csv.LEVELS.substring(2)));
        }
        audiograms.addAll(audiograms.subList(0, 40));
        for (int i = 0; i < 100; i++) {
            decisions.add(String.format(
                    "%03d,%s,2015-01-01,recorded,2020-01-0%d,%s,",
                    random.nextInt(60),
                    List.of("left", "right", "both").get(i % 3),
                    1 + random.nextInt(3),
                    List.of("R. Vale", "T. Weld").get(i % 2)));
        }
        Csv.Reading first = read(roster, audiograms, decisions);
        List<WorkerHistory> histories = first.intake().histories().toList();
        assertThat(histories).hasSizeBetween(40, 60);
        assertThat(histories.stream()
                        .mapToInt(history -> history.audiograms().size())
                        .sum())
                .isGreaterThan(100);
        assertThat(first.problems())
                .extracting(RowProblem::kind)
                .contains(
                        ProblemKind.CONTRADICTING_TESTS, ProblemKind.CONTRADICTING_WORKERS, ProblemKind.SAME_ROW_AGAIN);
        for (int round = 0; round < 20; round++) {
            Collections.shuffle(roster, random);
            Collections.shuffle(audiograms, random);
            Collections.shuffle(decisions, random);
            Csv.Reading shuffled = read(roster, audiograms, decisions);
            assertThat(shuffled.intake().histories()).containsExactlyElementsOf(histories);
            assertThat(shuffled.problems()).hasSameSizeAs(first.problems());
        }
    }

    private static Csv.Reading read(List<String> roster, List<String> audiograms, List<String> decisions)
            throws Exception {
        return Csv.read(
                Csv.ROSTER_HEADER + String.join("\n", roster),
                Csv.AUDIOGRAM_HEADER + String.join("\n", audiograms),
                Csv.DECISION_HEADER + String.join("\n", decisions));
    }

    @Test
    void testsMayBeOfWorkersOnRecordWhoAreNotInTheRosterFile() throws Exception {
        ExistingRecords existing = new ExistingRecords() {
            @Override
            public Optional<WorkerFacts> worker(String workerId) {
                return workerId.equals("old")
                        ? Optional.of(new WorkerFacts(
                                "old",
                                Optional.of(LocalDate.of(1970, 1, 1)),
                                Optional.of(Sex.FEMALE),
                                Optional.empty(),
                                Optional.empty()))
                        : Optional.empty();
            }

            @Override
            public boolean hasTestOn(String workerId, LocalDate date) {
                return workerId.equals("old") && date.equals(LocalDate.of(2020, 1, 1));
            }
        };
        String audiograms = Csv.AUDIOGRAM_HEADER
                + "new,2025-03-01,annual" + Csv.LEVELS + "\n"
                + "old,2025-03-01,annual" + Csv.LEVELS + "\n"
                + "old,1969-03-01,annual" + Csv.LEVELS + "\n"
                + "nobody,2025-03-01,annual" + Csv.LEVELS + "\n";
        String decisions = Csv.DECISION_HEADER
                + "old,left,2020-01-01,recorded,2020-01-20,,\n"
                + "old,left,2020-01-02,recorded,2020-01-20,,\n";
        FileSet files = FileSet.of(
                        Csv.file("roster.csv", Csv.ROSTER_HEADER + "new,,\n"), Csv.file("audiograms.csv", audiograms))
                .withDecisions(Csv.file("decisions.csv", decisions));
        Csv.Reading reading = Csv.read(files, existing);

        assertThat(ids(reading)).containsExactly("new", "old");
        assertThat(tests(reading, "old")).containsExactly("annual 2025-03-01");
        assertThat(reading.briefly())
                .containsExactly(
                        "4 test_date TESTED_BEFORE_BIRTH ROW_LEFT_OUT",
                        "5 worker_id UNKNOWN_WORKER ROW_LEFT_OUT",
                        "3 test_date NO_SUCH_TEST NOTE");

        Csv.Reading audiogramsOnly = Csv.read(
                new FileSet(Optional.empty(), Optional.of(Csv.file("a.csv", audiograms)), Optional.empty()), existing);
        assertThat(ids(audiogramsOnly)).containsExactly("old");
        assertThat(audiogramsOnly.intake().rowsRead(Table.ROSTER)).isZero();
        assertThat(audiogramsOnly.intake().keeps(Table.ROSTER, 2)).isFalse();
    }

    @Test
    void aDecisionAboutAWorkerOnRecordWithoutATestInTheFilesIsKept() throws Exception {
        ExistingRecords existing = new ExistingRecords() {
            @Override
            public Optional<WorkerFacts> worker(String workerId) {
                return Optional.of(new WorkerFacts(
                        workerId, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
            }

            @Override
            public boolean hasTestOn(String workerId, LocalDate date) {
                return true;
            }
        };
        FileSet files = FileSet.of(
                        Csv.file("roster.csv", Csv.ROSTER_HEADER), Csv.file("audiograms.csv", Csv.AUDIOGRAM_HEADER))
                .withDecisions(
                        Csv.file("decisions.csv", Csv.DECISION_HEADER + "old,left,2020-01-01,recorded,2020-01-20,,\n"));
        Csv.Reading reading = Csv.read(files, existing);
        assertThat(reading.problems()).isEmpty();
        assertThat(reading.intake().histories())
                .singleElement()
                .satisfies(history -> assertThat(history.decisions()).hasSize(1));
    }

    @Test
    void anUnusableFileIsNamed() {
        assertThatThrownBy(() -> Csv.read(Csv.ROSTER_HEADER, Csv.AUDIOGRAM_HEADER.replace("right_3000,", "")))
                .isInstanceOf(UnusableFileException.class)
                .hasMessageContainingAll("audiograms.csv", "right_3000");
    }

    private static String tests(String workerId) {
        return Csv.AUDIOGRAM_HEADER + workerId + ",2025-03-01,annual" + Csv.LEVELS + "\n";
    }

    private static List<String> ids(Csv.Reading reading) {
        return reading.intake()
                .histories()
                .map(history -> history.worker().workerId())
                .toList();
    }

    private static List<String> tests(Csv.Reading reading, String workerId) {
        return reading.intake()
                .histories()
                .filter(history -> history.worker().workerId().equals(workerId))
                .flatMap(history -> history.audiograms().stream())
                .map(Audiogram::toString)
                .toList();
    }
}
