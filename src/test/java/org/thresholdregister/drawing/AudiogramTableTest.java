package org.thresholdregister.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.drawing.Drawings.baseline;
import static org.thresholdregister.drawing.Drawings.latest;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;

class AudiogramTableTest {

    @Test
    void allFourteenThresholdsOfBothTestsStandInTheTable() {
        AudiogramTable table = AudiogramTable.of(AudiogramComparison.of(
                latest("1 2 3 4 5 6 7", "11 12 13 14 15 16 17"),
                baseline("21 22 23 24 25 26 27", "31 32 33 34 35 36 37")));
        assertThat(table.columns())
                .extracting(AudiogramTable.Column::heading)
                .containsExactly(
                        "Right ear, 9 Mar 2026",
                        "Right ear, baseline 3 Feb 2020",
                        "Left ear, 9 Mar 2026",
                        "Left ear, baseline 3 Feb 2020");
        assertThat(table.rows()).extracting(AudiogramTable.Row::frequency).containsExactly(Frequency.values());
        assertThat(table.rows())
                .extracting(AudiogramTable.Row::cells)
                .containsExactly(
                        List.of("1", "21", "11", "31"),
                        List.of("2", "22", "12", "32"),
                        List.of("3", "23", "13", "33"),
                        List.of("4", "24", "14", "34"),
                        List.of("5", "25", "15", "35"),
                        List.of("6", "26", "16", "36"),
                        List.of("7", "27", "17", "37"));
    }

    @Test
    void cellsReadAsInTheFile() {
        AudiogramTable table =
                AudiogramTable.of(AudiogramComparison.of(latest("25 >95 NR - CNT -10 120", "0 0 0 0 0 0 0")));
        assertThat(table.rows())
                .extracting(row -> row.cells().getFirst())
                .containsExactly("25", ">95", "NR", "not tested", "could not be tested", "-10", "120");
    }

    @Test
    void anEarWithoutABaselineOfItsOwnHasNoBaselineColumn() {
        Audiogram first = baseline("5 5 5 5 5 5 5", "0 0 0 0 0 0 0");
        assertThat(AudiogramTable.of(AudiogramComparison.of(first).withBaseline(Ear.LEFT, first))
                        .columns())
                .extracting(AudiogramTable.Column::heading)
                .containsExactly("Right ear, 3 Feb 2020", "Left ear, baseline 3 Feb 2020");
    }
}
