package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.calibration.AppendixE;
import org.thresholdregister.core.calibration.Audiometer;
import org.thresholdregister.core.calibration.Audiometer.CalibrationKind;
import org.thresholdregister.core.calibration.Audiometer.Tolerance;
import org.thresholdregister.core.calibration.DailyCheck;
import org.thresholdregister.core.calibration.EquipmentDoubt;
import org.thresholdregister.core.calibration.MeterReading;
import org.thresholdregister.core.calibration.OctaveBand;
import org.thresholdregister.core.calibration.RoomLimit;
import org.thresholdregister.core.calibration.Tester.Qualification;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/** Puts the state of instruments, rooms and testers into words. */
public final class EquipmentWords {

    private EquipmentWords() {}

    public static String calibration(CalibrationKind kind) {
        return switch (kind) {
            case ACOUSTIC -> "acoustic calibration";
            case EXHAUSTIVE -> "exhaustive calibration";
        };
    }

    /** The paragraph that asks for it. */
    public static Citation basis(CalibrationKind kind) {
        return new Citation(
                switch (kind) {
                    case ACOUSTIC -> "29 CFR 1910.95(h)(5)(ii)";
                    case EXHAUSTIVE -> "29 CFR 1910.95(h)(5)(iii)";
                });
    }

    /** What a failed check calls for. */
    public static String calledFor(DailyCheck.Verdict failed) {
        return failed == DailyCheck.Verdict.DEVIATES
                ? "acoustic calibration after a failed check"
                : "repair and a new check after a fault was heard";
    }

    /** {@code AUD-02 needs its acoustic calibration by 3 Dec 2026; the functional check of today is missing for 1 of 2 units.} */
    public static String lead(List<Audiometer> units, LocalDate today) {
        List<Audiometer> used =
                units.stream().filter(unit -> unit.isInUse(today)).toList();
        long missing = used.stream()
                .filter(unit -> unit.checkOf(today)
                        .filter(verdict -> verdict != DailyCheck.Verdict.INCOMPLETE)
                        .isEmpty())
                .count();
        String checks = missing == 0
                ? "the functional check of today is on record for every unit in use."
                : "the functional check of today is missing for " + missing + " of "
                        + Counted.of(used.size(), "unit.", "units.");
        return used.stream()
                .min(Comparator.comparing(unit -> acousticUntil(unit, today)))
                .map(unit -> unit.identity() + " needs its acoustic calibration by "
                        + Words.day(acousticUntil(unit, today)) + "; " + checks)
                .orElse("No audiometer in use is on record.");
    }

    private static LocalDate acousticUntil(Audiometer unit, LocalDate today) {
        return unit.inTimeUntil(CalibrationKind.ACOUSTIC, today).orElse(unit.from());
    }

    public static String tolerance(Tolerance tolerance) {
        return switch (tolerance) {
            case WITHIN -> "within tolerances";
            case OUTSIDE -> "outside tolerances";
            case NOT_STATED -> "not stated";
        };
    }

    public static String listening(DailyCheck.Listening listening) {
        return switch (listening) {
            case GOOD -> "clear";
            case FAULT -> "a fault was heard";
            case NOT_DONE -> "not done";
        };
    }

    public static String verdict(DailyCheck.Verdict verdict) {
        return switch (verdict) {
            case PASSED -> "passed";
            case DEVIATES -> "failed: 10 dB or more off";
            case FAULT_HEARD -> "failed: a fault was heard";
            case INCOMPLETE -> "incomplete";
        };
    }

    public static String qualification(Qualification qualification) {
        return switch (qualification) {
            case AUDIOLOGIST -> "audiologist";
            case OTOLARYNGOLOGIST -> "otolaryngologist";
            case PHYSICIAN -> "physician";
            case CERTIFIED_TECHNICIAN -> "certified technician";
            case COMPETENT_TECHNICIAN -> "technician who has shown competence";
            case OTHER_TECHNICIAN -> "technician, microprocessor audiometers only";
        };
    }

    /** What was not in order, in whole sentences. */
    public static String doubt(EquipmentDoubt doubt) {
        return switch (doubt) {
            case EquipmentDoubt.CalibrationOutOfDate late ->
                late.inTimeUntil()
                        .map(until -> "The last " + calibration(late.kind()) + " of " + late.instrument()
                                + " was in time until " + Words.day(until) + ".")
                        .orElse("No " + calibration(late.kind()) + " of " + late.instrument()
                                + " is on record by that day.");
            case EquipmentDoubt.CalibrationFoundOutside found ->
                "The calibration of " + Words.day(found.calibrated()) + " found " + found.instrument()
                        + " outside its tolerances, and no functional check in between had passed.";
            case EquipmentDoubt.CheckMissing missing ->
                missing.incomplete()
                        ? "The functional check of " + missing.instrument() + " on that day is incomplete."
                        : "No functional check of " + missing.instrument() + " is on record for that day.";
            case EquipmentDoubt.CheckFailed failed ->
                "The functional check of " + failed.instrument() + " on " + Words.day(failed.failedOn())
                        + (failed.verdict() == DailyCheck.Verdict.DEVIATES
                                ? " was 10 dB or more off, and no calibration had followed by then."
                                : " found a fault by ear, and no check had passed since.");
            case EquipmentDoubt.CheckFailedLater failed ->
                "The next functional check of " + failed.instrument() + ", on " + Words.day(failed.failedOn())
                        + ", failed; "
                        + failed.passedOn()
                                .map(day -> "the last one that passed was that of " + Words.day(day) + ".")
                                .orElse("none before it is on record as passed.");
            case EquipmentDoubt.TransducerOfAnotherUnit other ->
                "The earphones " + other.transducer() + " were used on " + other.instrument() + ", but "
                        + other.calibratedTo()
                                .map(unit -> "are calibrated to " + unit + ".")
                                .orElse("were calibrated to no unit on record on that day.");
            case EquipmentDoubt.RoomTooLoud loud ->
                "The room " + loud.room() + " measured on " + Words.day(loud.measured()) + " "
                        + Words.listed(loud.bands().stream()
                                .map(EquipmentWords::tooLoud)
                                .toList())
                        + ".";
            case EquipmentDoubt.RoomNotOnRecord unknown ->
                switch (unknown.why()) {
                    case NO_SUCH_ROOM ->
                        unknown.room().isBlank()
                                ? "The record does not say in which room the test was made."
                                : "The room " + unknown.room() + " is not on record.";
                    case NOT_MEASURED_YET ->
                        "No background levels of the room " + unknown.room() + " are on record by that day.";
                    case BANDS_MISSING ->
                        "The background levels of the room " + unknown.room()
                                + " lack a band, so that the limits cannot be decided.";
                };
            case EquipmentDoubt.TesterCertificateExpired expired ->
                expired.expired()
                        .map(last -> "The certificate of " + expired.tester() + " ran out on " + Words.day(last) + ".")
                        .orElse("No certificate of " + expired.tester()
                                + " is on record for that day, and the unit is no microprocessor audiometer.");
            case EquipmentDoubt.TesterWithoutSupervisor alone ->
                "The record names no audiologist or physician to whom " + alone.tester() + " is responsible.";
            case EquipmentDoubt.InstrumentNotRegistered unknown ->
                notOnRecord("with which instrument the test was made", "instrument", unknown.named());
            case EquipmentDoubt.TransducerNotRegistered unknown ->
                notOnRecord("with which earphones the test was made", "transducer", unknown.named());
            case EquipmentDoubt.TesterNotOnRecord unknown ->
                notOnRecord("who made the test", "tester", unknown.named());
        };
    }

    private static String tooLoud(RoomLimit.BandFinding band) {
        return band.level().map(MeterReading::toString).orElse("") + " dB at "
                + band.band().hertz() + " Hz, where " + band.limit() + " dB are allowed";
    }

    private static String notOnRecord(String what, String kind, String named) {
        return named.isBlank()
                ? "The record does not say " + what + "."
                : "The " + kind + " " + named + " is not on record.";
    }

    /** What can be done about it, in whole sentences. */
    public static String advice(EquipmentDoubt doubt) {
        return switch (doubt) {
            case EquipmentDoubt.CalibrationOutOfDate ignored ->
                "Have the unit calibrated; if it is found within its tolerances a person may keep the test.";
            case EquipmentDoubt.CalibrationFoundOutside ignored -> "Test again on a unit that is in order.";
            case EquipmentDoubt.CheckMissing ignored ->
                "Enter the check if it was made; otherwise the next one says whether the unit was right.";
            case EquipmentDoubt.CheckFailed failed ->
                failed.verdict() == DailyCheck.Verdict.DEVIATES
                        ? "Have the unit calibrated, then test again."
                        : "Have the unit mended and checked, then test again.";
            case EquipmentDoubt.CheckFailedLater ignored -> "Test again once the unit is in order.";
            case EquipmentDoubt.TransducerOfAnotherUnit ignored ->
                "Test again with the unit's own earphones, or have them calibrated to it.";
            case EquipmentDoubt.RoomTooLoud ignored -> "Test again in a room that keeps the limits.";
            case EquipmentDoubt.RoomNotOnRecord ignored -> "Enter the room and its measured levels.";
            case EquipmentDoubt.TesterCertificateExpired ignored ->
                "Enter the certificate if there was one; otherwise a professional decides about the test.";
            case EquipmentDoubt.TesterWithoutSupervisor ignored -> "Enter who supervises.";
            case EquipmentDoubt.InstrumentNotRegistered ignored ->
                "Put the unit on record, or find out from the tester which one it was.";
            case EquipmentDoubt.TransducerNotRegistered ignored ->
                "Put the earphones on record, or find out from the tester which ones they were.";
            case EquipmentDoubt.TesterNotOnRecord ignored -> "Put the tester on record.";
        };
    }

    /** What a functional check comes to, in whole sentences, for whoever has just made it. */
    public static String check(String instrument, DailyCheck.Result result) {
        return switch (result.verdict()) {
            case PASSED -> instrument + " may be used: no reading is 10 dB or more off.";
            case DEVIATES ->
                instrument + " needs an acoustic calibration before tests on it count: "
                        + Words.listed(result.deviations().stream()
                                .map(EquipmentWords::deviation)
                                .toList())
                        + ".";
            case FAULT_HEARD ->
                instrument + " is not to be used until the fault is mended and a check has passed (common practice).";
            case INCOMPLETE ->
                "Whether " + instrument + " may be used cannot be decided: a reading of 500 to 6000 Hz or"
                        + " the listening check is missing.";
        };
    }

    private static String deviation(DailyCheck.Deviation at) {
        return Words.ear(at.ear()) + " at " + at.frequency().hertz() + " Hz " + Words.threshold(at.reading())
                + " where " + Words.threshold(at.reference()) + " is known";
    }

    /** What the readings of an acoustic check ask for, in whole sentences. */
    public static String acoustic(AppendixE.Result result) {
        String furthest = result.furthestOff()
                .map(at -> "Furthest off: " + Words.ear(at.ear()) + " at "
                        + at.frequency().hertz() + " Hz, "
                        + at.reading() + " dB where " + at.expected() + " dB are printed ("
                        + (at.deviationTenths() > 0 ? "+" : "") + MeterReading.inDecibels(at.deviationTenths())
                        + " dB).")
                .orElse("");
        if (result.exhaustiveRequired() == Answer.YES) {
            return "An exhaustive calibration is required: a reading is 15 dB or more off. " + furthest;
        }
        if (result.exhaustiveAdvised() == Answer.YES) {
            return "An exhaustive calibration is advised"
                    + (result.missing() == 0
                            ? ". "
                            : "; whether it is required cannot be decided, " + missingReadings(result.missing()) + ". ")
                    + furthest;
        }
        return result.missing() == 0
                ? "Every reading is within the tolerances of Appendix E. " + furthest
                : "Whether an exhaustive calibration is called for cannot be decided: "
                        + missingReadings(result.missing()) + ".";
    }

    private static String missingReadings(int missing) {
        return Counted.of(missing, "of 12 readings is missing", "of 12 readings are missing");
    }

    /** Whether a room keeps a limit, and where it does not: {@code keeps it}, {@code too loud at 500 Hz: 44 dB, 40 allowed}. */
    public static String room(RoomLimit.Finding finding) {
        return switch (finding.isKept()) {
            case YES -> "keeps it";
            case NO -> {
                List<String> bands = new ArrayList<>();
                finding.tooLoud()
                        .forEach(band -> bands.add(band.band().hertz() + " Hz: "
                                + band.level().map(MeterReading::toString).orElse("") + " dB, " + band.limit()
                                + " allowed"));
                yield "too loud at " + Words.listed(bands);
            }
            case UNDECIDED -> "cannot be decided: not measured at " + bands(finding.missing());
        };
    }

    private static String bands(List<OctaveBand> bands) {
        return Words.listed(bands.stream()
                        .map(band -> Integer.toString(band.hertz()))
                        .toList())
                + " Hz";
    }

    /** The name of a limit with its source: {@code ANSI S3.1-1999 (R2018), Table 1 (from memory, …): insert earphones}. */
    public static String limit(RoomLimit limit) {
        return limit.source().place()
                + (limit.provenance() == Provenance.LOOKED_UP ? "" : " (from memory, not checked against the text)")
                + ": " + limit.earphones();
    }

    /** {@code in time until 3 Dec 2026, 9 days left}, or what is wrong. */
    public static String inTime(Optional<LocalDate> until, LocalDate today) {
        return until.map(last -> "in time until " + Words.day(last) + ", "
                        + Counted.daysLeft(ChronoUnit.DAYS.between(today, last)))
                .orElse("none on record");
    }
}
