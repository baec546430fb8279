package org.thresholdregister.core.aging;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import java.util.OptionalInt;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;

/**
 * What may be taken off a shift for aging between two tests, in dB per frequency: the table value at the later age
 * less the value at the earlier one, 29 CFR 1910.95 Appendix F and 30 CFR 62.172(c).
 */
public sealed interface AgeAllowance {

    /** The allowance in dB, as far as it is known. */
    DecibelRange at(Frequency frequency);

    /** Age in completed years on the day of the earlier test, where it is known and needed. */
    OptionalInt ageAtBaseline();

    /** Age in completed years on the day of the later test, where it is known and needed. */
    OptionalInt ageAtTest();

    /** Read from a published table. */
    record FromTable(AgeCorrectionTable table, int yearsAtBaseline, int yearsAtTest) implements AgeAllowance {
        @Override
        public DecibelRange at(Frequency frequency) {
            return DecibelRange.exactly(
                    table.decibels(yearsAtTest, frequency) - table.decibels(yearsAtBaseline, frequency));
        }

        @Override
        public OptionalInt ageAtBaseline() {
            return OptionalInt.of(yearsAtBaseline);
        }

        @Override
        public OptionalInt ageAtTest() {
            return OptionalInt.of(yearsAtTest);
        }
    }

    /** No allowance is made: the rule set knows none, or the programme has chosen none. */
    record SwitchedOff() implements AgeAllowance {
        private static final DecibelRange NOTHING = DecibelRange.exactly(0);

        @Override
        public DecibelRange at(Frequency frequency) {
            return NOTHING;
        }

        @Override
        public OptionalInt ageAtBaseline() {
            return OptionalInt.empty();
        }

        @Override
        public OptionalInt ageAtTest() {
            return OptionalInt.empty();
        }
    }

    /**
     * Sex or birth date is not on record, so that no table row can be read. The published values never fall with age,
     * so the allowance is nothing or more; how much more is unknown.
     */
    record NotKnown(OptionalInt ageAtBaseline, OptionalInt ageAtTest, boolean birthDateMissing, boolean sexMissing)
            implements AgeAllowance {
        private static final DecibelRange NOTHING_OR_MORE = DecibelRange.atLeast(0);

        @Override
        public DecibelRange at(Frequency frequency) {
            return NOTHING_OR_MORE;
        }
    }

    /**
     * The allowance for a person between the days of two tests.
     *
     * @param tables empty where no allowance is made
     */
    static AgeAllowance between(
            Optional<AgeTables> tables,
            Optional<LocalDate> birthDate,
            Optional<Sex> sex,
            LocalDate baselineDate,
            LocalDate testDate) {
        if (tables.isEmpty()) {
            return new SwitchedOff();
        }
        if (birthDate.isPresent() && sex.isPresent()) {
            return new FromTable(
                    tables.get().of(sex.get()),
                    completedYears(birthDate.get(), baselineDate),
                    completedYears(birthDate.get(), testDate));
        }
        return new NotKnown(
                birthDate
                        .map(birth -> OptionalInt.of(completedYears(birth, baselineDate)))
                        .orElse(OptionalInt.empty()),
                birthDate
                        .map(birth -> OptionalInt.of(completedYears(birth, testDate)))
                        .orElse(OptionalInt.empty()),
                birthDate.isEmpty(),
                sex.isEmpty());
    }

    private static int completedYears(LocalDate birthDate, LocalDate day) {
        return Period.between(birthDate, day).getYears();
    }
}
