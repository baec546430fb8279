package org.thresholdregister.core.calibration;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * An audiometer with what is on record of it.
 *
 * @param key by which transducers name the unit that they are calibrated to
 * @param identity as tests name it
 * @param from first day in use, and of these records: tests before it are not looked at
 * @param to last day in use
 * @param calibrations in any order
 * @param checks the daily functional checks; of one day the last counts, in the order given
 */
public record Audiometer(
        long key,
        String identity,
        Type type,
        LocalDate from,
        Optional<LocalDate> to,
        List<Calibration> calibrations,
        List<Check> checks) {

    /** How tones are presented and answers taken down. */
    public enum Type {
        MANUAL("manual"),
        /** It runs the test by itself; 29 CFR 1910.95(g)(3) lets a technician without a certificate operate it. */
        MICROPROCESSOR("microprocessor"),
        SELF_RECORDING("self-recording");

        private final String word;

        Type(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** The two kinds of calibration that have an interval. */
    public enum CalibrationKind {
        ACOUSTIC,
        EXHAUSTIVE
    }

    /** How a unit was found, or left. */
    public enum Tolerance {
        WITHIN,
        OUTSIDE,
        NOT_STATED
    }

    /** A calibration; one that left the unit outside its tolerances is none. */
    public record Calibration(CalibrationKind kind, LocalDate day, Tolerance asFound, Tolerance asLeft) {

        boolean counts() {
            return asLeft != Tolerance.OUTSIDE;
        }
    }

    /** A daily functional check. */
    public record Check(LocalDate day, DailyCheck.Verdict verdict) {}

    public Audiometer {
        calibrations = calibrations.stream()
                .sorted(Comparator.comparing(Calibration::day))
                .toList();
        checks = checks.stream().sorted(Comparator.comparing(Check::day)).toList();
    }

    public boolean isInUse(LocalDate day) {
        return !day.isBefore(from) && to.map(last -> !day.isAfter(last)).orElse(true);
    }

    /**
     * Until when a kind of calibration is in time, as of a day: the anniversary of the last one of that kind or, for the
     * yearly acoustic one, of a later exhaustive one, which includes it (common practice). An anniversary of 29 February
     * is 28 February. Empty where none is on record.
     *
     * <p>Source: 29 CFR 1910.95(h)(5)(ii), at least annually, and (iii), at least every two years.
     */
    public Optional<LocalDate> inTimeUntil(CalibrationKind kind, LocalDate day) {
        int years = kind == CalibrationKind.ACOUSTIC ? 1 : 2;
        return calibrations.stream()
                .filter(calibration ->
                        calibration.counts() && !calibration.day().isAfter(day))
                .filter(calibration -> kind == CalibrationKind.ACOUSTIC || calibration.kind() == kind)
                .reduce((earlier, later) -> later)
                .map(calibration -> calibration.day().plusYears(years));
    }

    /**
     * The failed check that still calls for something on a day: a deviation for all of its day and until a calibration
     * on its day or later, a fault heard until a check that passed.
     */
    public Optional<Check> openFailure(LocalDate day) {
        Check open = null;
        for (Check check : checks) {
            if (check.day().isAfter(day)) {
                break;
            }
            if (check.verdict().isFailed() && (open == null || open.verdict() != DailyCheck.Verdict.DEVIATES)) {
                open = check;
            } else if (open != null
                    && (isSettled(open, check.day())
                            || check.verdict() == DailyCheck.Verdict.PASSED
                                    && open.verdict() == DailyCheck.Verdict.FAULT_HEARD)) {
                open = check.verdict().isFailed() ? check : null;
            }
        }
        return Optional.ofNullable(open).filter(failed -> !isSettled(failed, day));
    }

    /** The record knows days only, so that a calibration on the day of a failed check does not clear that day's tests. */
    private boolean isSettled(Check failed, LocalDate day) {
        return day.isAfter(failed.day()) && wasCalibrated(failed.day(), day);
    }

    private boolean wasCalibrated(LocalDate from, LocalDate until) {
        return calibrations.stream()
                .anyMatch(calibration -> calibration.counts()
                        && !calibration.day().isBefore(from)
                        && !calibration.day().isAfter(until));
    }

    /** What the day's check says: that of the last one entered; empty where there is none. */
    public Optional<DailyCheck.Verdict> checkOf(LocalDate day) {
        return checks.stream()
                .filter(check -> check.day().equals(day))
                .reduce((earlier, later) -> later)
                .map(Check::verdict);
    }

    /**
     * The next failed check after a day, where none in between passed: what was tested that day may have been tested on a
     * unit that was off already (common practice). A calibration in between clears it, and so does one after the failure
     * that found the unit within its tolerances.
     */
    Optional<Check> failedNext(LocalDate day) {
        return checks.stream()
                .filter(check -> check.day().isAfter(day) && check.verdict() != DailyCheck.Verdict.INCOMPLETE)
                .findFirst()
                .filter(check -> check.verdict().isFailed())
                .filter(failed -> !wasCalibrated(day.plusDays(1), failed.day().minusDays(1)))
                .filter(failed -> calibrations.stream()
                        .filter(calibration -> !calibration.day().isBefore(failed.day()))
                        .findFirst()
                        .map(next -> next.asFound() != Tolerance.WITHIN)
                        .orElse(true));
    }

    /**
     * The next calibration after a day, where it found the unit outside its tolerances and no check in between passed:
     * likewise.
     */
    Optional<Calibration> foundOutsideNext(LocalDate day) {
        return calibrations.stream()
                .filter(calibration -> calibration.day().isAfter(day))
                .findFirst()
                .filter(calibration -> calibration.asFound() == Tolerance.OUTSIDE)
                .filter(calibration -> checks.stream()
                        .noneMatch(check -> check.day().isAfter(day)
                                && check.day().isBefore(calibration.day())
                                && check.verdict() == DailyCheck.Verdict.PASSED));
    }
}
