package org.thresholdregister.core.calibration;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A pair of earphones. It is calibrated to a unit, and on another one its levels are not known (common practice).
 *
 * @param identity as tests name it
 * @param units to which unit it was calibrated when
 */
public record Headset(String identity, Type type, List<CalibratedTo> units) {

    /** How it meets the ear. */
    public enum Type {
        SUPRA_AURAL("supra-aural"),
        CIRCUMAURAL("circumaural"),
        INSERT("insert");

        private final String word;

        Type(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** @param unit key of the audiometer */
    public record CalibratedTo(long unit, LocalDate from, Optional<LocalDate> to) {

        boolean holds(LocalDate day) {
            return !day.isBefore(from) && to.map(last -> !day.isAfter(last)).orElse(true);
        }
    }

    public Headset {
        units = List.copyOf(units);
    }

    /** The unit that it is calibrated to on a day; of two the one that began later. */
    public Optional<Long> unitOn(LocalDate day) {
        return units.stream()
                .filter(unit -> unit.holds(day))
                .max(Comparator.comparing(CalibratedTo::from))
                .map(CalibratedTo::unit);
    }
}
