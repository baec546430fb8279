package org.thresholdregister.core.population;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The multipliers of ISO 1999:2013 clause 6.3.2, printed to three decimals. */
class NormalDistributionTest {

    @ParameterizedTest
    @CsvSource({
        "0.05, 1.645",
        "0.10, 1.282",
        "0.15, 1.036",
        "0.20, 0.842",
        "0.25, 0.675",
        "0.30, 0.524",
        "0.35, 0.385",
        "0.40, 0.253",
        "0.45, 0.126",
        "0.50, 0"
    })
    void theMultipliersOfTheStandardComeOut(double worse, double multiplier) {
        assertThat(new Fractile(worse).quantile()).isCloseTo(multiplier, within(0.001));
        assertThat(new Fractile(1 - worse).quantile()).isCloseTo(-multiplier, within(0.001));
    }

    @Test
    void aShareAndItsQuantileAreInverse() {
        for (int permille = 1; permille < 1000; permille++) {
            double share = permille / 1000.0;
            assertThat(NormalDistribution.shareAbove(NormalDistribution.quantileAbove(share)))
                    .isCloseTo(share, within(1e-12));
        }
        assertThat(NormalDistribution.quantileAbove(0.5)).isZero();
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 1.1, Double.NaN})
    void noFractileLiesAtOrBeyondTheEnds(double worse) {
        assertThatIllegalArgumentException().isThrownBy(() -> new Fractile(worse));
    }
}
