package org.thresholdregister.core.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SummaryLineTest {

    private static final Group FURNACE = new Group("Hollow", "Furnace");

    @Test
    void theRowsOfAGroupAndYearAreOneLineInTheOrderOfTheirFirstRow() {
        List<SummaryLine> lines = SummaryLine.of(List.of(
                new SummaryRow(2026, FURNACE, Measure.WORKERS_TESTED, Count.of(7)),
                new SummaryRow(2025, FURNACE, Measure.WORKERS_TESTED, Count.of(6)),
                new SummaryRow(2026, Group.EVERYBODY, Measure.WORKERS_TESTED, Count.of(9)),
                new SummaryRow(2026, FURNACE, Measure.SHIFTS_FOUND, Count.hidden())));
        assertThat(lines)
                .extracting(SummaryLine::year, SummaryLine::group)
                .containsExactly(tuple(2026, FURNACE), tuple(2025, FURNACE), tuple(2026, Group.EVERYBODY));
        SummaryLine line = lines.getFirst();
        assertThat(line.count(Measure.WORKERS_TESTED)).isEqualTo(Count.of(7));
        assertThat(line.count(Measure.SHIFTS_FOUND)).isEqualTo(Count.hidden());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> line.count(Measure.RECORDABLE_CASES))
                .withMessage("not counted: RECORDABLE_CASES");
    }

    @Test
    void aCountIsWrittenAsDigitsOrAsHidden() {
        assertThat(Count.of(0).word()).isEqualTo("0");
        assertThat(Count.of(12).word()).isEqualTo("12");
        assertThat(Count.hidden().word()).isEqualTo("hidden");
    }

    /** Screens and paper head each column and explain it. */
    @ParameterizedTest
    @EnumSource
    void aMeasureHasATitleOfItsOwnAndASentence(Measure measure) {
        assertThat(measure.title()).isNotBlank();
        assertThat(Arrays.stream(Measure.values()).map(Measure::title)).containsOnlyOnce(measure.title());
        assertThat(measure.meaning()).endsWith(".");
        assertThat(Arrays.stream(Measure.values()).map(Measure::meaning)).containsOnlyOnce(measure.meaning());
    }
}
