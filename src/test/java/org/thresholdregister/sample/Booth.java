package org.thresholdregister.sample;

import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;

/** What a test writes down of a person's true hearing: steps of 5 dB, the day's chance, the instrument's limits. */
final class Booth {

    private static final List<String> SMALL_REMARKS = List.of(
            "tired after a night shift",
            "1000 Hz repeated, same result",
            "spectacles taken off, earphones refitted",
            "asked for instructions in Spanish",
            "ringing reported before the test",
            "wax seen in the left ear, test went on");

    private Booth() {}

    /** A test by a steady listener: half the usual chance and no bad days, for stories that need a plain answer. */
    static HearingTest steady(Hearing hearing, String site, LocalDate day, TestPurpose purpose, Dice dice) {
        return test(hearing, site, day, purpose, true, dice);
    }

    static HearingTest usual(Hearing hearing, String site, LocalDate day, TestPurpose purpose, Dice dice) {
        return test(hearing, site, day, purpose, false, dice);
    }

    private static HearingTest test(
            Hearing hearing, String site, LocalDate day, TestPurpose purpose, boolean steady, Dice dice) {
        boolean retest = purpose == TestPurpose.RETEST;
        Plant.Instrument instrument = Plant.instrumentFor(site, day, retest, dice);
        Quiet quiet = Quiet.before(purpose, dice);
        boolean unrested = !steady && quiet.hours() < 14 && !quiet.protectorsWorn();
        double tired = unrested && dice.chance(0.05) ? dice.between(4.0, 14.0) : 0;
        double cold = !steady && !retest && dice.chance(0.004) ? dice.between(8.0, 16.0) : 0;
        double inattentive = !steady && !retest && dice.chance(0.006) ? dice.between(8.0, 16.0) : 0;
        double scale = steady ? 0.5 : 1;
        double today = dice.normal(0, 1.4 * scale) + inattentive + (purpose == TestPurpose.BASELINE ? 1 : 0);

        Audiogram.Builder audiogram = new Audiogram.Builder(day, purpose);
        for (Ear ear : Ear.values()) {
            double thisEar = dice.normal(0, 1.4 * scale);
            for (Frequency frequency : Frequency.values()) {
                boolean high = frequency.compareTo(Frequency.HZ_6000) >= 0;
                double chance = dice.normal(0, (high ? 4.3 : 2.9) * scale);
                double heard = hearing.levelDb(ear, frequency, day) + today + thisEar + chance + cold;
                heard += frequency.compareTo(Frequency.HZ_2000) >= 0 ? tired : 0;
                heard += Plant.isFaulty(instrument, day) && Plant.FAULTY_FREQUENCIES.contains(frequency)
                        ? Plant.FAULT_DB
                        : 0;
                audiogram.set(ear, frequency, written(heard, instrument, frequency));
            }
        }
        if (instrument.tests8000Hz() && !steady && dice.chance(0.004)) {
            for (Ear ear : Ear.values()) {
                audiogram.set(ear, Frequency.HZ_8000, Threshold.notTested(Reason.DID_NOT_TEST));
            }
        }
        String remark = cold > 0 ? "head cold, worker felt blocked" : dice.chance(0.03) ? dice.pick(SMALL_REMARKS) : "";
        return new HearingTest(
                audiogram.build(),
                quiet.hoursText(),
                quiet.protectorsWorn() ? "yes" : "no",
                Plant.testerFor(site, instrument, dice),
                instrument.name(),
                Plant.transducerOf(instrument, day),
                remark);
    }

    private static Threshold written(double heardDb, Plant.Instrument instrument, Frequency frequency) {
        if (frequency == Frequency.HZ_8000 && !instrument.tests8000Hz()) {
            return Threshold.notGiven();
        }
        int step = (int) Math.floor(heardDb / Threshold.STEP_DB + 0.5) * Threshold.STEP_DB;
        int limit = instrument.limitDb(frequency);
        return step > limit
                ? Threshold.noResponseAt(limit)
                : Threshold.measured(Math.max(HearingLevel.LOWEST_DB, step));
    }

    /** The time without workplace noise before a test. */
    private record Quiet(double hours, boolean protectorsWorn) {

        /** 29 CFR 1910.95(g)(5)(iii) asks for 14 hours before a baseline; common practice asks it of retests too. */
        static Quiet before(TestPurpose purpose, Dice dice) {
            boolean mustBeQuiet = purpose == TestPurpose.BASELINE || purpose == TestPurpose.RETEST;
            if (mustBeQuiet && dice.chance(0.85) || dice.chance(0.45)) {
                return new Quiet(dice.pick(List.of(14, 15, 15, 16, 16, 40, 64)), false);
            }
            double hours = dice.pick(List.of(0.5, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0));
            return new Quiet(hours, mustBeQuiet || dice.chance(0.6));
        }

        String hoursText() {
            return hours == Math.rint(hours) ? Integer.toString((int) hours) : Double.toString(hours);
        }
    }
}
