package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;
import org.thresholdregister.core.judging.WorkerFacts;

class AudiogramReaderTest {

    private final ProblemList problems = new ProblemList();

    @Test
    void everyColumnIsRead() throws Exception {
        AudiogramRow row = read(Csv.AUDIOGRAM_HEADER.strip()
                        + ",hours_since_noise,protectors_worn,tester,instrument,transducer,remark\n"
                        + "0042,2026-03-09,annual,1,2,3,4,5,6,7,11,12,13,14,15,16,17,14.5,Yes,R. Vale,A-7,supra-aural,\"two\n"
                        + "lines\"\n")
                .getFirst();

        assertThat(row.line()).isEqualTo(2);
        assertThat(row.workerId()).isEqualTo("0042");
        assertThat(row.audiogram().date()).isEqualTo(LocalDate.of(2026, 3, 9));
        assertThat(row.audiogram().purpose()).isEqualTo(TestPurpose.ANNUAL);
        for (Frequency frequency : Frequency.values()) {
            int number = frequency.ordinal() + 1;
            assertThat(row.audiogram().threshold(Ear.LEFT, frequency)).isEqualTo(Threshold.measured(number));
            assertThat(row.audiogram().threshold(Ear.RIGHT, frequency)).isEqualTo(Threshold.measured(10 + number));
        }
        assertThat(row.hoursSinceNoise()).contains(new BigDecimal("14.5"));
        assertThat(row.protectorsWorn()).contains(true);
        assertThat(row.tester()).isEqualTo("R. Vale");
        assertThat(row.instrument()).isEqualTo("A-7");
        assertThat(row.transducer()).isEqualTo("supra-aural");
        assertThat(row.remark()).isEqualTo("two\nlines");
        assertThat(row).hasToString("audiogram row on line 2");
        assertThat(problems.inFileOrder()).isEmpty();
    }

    @Test
    void aSecondReadingAt1000HertzIsReadLikeAnyThreshold() throws Exception {
        String header = Csv.AUDIOGRAM_HEADER.strip() + ",right_1000_repeat,left_1000_repeat\n";
        String row = "0042,2026-03-09,annual,1,2,3,4,5,6,7,11,12,13,14,15,16,17,";

        assertThat(read(header + row + ">95,15\n").getFirst().repeatAt1000Hz())
                .isEqualTo(new PerEar<>(Threshold.measured(15), Threshold.noResponseAt(95)));
        assertThat(read(Csv.AUDIOGRAM_HEADER.strip() + "\n" + row.substring(0, row.length() - 1) + "\n")
                        .getFirst()
                        .repeatAt1000Hz())
                .isEqualTo(new PerEar<>(Threshold.notGiven(), Threshold.notGiven()));
        assertThat(problems.inFileOrder()).isEmpty();

        assertThat(read(header + row + "x,121\n").getFirst().repeatAt1000Hz())
                .isEqualTo(new PerEar<>(Threshold.notGiven(), Threshold.notGiven()));
        assertProblems(
                "2 left_1000_repeat THRESHOLD_OUT_OF_RANGE CELL_LEFT_BLANK",
                "2 right_1000_repeat UNREADABLE_THRESHOLD CELL_LEFT_BLANK");
    }

    @Test
    void aThresholdCellSaysWhatTheContractSays() throws Exception {
        assertThat(left2000("-10")).isEqualTo(Threshold.measured(-10));
        assertThat(left2000("120")).isEqualTo(Threshold.measured(120));
        assertThat(left2000(" 05 ")).isEqualTo(Threshold.measured(5));
        assertThat(left2000("-0")).isEqualTo(Threshold.measured(0));
        assertThat(left2000(">95")).isEqualTo(Threshold.noResponseAt(95));
        assertThat(left2000(">  95")).isEqualTo(Threshold.noResponseAt(95));
        assertThat(left2000(">-10")).isEqualTo(Threshold.noResponseAt(-10));
        assertThat(left2000(">120")).isEqualTo(Threshold.noResponseAt(120));
        assertThat(left2000("NR")).isEqualTo(Threshold.noResponse());
        assertThat(left2000("nr")).isEqualTo(Threshold.noResponse());
        assertThat(left2000("")).isEqualTo(Threshold.notGiven());
        assertThat(left2000("  ")).isEqualTo(Threshold.notGiven());
        assertThat(left2000("DNT")).isEqualTo(Threshold.notTested(Reason.DID_NOT_TEST));
        assertThat(left2000("cnt")).isEqualTo(Threshold.notTested(Reason.COULD_NOT_TEST));
        assertThat(problems.inFileOrder()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "25.5",
                "25.0",
                "2 5",
                "+5",
                "--5",
                "-",
                "5-",
                "1e1",
                "0x1F",
                "25dB",
                "25 dB",
                ">",
                "> ",
                ">NR",
                ">>95",
                ">95.5",
                "<10",
                "95+",
                "٢٥",
                "−5",
                "N/R",
                "NR95",
                "?",
                "null",
                "'-5",
                "12345678901"
            })
    void anyOtherThresholdCellIsLeftBlankAndTheRowIsKept(String cell) throws Exception {
        assertThat(left2000(cell)).isEqualTo(Threshold.notGiven());
        assertProblems("2 left_2000 UNREADABLE_THRESHOLD CELL_LEFT_BLANK");
        assertThat(problems.inFileOrder().getFirst().value()).isEqualTo(cell);
    }

    @ParameterizedTest
    @ValueSource(strings = {"-11", "121", "999", "-999999999", ">121", ">-11", "999999999"})
    void aThresholdOutOfRangeIsLeftBlankAndTheRowIsKept(String cell) throws Exception {
        assertThat(left2000(cell)).isEqualTo(Threshold.notGiven());
        assertProblems("2 left_2000 THRESHOLD_OUT_OF_RANGE CELL_LEFT_BLANK");
    }

    @ParameterizedTest
    @EnumSource
    void everyPurposeIsReadInAnyCase(TestPurpose purpose) throws Exception {
        List<AudiogramRow> rows = read(Csv.AUDIOGRAM_HEADER
                + "0042,2020-01-01," + purpose.word() + Csv.LEVELS + "\n"
                + "0042,2020-01-02," + purpose.name() + Csv.LEVELS + "\n");
        assertThat(rows).extracting(row -> row.audiogram().purpose()).containsExactly(purpose, purpose);
    }

    @Test
    void aRowWithoutWorkerDateOrPurposeIsLeftOut() throws Exception {
        assertThat(read(Csv.AUDIOGRAM_HEADER
                        + ",2020-01-01,annual" + Csv.LEVELS + "\n"
                        + "0042,,annual" + Csv.LEVELS + "\n"
                        + "0042,2020-01-01," + Csv.LEVELS + "\n"
                        + "0042,01/02/2020,annual" + Csv.LEVELS + "\n"
                        + "0042,2020-01-01,yearly" + Csv.LEVELS + "\n"))
                .isEmpty();
        assertProblems(
                "2 worker_id REQUIRED_CELL_BLANK ROW_LEFT_OUT",
                "3 test_date REQUIRED_CELL_BLANK ROW_LEFT_OUT",
                "4 purpose REQUIRED_CELL_BLANK ROW_LEFT_OUT",
                "5 test_date UNREADABLE_DATE ROW_LEFT_OUT",
                "6 purpose UNKNOWN_WORD ROW_LEFT_OUT");
    }

    @Test
    void leadingZerosAreKeptAndOtherNumbersAreUnknown() throws Exception {
        List<AudiogramRow> rows = read(Csv.AUDIOGRAM_HEADER
                + " 0042 ,2020-01-01,annual" + Csv.LEVELS + "\n"
                + "42,2020-01-02,annual" + Csv.LEVELS + "\n");
        assertThat(rows).extracting(AudiogramRow::workerId).containsExactly("0042");
        assertProblems("3 worker_id UNKNOWN_WORKER ROW_LEFT_OUT");
        assertThat(problems.inFileOrder().getFirst().value()).isEqualTo("42");
    }

    @Test
    void aTestLiesBetweenBirthAndTheAsOfDate() throws Exception {
        List<AudiogramRow> rows = read(Csv.AUDIOGRAM_HEADER
                + "0042,1980-05-05,annual" + Csv.LEVELS + "\n"
                + "0042,1980-05-04,annual" + Csv.LEVELS + "\n"
                + "0042,2026-06-30,annual" + Csv.LEVELS + "\n"
                + "0042,2026-07-01,annual" + Csv.LEVELS + "\n"
                + "0043,1900-01-01,annual" + Csv.LEVELS + "\n");
        assertThat(rows).extracting(AudiogramRow::line).containsExactly(2, 4, 6);
        assertProblems("3 test_date TESTED_BEFORE_BIRTH ROW_LEFT_OUT", "5 test_date TESTED_AFTER_AS_OF ROW_LEFT_OUT");
    }

    @Test
    void aRowReportsAllItsProblemsInTheOrderOfTheColumns() throws Exception {
        String reversed = String.join(
                ",", List.of(Csv.AUDIOGRAM_HEADER.strip().split(",")).reversed());
        assertThat(read(reversed + ",protectors_worn,hours_since_noise\n"
                        + "x,20,15,10,10,5,0,30,25,20,15,10,5,130,yearly,2026-02-30,7,maybe,-1\n"))
                .isEmpty();
        assertProblems(
                "2 worker_id UNKNOWN_WORKER ROW_LEFT_OUT",
                "2 test_date UNREADABLE_DATE ROW_LEFT_OUT",
                "2 purpose UNKNOWN_WORD ROW_LEFT_OUT",
                "2 left_500 THRESHOLD_OUT_OF_RANGE ROW_LEFT_OUT",
                "2 right_8000 UNREADABLE_THRESHOLD ROW_LEFT_OUT",
                "2 hours_since_noise UNREADABLE_NUMBER ROW_LEFT_OUT",
                "2 protectors_worn UNKNOWN_WORD ROW_LEFT_OUT");
    }

    @Test
    void optionalCellsThatCannotBeReadAreLeftBlank() throws Exception {
        List<AudiogramRow> rows = read(Csv.AUDIOGRAM_HEADER.strip() + ",hours_since_noise,protectors_worn\n"
                + "0042,2020-01-01,annual" + Csv.LEVELS + ",a night,perhaps\n"
                + "0042,2020-01-02,annual" + Csv.LEVELS + ",0,no\n"
                + "0042,2020-01-03,annual" + Csv.LEVELS + ",,\n");
        assertThat(rows)
                .extracting(AudiogramRow::hoursSinceNoise)
                .containsExactly(Optional.empty(), Optional.of(BigDecimal.ZERO), Optional.empty());
        assertThat(rows)
                .extracting(AudiogramRow::protectorsWorn)
                .containsExactly(Optional.empty(), Optional.of(false), Optional.empty());
        assertProblems(
                "2 hours_since_noise UNREADABLE_NUMBER CELL_LEFT_BLANK",
                "2 protectors_worn UNKNOWN_WORD CELL_LEFT_BLANK");
    }

    private Threshold left2000(String cell) throws Exception {
        return read(Csv.AUDIOGRAM_HEADER + "0042,2020-01-01,annual,5,5," + cell + ",5,5,5,5,5,5,5,5,5,5,5\n")
                .getFirst()
                .audiogram()
                .threshold(Ear.LEFT, Frequency.HZ_2000);
    }

    private List<AudiogramRow> read(String text) throws Exception {
        List<AudiogramRow> rows = new ArrayList<>();
        new AudiogramReader(Csv.AS_OF, new TwoWorkers(), problems).read(Csv.file("audiograms.csv", text), rows::add);
        return rows;
    }

    private void assertProblems(String... expected) {
        assertThat(problems.inFileOrder().stream().map(Csv::briefly)).containsExactly(expected);
    }

    /** Worker 0042 was born on 1980-05-05; when 0043 was born is not known. */
    private static final class TwoWorkers implements ExistingRecords {
        @Override
        public Optional<WorkerFacts> worker(String workerId) {
            return switch (workerId) {
                case "0042" -> Optional.of(facts(workerId, Optional.of(LocalDate.of(1980, 5, 5))));
                case "0043" -> Optional.of(facts(workerId, Optional.empty()));
                default -> Optional.empty();
            };
        }

        private static WorkerFacts facts(String workerId, Optional<LocalDate> birthDate) {
            return new WorkerFacts(workerId, birthDate, Optional.empty(), Optional.empty(), Optional.empty());
        }

        @Override
        public boolean hasTestOn(String workerId, LocalDate date) {
            return false;
        }
    }
}
