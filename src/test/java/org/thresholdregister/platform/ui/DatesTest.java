package org.thresholdregister.platform.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class DatesTest {

    @Test
    void aDateReadsWithTheMonthInWordsOnScreen() {
        assertThat(Dates.onScreen(LocalDate.of(2026, 3, 9))).isEqualTo("9 Mar 2026");
        assertThat(Dates.onScreen(LocalDate.of(2026, 9, 30))).isEqualTo("30 Sep 2026");
    }

    @Test
    void aDateIsIsoInAFile() {
        assertThat(Dates.inFile(LocalDate.of(2026, 3, 9))).isEqualTo("2026-03-09");
    }
}
