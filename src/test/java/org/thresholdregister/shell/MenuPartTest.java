package org.thresholdregister.shell;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MenuPartTest {

    @ParameterizedTest
    @CsvSource({
        "10, TODAY",
        "29, TODAY",
        "29.5, TODAY",
        "30, REVIEW",
        "49, REVIEW",
        "50, RECORDS",
        "69, RECORDS",
        "70, PROGRAMME",
        "89, PROGRAMME",
        "90, SETTINGS",
        "1000, SETTINGS",
        ", SETTINGS",
    })
    void aPageBelongsToThePartItsOrderFallsInto(Double order, MenuPart part) {
        assertThat(MenuPart.of(order)).isEqualTo(part);
    }
}
