package org.thresholdregister.core.population;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The tables are read once when the program starts; these read them again. */
class CoefficientsTest {

    @ParameterizedTest
    @CsvSource({"iso1999-nipts.csv, 6", "iso7029-2000.csv, 14", "iso7029-2017.csv, 14"})
    void everyRowHasAFrequencyAndACellForEachColumn(String resource, int rows) {
        List<Coefficients> table = Coefficients.load(resource, rows);
        assertThat(table).hasSize(rows);
        assertThat(table).allSatisfy(row -> {
            assertThat(row.number("freq_hz")).isEqualTo(row.frequency().hertz());
            assertThat(row.cells()).hasSameSizeAs(table.getFirst().cells());
        });
        assertThat(table.stream().map(Coefficients::cells)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @ValueSource(ints = {5, 7})
    void aTableWithAnotherNumberOfRowsIsRefused(int rows) {
        assertThatIllegalStateException()
                .isThrownBy(() -> Coefficients.load("iso1999-nipts.csv", rows))
                .withMessage("iso1999-nipts.csv does not have " + rows + " rows");
    }

    @Test
    void aTableThatIsMissingIsNamed() {
        assertThatIllegalStateException()
                .isThrownBy(() -> Coefficients.load("no-such-table.csv", 6))
                .withMessage("no-such-table.csv is missing from the program");
    }

    @Test
    void aColumnThatIsMissingIsNamed() {
        Coefficients row = Coefficients.load("iso1999-nipts.csv", 6).getFirst();
        assertThatIllegalStateException()
                .isThrownBy(() -> row.text("no-such-column"))
                .withMessage("no column no-such-column");
    }

    @Test
    void aShareIsExactWhereItsEndsAreOne() {
        assertThat(Share.exactly(0.25).isExact()).isTrue();
        assertThat(new Share(0.25, 0.5).isExact()).isFalse();
    }
}
