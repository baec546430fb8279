package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;

class DecisionReaderTest {

    private static final String ROSTER = Csv.ROSTER_HEADER + "1,1980-01-01,F\n";
    private static final String AUDIOGRAMS = Csv.AUDIOGRAM_HEADER + "1,2025-03-01,annual" + Csv.LEVELS + "\n";

    @Test
    void aDecisionIsReadWholly() throws Exception {
        Csv.Reading reading = read("1,Both,2025-03-01,recorded,2025-03-20,R. Vale,\"log, line 7\"\n");
        assertThat(decisions(reading))
                .containsExactly(new Decision(
                        Ears.BOTH,
                        LocalDate.of(2025, 3, 1),
                        DecisionKind.RECORDED,
                        LocalDate.of(2025, 3, 20),
                        "R. Vale",
                        "log, line 7"));
        assertThat(reading.problems()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void everyKindIsReadInAnyCase(DecisionKind kind) throws Exception {
        Csv.Reading reading = read("1,left,2025-03-01," + kind.word() + ",2025-03-20,,\n" + "1,right,2025-03-01,"
                + kind.word().toUpperCase(Locale.ROOT) + ",2025-03-20,,\n");
        assertThat(decisions(reading)).extracting(Decision::kind).containsExactly(kind, kind);
        assertThat(decisions(reading)).extracting(Decision::ears).containsExactly(Ears.LEFT, Ears.RIGHT);
        assertThat(reading.problems()).isEmpty();
    }

    @Test
    void byAndReasonMayBeBlankButTheirColumnsMayNotBeMissing() throws Exception {
        assertThat(decisions(read("1,left,2025-03-01,recorded,2025-03-20,,\n"))).hasSize(1);
        Csv.Reading tooShort = read("1,left,2025-03-01,recorded,2025-03-20\n");
        assertThat(tooShort.briefly()).containsExactly("2 by ROW_TOO_SHORT ROW_LEFT_OUT");
    }

    @Test
    void whatCannotBeReadLeavesTheRowOut() throws Exception {
        Csv.Reading reading = read("2,left,2025-03-01,recorded,2025-03-20,,\n"
                + "1,middle,2025-03-01,recorded,2025-03-20,,\n"
                + "1,left,1 March,recorded,2025-03-20,,\n"
                + "1,left,2025-03-01,noted,2025-03-20,,\n"
                + "1,left,2025-03-01,recorded,soon,,\n"
                + ",,,,,R. Vale,\n");
        assertThat(decisions(reading)).isEmpty();
        assertThat(reading.briefly())
                .containsExactly(
                        "2 worker_id UNKNOWN_WORKER ROW_LEFT_OUT",
                        "3 ear UNKNOWN_WORD ROW_LEFT_OUT",
                        "4 test_date UNREADABLE_DATE ROW_LEFT_OUT",
                        "5 kind UNKNOWN_WORD ROW_LEFT_OUT",
                        "6 date UNREADABLE_DATE ROW_LEFT_OUT",
                        "7 worker_id REQUIRED_CELL_BLANK ROW_LEFT_OUT",
                        "7 ear REQUIRED_CELL_BLANK ROW_LEFT_OUT",
                        "7 test_date REQUIRED_CELL_BLANK ROW_LEFT_OUT",
                        "7 kind REQUIRED_CELL_BLANK ROW_LEFT_OUT",
                        "7 date REQUIRED_CELL_BLANK ROW_LEFT_OUT");
    }

    /** The seven kinds of the file format, and what people do after a shift. */
    @Test
    void everyKindIsTakenByItsWord() throws Exception {
        List<String> kinds = List.of(
                "not-work-related",
                "work-related",
                "recorded",
                "lined-out",
                "notice-given",
                "baseline",
                "invalid-test",
                "retest-booked",
                "protector-refitted",
                "trained",
                "referred");
        Csv.Reading reading = read(kinds.stream()
                .map(kind -> "1,left,2025-03-01," + kind + ",2025-03-20,,\n")
                .collect(Collectors.joining()));
        assertThat(decisions(reading).stream().map(decision -> decision.kind().word()))
                .containsExactlyInAnyOrderElementsOf(kinds);
        assertThat(reading.briefly()).isEmpty();
    }

    @Test
    void aDecisionLaterThanTheAsOfDateIsNotTakenYet() throws Exception {
        Csv.Reading reading =
                read("1,left,2025-03-01,recorded,2026-06-30,,\n1,left,2025-03-01,recorded,2026-07-01,,\n");
        assertThat(decisions(reading)).hasSize(1);
        assertThat(reading.briefly()).containsExactly("3 date DECIDED_AFTER_AS_OF ROW_LEFT_OUT");
        assertThat(reading.problems().getFirst().problem()).contains("2026-06-30");
    }

    @Test
    void aDecisionBeforeItsTestAndOneWithoutATestAreKeptWithANote() throws Exception {
        Csv.Reading reading =
                read("1,left,2025-03-01,recorded,2025-02-28,,\n1,left,2025-03-02,recorded,2025-03-20,,\n");
        assertThat(decisions(reading)).hasSize(2);
        assertThat(reading.briefly())
                .containsExactly("2 date DECIDED_BEFORE_TEST NOTE", "3 test_date NO_SUCH_TEST NOTE");
    }

    @Test
    void theSameRowCountsOnceAndDifferingRowsAllCount() throws Exception {
        String row = "1,left,2025-03-01,recorded,2025-03-20,R. Vale,\n";
        Csv.Reading reading = read(row + "1,left,2025-03-01,lined-out,2025-04-20,R. Vale,\n" + row
                + "1,left,2025-03-01,recorded,2025-03-20,T. Weld,\n" + row);
        assertThat(decisions(reading)).hasSize(3);
        assertThat(reading.briefly())
                .containsExactly("4 worker_id SAME_ROW_AGAIN NOTE", "6 worker_id SAME_ROW_AGAIN NOTE");
        assertThat(reading.intake().keeps(Table.DECISIONS, 2)).isTrue();
        assertThat(reading.intake().keeps(Table.DECISIONS, 4)).isFalse();
        assertThat(reading.intake().rowsKept(Table.DECISIONS)).isEqualTo(3);
        assertThat(reading.intake().rowsRead(Table.DECISIONS)).isEqualTo(5);
    }

    @Test
    void aRepeatedRowKeepsTheOrderOfItsColumns() throws Exception {
        String row = "1,left,2025-03-02,recorded,2025-03-20,,\n";
        assertThat(read(row + row + row).briefly())
                .containsExactly(
                        "2 test_date NO_SUCH_TEST NOTE",
                        "3 worker_id SAME_ROW_AGAIN NOTE",
                        "3 test_date NO_SUCH_TEST NOTE",
                        "4 worker_id SAME_ROW_AGAIN NOTE",
                        "4 test_date NO_SUCH_TEST NOTE");
    }

    private static Csv.Reading read(String rows) throws Exception {
        return Csv.read(ROSTER, AUDIOGRAMS, Csv.DECISION_HEADER + rows);
    }

    private static List<Decision> decisions(Csv.Reading reading) {
        return reading.intake().histories().findFirst().orElseThrow().decisions();
    }
}
