package org.thresholdregister.intake.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.validity.FlagKind;

class DoubtsTableTest {

    @Test
    void kindsStandInTheirOrderWithTheirWeightAndNumber() {
        var table = new DoubtsTable(Map.of(FlagKind.WORSE_THAN_PREVIOUS, 1_200, FlagKind.EARS_SWAPPED, 2));

        assertThat(table.getElement().getTextRecursively())
                .contains("They are stored like the others")
                .endsWith("Ears look exchangeddoubt2A frequency much worse than on the test beforenote1,200");
    }
}
