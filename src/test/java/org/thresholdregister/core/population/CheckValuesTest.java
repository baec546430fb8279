package org.thresholdregister.core.population;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Frequency;

/**
 * Printed cells of ISO 1999:2013 Annexes A and D within 1 dB, values of other implementations within 0.05 dB beyond the
 * digits that they print (see {@code vectors/README.md}).
 */
@DisplayName("ISO 1999 and ISO 7029 check values")
class CheckValuesTest {

    private static final double PRINTED_DB = 1;
    private static final double BETWEEN_IMPLEMENTATIONS_DB = 0.05;

    static Stream<Map<String, String>> checkValues() {
        return Vectors.rows("iso1999-check-values.csv").stream();
    }

    @Test
    void noCheckValueIsMissing() {
        assertThat(checkValues()).hasSize(311);
    }

    @ParameterizedTest
    @MethodSource("checkValues")
    void theValueComesOut(Map<String, String> row) {
        boolean printed = row.get("rounding").equals("integer");
        assertThat(computed(row))
                .as(row.toString())
                .isCloseTo(
                        Double.parseDouble(row.get("value_db")),
                        within(printed ? PRINTED_DB : BETWEEN_IMPLEMENTATIONS_DB));
    }

    private static double computed(Map<String, String> row) {
        Frequency frequency = Frequency.valueOf("HZ_" + row.get("freq_hz"));
        return switch (row.get("quantity")) {
            case "NIPTS" -> value(NoiseComponent.decibels(noise(row), frequency, fractile(row)));
            case "HTLA", "HTLA_median" -> age(row, frequency, fractile(row));
            case "HTLA_su" -> {
                var fractile = Fractile.WORST_TENTH;
                yield (age(row, frequency, fractile) - age(row, frequency, Fractile.MEDIAN)) / fractile.quantile();
            }
            case "HTLAN" ->
                value(new Population(edition(row), sex(row), years(row), Optional.of(noise(row)))
                        .decibels(frequency, fractile(row)));
            default -> throw new IllegalArgumentException(row.get("quantity"));
        };
    }

    private static double age(Map<String, String> row, Frequency frequency, Fractile fractile) {
        return value(AgeComponent.decibels(edition(row), sex(row), years(row), frequency, fractile));
    }

    private static double value(Estimate<Double> estimate) {
        return ((Estimate.Within<Double>) estimate).value();
    }

    private static Fractile fractile(Map<String, String> row) {
        return new Fractile(Double.parseDouble(row.get("pct_population_worse")) / 100);
    }

    private static NoiseExposure noise(Map<String, String> row) {
        return new NoiseExposure(
                ExposureLevel.lex8h(Double.parseDouble(row.get("L_EX8h_db"))), Double.parseDouble(row.get("years")));
    }

    private static Sex sex(Map<String, String> row) {
        return row.get("sex").equals("M") ? Sex.MALE : Sex.FEMALE;
    }

    private static int years(Map<String, String> row) {
        return Integer.parseInt(row.get("age"));
    }

    private static AgeEdition edition(Map<String, String> row) {
        return row.get("edition").contains("7029:2017") ? AgeEdition.ISO_7029_2017 : AgeEdition.ISO_7029_2000;
    }

    /** Pins our arithmetic to another computation of the same formulas, which rounds the multipliers to 3 decimals. */
    @Test
    void theGridIsReproduced() {
        List<Map<String, String>> rows = Vectors.rows("iso1999-nipts-grid-computed.csv");
        assertThat(rows).hasSize(180);
        for (Map<String, String> row : rows) {
            Frequency frequency = Frequency.valueOf("HZ_" + row.get("freq_hz"));
            for (int worse : new int[] {90, 50, 10}) {
                assertThat(value(NoiseComponent.decibels(noise(row), frequency, new Fractile(worse / 100.0))))
                        .as(row.toString())
                        .isCloseTo(Double.parseDouble(row.get("nipts_" + worse + "pct_worse")), within(0.01));
            }
        }
    }
}
