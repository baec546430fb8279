package org.thresholdregister.core.noise;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.regulation.PublishedTable;

/** The published tables, row by row; tolerance is half the last printed digit. */
class NoiseTablesTest {

    private static List<String[]> rows(String name, int count) {
        List<String[]> rows = PublishedTable.rows(NoiseTablesTest.class, "/vectors/" + name, name).stream()
                .skip(1)
                .toList();
        assertThat(rows).as(name).hasSize(count);
        return rows;
    }

    private static double twa(double percent, DoseRule rule) {
        return TimeWeightedAverage.of(new NoiseDose(percent, rule))
                .orElseThrow()
                .decibels();
    }

    @Test
    void theFormulaGivesEveryRowOfTableA1ButOne() {
        List<String> differing = new ArrayList<>();
        for (String[] row : rows("osha-table-a1-dose-twa.csv", 151)) {
            String shown = OneDecimal.of(twa(Double.parseDouble(row[0]), DoseRule.OSHA_ACTION));
            if (!shown.equals(row[1])) {
                differing.add(row[0] + " %: printed " + row[1] + ", formula " + shown);
            }
        }
        assertThat(differing)
                .as("both editions print 91.1 at 115 %, where 16.61 log10(1.15) + 90 is 91.008")
                .containsExactly("115 %: printed 91.1, formula 91.0");
    }

    @Test
    void tableA1ReadBackwardsGivesItsDoseAgain() {
        for (String[] row : rows("osha-table-a1-dose-twa.csv", 151)) {
            double dose = Double.parseDouble(row[0]);
            double back = TimeWeightedAverage.ofDba(twa(dose, DoseRule.OSHA_ACTION))
                    .dose(DoseRule.OSHA_ACTION)
                    .percent();
            assertThat(back).isCloseTo(dose, within(dose * 1e-9));
        }
    }

    @Test
    void theFormulaGivesEveryRowOfTableG16a() {
        for (String[] row : rows("osha-table-g16a.csv", 51)) {
            assertPrinted(row[0], row[1]);
        }
    }

    @Test
    void theFormulaGivesEveryRowOfTable621() {
        for (String[] row : rows("msha-table-62-1.csv", 32)) {
            assertPrinted(row[0], row[1]);
        }
    }

    private static void assertPrinted(String level, String hours) {
        double expected = Double.parseDouble(hours);
        double halfDigit = new BigDecimal(hours).ulp().doubleValue() / 2 + 1e-9;
        assertThat(DoseRule.OSHA_ACTION.referenceHours(SoundLevel.ofDba(Double.parseDouble(level))))
                .as("reference duration at %s dBA", level)
                .isCloseTo(expected, within(halfDigit));
    }

    @Test
    void theFormulaGivesEveryRowOfTable622ButThoseRoundedToWholeTens() {
        List<String> differing = new ArrayList<>();
        for (String[] row : rows("msha-table-62-2.csv", 36)) {
            double dose = NoiseDose.of(
                            NoiseDay.of(NoisePeriod.of(Double.parseDouble(row[1]), "8")), DoseRule.MSHA_ACTION)
                    .percent();
            if (Math.round(dose) != Long.parseLong(row[0])) {
                differing.add(row[1] + " dBA: printed " + row[0] + ", formula " + OneDecimal.of(dose));
            }
            assertThat(twa(Double.parseDouble(row[0]), DoseRule.MSHA_ACTION))
                    .as("%s %% to the whole dBA", row[0])
                    .isCloseTo(Double.parseDouble(row[1]), within(0.1));
        }
        assertThat(differing)
                .containsExactly(
                        "99 dBA: printed 350, formula 348.2",
                        "101 dBA: printed 460, formula 459.5",
                        "102 dBA: printed 530, formula 527.8",
                        "103 dBA: printed 610, formula 606.3",
                        "104 dBA: printed 700, formula 696.4",
                        "106 dBA: printed 920, formula 919.0");
    }

    @Test
    void theLimitUsesEveryRowOfTableG16AsPrinted() {
        List<String[]> rows = rows("osha-table-g16.csv", 9);
        for (String[] row : rows) {
            double hours = Double.parseDouble(row[0].replace(" or less", ""));
            assertThat(PermissibleExposure.permittedHours(SoundLevel.ofDba(Double.parseDouble(row[1]))))
                    .isEqualTo(hours);
        }
        assertThat(PermissibleExposure.printedLevels()).hasSize(rows.size());
    }

    @Test
    void theDurationsOfTableG16AreRoundedOnesOfTheFormula() {
        assertThat(DoseRule.OSHA_LIMIT.referenceHours(SoundLevel.ofDba(92))).isCloseTo(6.06, within(0.005));
        assertThat(DoseRule.OSHA_LIMIT.referenceHours(SoundLevel.ofDba(97))).isCloseTo(3.03, within(0.005));
        assertThat(DoseRule.OSHA_LIMIT.referenceHours(SoundLevel.ofDba(102))).isCloseTo(1.52, within(0.005));
    }
}
