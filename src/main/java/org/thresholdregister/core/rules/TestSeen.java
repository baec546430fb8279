package org.thresholdregister.core.rules;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.PerEar;

/**
 * One test, with what a rule may look at beside it.
 *
 * @param baselines the baseline of each ear that the test is compared with; empty on the baseline itself and before it
 * @param earlier each ear's valid judged tests before this one, in order
 */
public record TestSeen(
        Audiogram test,
        PerEar<Optional<Audiogram>> baselines,
        PerEar<List<Audiogram>> earlier,
        Optional<LocalDate> birthDate,
        Optional<Sex> sex) {

    /** Age in completed years on the day of the test. */
    OptionalInt age() {
        return birthDate.isPresent()
                ? OptionalInt.of(Period.between(birthDate.get(), test.date()).getYears())
                : OptionalInt.empty();
    }
}
