package org.thresholdregister.core.aging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Frequency;

/** Every value of 29 CFR 1910.95 Appendix F, Tables F-1 and F-2, as transcribed (see {@code vectors/README.md}). */
@DisplayName("Tables F-1 and F-2 (29 CFR 1910.95 Appendix F)")
class AgeCorrectionTableTest {

    private static final List<Frequency> PUBLISHED =
            List.of(Frequency.HZ_1000, Frequency.HZ_2000, Frequency.HZ_3000, Frequency.HZ_4000, Frequency.HZ_6000);

    @ParameterizedTest
    @CsvSource({"MALE, Table F-1, osha-table-f1-male.csv", "FEMALE, Table F-2, osha-table-f2-female.csv"})
    void everyPublishedValueIsRead(Sex sex, String name, String file) {
        AgeCorrectionTable table = AgeTables.OSHA_APPENDIX_F.of(sex);
        List<Map<String, String>> rows = Vectors.rows(file);

        assertThat(table.name()).isEqualTo(name);
        assertThat(rows).hasSize(41);
        for (int row = 0; row < rows.size(); row++) {
            int age = 20 + row;
            assertThat(rows.get(row).get("age")).isEqualTo(printedAge(age));
            for (Frequency frequency : PUBLISHED) {
                assertThat(table.decibels(age, frequency))
                        .as("%s at %d, %d Hz", name, age, frequency.hertz())
                        .isEqualTo(Integer.parseInt(rows.get(row).get("" + frequency.hertz())));
            }
        }
    }

    /** As the appendix words its first and last row. */
    private static String printedAge(int age) {
        return age == 20 ? "20 or younger" : age == 60 ? "60 or older" : "" + age;
    }

    /** The rows are headed "20 or younger" and "60 or older". */
    @ParameterizedTest
    @EnumSource
    void youngerPeopleReadTheFirstRowAndOlderOnesTheLast(Sex sex) {
        AgeCorrectionTable table = AgeTables.OSHA_APPENDIX_F.of(sex);
        for (Frequency frequency : PUBLISHED) {
            assertThat(List.of(0, 16, 19))
                    .allSatisfy(
                            age -> assertThat(table.decibels(age, frequency)).isEqualTo(table.decibels(20, frequency)));
            assertThat(List.of(61, 70, 99))
                    .allSatisfy(
                            age -> assertThat(table.decibels(age, frequency)).isEqualTo(table.decibels(60, frequency)));
            assertThat(table.decibels(19, frequency)).isLessThan(table.decibels(61, frequency));
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Frequency.class,
            names = {"HZ_500", "HZ_8000"})
    void frequenciesWithoutPublishedValuesAreRefused(Frequency frequency) {
        for (Sex sex : Sex.values()) {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> AgeTables.OSHA_APPENDIX_F.of(sex).decibels(40, frequency))
                    .withMessageContaining(frequency.hertz() + " Hz");
        }
    }

    /** An allowance that is not known is taken as "nothing or more", which rests on this. */
    @ParameterizedTest
    @EnumSource
    void noPublishedValueFallsWithAge(Sex sex) {
        AgeCorrectionTable table = AgeTables.OSHA_APPENDIX_F.of(sex);
        for (Frequency frequency : PUBLISHED) {
            for (int age = 20; age < 60; age++) {
                assertThat(table.decibels(age + 1, frequency))
                        .as("%s at %d, %d Hz", table.name(), age + 1, frequency.hertz())
                        .isGreaterThanOrEqualTo(table.decibels(age, frequency));
            }
        }
    }

    /** The enum holds tables read when the program starts; this reads one again, row by row. */
    @ParameterizedTest
    @CsvSource({"osha-table-f1-male.csv, MALE", "osha-table-f2-female.csv, FEMALE"})
    void aTableReadAgainIsTheTableInUse(String resource, Sex sex) {
        AgeCorrectionTable read = AgeCorrectionTable.load("the table", resource);
        AgeCorrectionTable used = AgeTables.OSHA_APPENDIX_F.of(sex);
        for (Frequency frequency : PUBLISHED) {
            for (int age = 20; age <= 60; age++) {
                assertThat(read.decibels(age, frequency)).isEqualTo(used.decibels(age, frequency));
            }
        }
    }

    @Test
    void aTableThatIsMissingIsNamed() {
        assertThatIllegalStateException()
                .isThrownBy(() -> AgeCorrectionTable.load("Table X", "no-such-table.csv"))
                .withMessage("Table X is missing from the program");
    }

    @Test
    void aTableWithoutARowForEachAgeIsRefused() {
        assertThatIllegalStateException()
                .isThrownBy(() -> AgeCorrectionTable.load("Table X", "table-without-its-last-row.csv"))
                .withMessage("Table X does not have a row for each age");
    }
}
