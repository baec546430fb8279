package org.thresholdregister.core.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.validity.EarDifference;
import org.thresholdregister.core.validity.Fit;
import org.thresholdregister.core.validity.FlagCount;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.core.validity.FlagSource;
import org.thresholdregister.core.validity.LevelChange;
import org.thresholdregister.core.validity.Transducer;
import org.thresholdregister.core.validity.ValidityFlag;

/** Puts doubts about a test into words: what is odd, what to do about it, and what the limit rests on. */
public final class ValidityWords {

    /** The line that stands under every list of flags. */
    public static final String CAUTION =
            "A flag changes no number and sets no test aside; the tester and a professional decide.";

    private ValidityWords() {}

    /** {@code ears look exchanged}. */
    public static String kind(FlagKind kind) {
        return switch (kind) {
            case QUIET_TIME_SHORT -> "quiet time too short";
            case QUIET_TIME_NOT_ON_RECORD -> "quiet time not on record";
            case FREQUENCIES_MISSING -> "required frequencies not tested";
            case COULD_NOT_BE_TESTED -> "required frequencies could not be tested";
            case REPEAT_UNRELIABLE -> "two readings at 1000 Hz far apart";
            case REPEAT_DIFFERS -> "two readings at 1000 Hz apart";
            case EARS_SWAPPED -> "ears look exchanged";
            case EXCHANGED_WITH_ANOTHER -> "looks exchanged with another worker's test";
            case LIKE_ANOTHER -> "looks like another worker's test";
            case MEAN_BETTER_THAN_BASELINE -> "mean much better than at the baseline";
            case BETTER_THAN_BASELINE -> "a frequency much better than at the baseline";
            case WORSE_THAN_PREVIOUS -> "a frequency much worse than on the test before";
            case MASKING_CALLED_FOR -> "difference of the ears calls for masking";
            case NO_RESPONSE_THROUGHOUT -> "no response at any frequency";
            case SAME_LEVEL_THROUGHOUT -> "the same level at every frequency";
            case OFF_THE_STEP -> "a level off the 5 dB step";
            case ROOM_NOISE -> "room noise on the day";
            case CALIBRATION_OUT_OF_DATE -> "calibration out of date";
            case CALIBRATION_FOUND_OUTSIDE -> "unit found outside its tolerances";
            case FUNCTIONAL_CHECK_MISSING -> "functional check missing";
            case FUNCTIONAL_CHECK_FAILED -> "functional check failed";
            case FUNCTIONAL_CHECK_FAILED_LATER -> "next functional check failed";
            case TRANSDUCER_OF_ANOTHER_UNIT -> "earphones of another unit";
            case ROOM_TOO_LOUD -> "room too loud";
            case ROOM_NOT_ON_RECORD -> "room not on record";
            case TESTER_CERTIFICATE_EXPIRED -> "tester without a valid certificate";
            case TESTER_WITHOUT_SUPERVISOR -> "tester without a supervisor on record";
            case INSTRUMENT_NOT_REGISTERED -> "instrument not on record";
            case TRANSDUCER_NOT_REGISTERED -> "earphones not on record";
            case TESTER_NOT_ON_RECORD -> "tester not on record";
        };
    }

    /** {@code doubt} or {@code note}. */
    public static String weight(FlagKind.Weight weight) {
        return switch (weight) {
            case DOUBT -> "doubt";
            case NOTE -> "note";
        };
    }

    /** {@code 2 doubts, 1 note}; empty where there are none. */
    public static String count(FlagCount count) {
        List<String> parts = new ArrayList<>();
        if (count.doubts() > 0) {
            parts.add(Counted.of(count.doubts(), "doubt", "doubts"));
        }
        if (count.notes() > 0) {
            parts.add(Counted.of(count.notes(), "note", "notes"));
        }
        return String.join(", ", parts);
    }

    /** What is odd, with the values that it rests on: one or two whole sentences. */
    public static String reason(ValidityFlag flag) {
        return switch (flag) {
            case ValidityFlag.QuietTimeShort quiet -> quietTimeShort(quiet);
            case ValidityFlag.QuietTimeNotOnRecord quiet ->
                "The record does not say how long the worker had been away from workplace noise; " + asked(quiet.rule())
                        + ".";
            case ValidityFlag.FrequenciesMissing missing ->
                earOf(missing) + hertz(missing.frequencies()) + wereNot(missing.frequencies())
                        + "tested, though the rule asks for 500 to 6000 Hz.";
            case ValidityFlag.CouldNotBeTested couldNot ->
                earOf(couldNot) + hertz(couldNot.frequencies()) + " could not be tested.";
            case ValidityFlag.RepeatDiffers repeat -> repeatDiffers(repeat);
            case ValidityFlag.EarsLookSwapped swapped -> earsLookSwapped(swapped);
            case ValidityFlag.LooksLikeAnotherWorkers another -> looksLikeAnother(another);
            case ValidityFlag.BetterThanBaseline better -> betterThanBaseline(better);
            case ValidityFlag.WorseThanPrevious worse ->
                earOf(worse) + "more than 10 dB worse than on the test of " + Words.day(worse.previous()) + ": "
                        + changes(worse.at()) + ".";
            case ValidityFlag.MaskingCalledFor masking -> maskingCalledFor(masking);
            case ValidityFlag.NoResponseThroughout none ->
                earOf(none) + "no response at any frequency that was tested.";
            case ValidityFlag.SameLevelThroughout same ->
                earOf(same) + Words.threshold(same.level()) + " at every frequency that was tested.";
            case ValidityFlag.OffTheStep off ->
                earOf(off) + "the level at " + hertz(off.frequencies())
                        + " does not stand on the 5 dB step on which most levels of this test stand.";
            case ValidityFlag.RoomNoise room ->
                "500 Hz is raised by 10 dB or more in both ears of " + room.raised() + " of the " + room.compared()
                        + " people tested at the site on this day whose usual hearing is known.";
            case ValidityFlag.Equipment equipment -> EquipmentWords.doubt(equipment.doubt());
        };
    }

    /** What the tester or the reviewer can do about it, in whole sentences. */
    public static String advice(ValidityFlag flag) {
        return switch (flag) {
            case ValidityFlag.QuietTimeShort quiet ->
                "Test again after enough quiet before this test serves as a baseline"
                        + (quiet.rule().protectorsMayStandIn()
                                ? ", or find out whether hearing protectors were worn instead."
                                : ".");
            case ValidityFlag.QuietTimeNotOnRecord ignored -> "Find out from the tester.";
            case ValidityFlag.FrequenciesMissing ignored ->
                "Have them tested: a shift may stay undecided without them.";
            case ValidityFlag.CouldNotBeTested ignored ->
                "Test again once it can be done, and keep the cause on record.";
            case ValidityFlag.RepeatDiffers repeat ->
                repeat.unreliable()
                        ? "Explain the task again, fit the earphones anew and repeat the whole ear."
                        : "Repeat 1000 Hz, and the ear if the readings stay apart.";
            case ValidityFlag.EarsLookSwapped ignored ->
                "Check which earphone sat on which ear, and the entry; test again if that does not settle it.";
            case ValidityFlag.LooksLikeAnotherWorkers another ->
                another.exchangedWithTheirs()
                        ? "Check with the instrument's own record whose test is whose."
                        : "Check whose test it is; a real change of hearing can look the same.";
            case ValidityFlag.BetterThanBaseline ignored ->
                "Check this test and the baseline: one of the two may not show how the worker hears.";
            case ValidityFlag.WorseThanPrevious ignored -> "Test again within about three months.";
            case ValidityFlag.MaskingCalledFor ignored ->
                "Have the worse ear tested with masking before anyone relies on its levels.";
            case ValidityFlag.NoResponseThroughout ignored ->
                "Check earphone, cable and response button; if the ear is known not to hear, nothing is wrong.";
            case ValidityFlag.SameLevelThroughout ignored -> "Compare the entry with the instrument's own record.";
            case ValidityFlag.OffTheStep ignored -> "Compare the entry with the instrument's own record.";
            case ValidityFlag.RoomNoise ignored ->
                "Check the room's sound levels of the day, and test those people again in quiet.";
            case ValidityFlag.Equipment equipment -> EquipmentWords.advice(equipment.doubt());
        };
    }

    /** The place, and how firmly it holds where it is not the text of a regulation. */
    public static String source(FlagSource source) {
        String place = source.citation().place();
        return switch (source.standing()) {
            case REGULATION -> place;
            case GUIDANCE -> place + " (published guidance)";
            case COMMON_PRACTICE -> place + " (common practice)";
            case UNVERIFIED -> place + " (from memory, not checked against the text)";
            case OWN_MEASURE -> place + " (this register's own measure)";
        };
    }

    private static String quietTimeShort(ValidityFlag.QuietTimeShort quiet) {
        String hours = quiet.hours().stripTrailingZeros().toPlainString();
        String made = "The test was made " + hours + (hours.equals("1") ? " hour" : " hours")
                + " after workplace noise; " + asked(quiet.rule());
        if (quiet.rule().protectorsMayStandIn()) {
            return made + ", or hearing protectors worn instead.";
        }
        return made + (quiet.protectorsWorn() ? ", and hearing protectors do not count." : ".");
    }

    private static String asked(QuietRule rule) {
        return rule.hours() + " hours are asked for before such a test";
    }

    private static String repeatDiffers(ValidityFlag.RepeatDiffers repeat) {
        return earOf(repeat) + "at 1000 Hz " + Words.threshold(repeat.first()) + " first, "
                + Words.threshold(repeat.second()) + " on the second reading: more than "
                + (repeat.unreliable() ? "10 dB apart, so that the ear cannot be relied on." : "5 dB apart.");
    }

    private static String earsLookSwapped(ValidityFlag.EarsLookSwapped swapped) {
        boolean one = swapped.otherTests() == 1;
        return "Beside the worker's " + (one ? "one other test" : swapped.otherTests() + " nearest other tests")
                + " the levels lie " + mean(swapped.asGiven()) + " off in the mean, and "
                + mean(swapped.exchanged()) + " with left and right exchanged."
                + (one ? " Which of the two tests has them exchanged cannot be told." : "");
    }

    private static String looksLikeAnother(ValidityFlag.LooksLikeAnotherWorkers another) {
        return "The levels lie " + mean(another.own()) + " in the mean from what this worker's tests usually show, and "
                + mean(another.others()) + " from what those of worker " + another.otherWorkerId()
                + " do, who was tested on the same day"
                + (another.exchangedWithTheirs() ? " and whose test of that day fits this worker better." : ".");
    }

    private static String betterThanBaseline(ValidityFlag.BetterThanBaseline better) {
        List<String> parts = new ArrayList<>();
        if (!better.at().isEmpty()) {
            parts.add("15 dB or more better than at the baseline of " + Words.day(better.baseline()) + ": "
                    + changes(better.at()));
        }
        if (better.meanIsBetter()) {
            parts.add("the mean at 2000, 3000 and 4000 Hz is better by " + Words.mean(better.sumBetter())
                    + (better.at().isEmpty() ? " than at the baseline of " + Words.day(better.baseline()) : ""));
        }
        return earOf(better) + String.join("; ", parts) + ".";
    }

    private static String maskingCalledFor(ValidityFlag.MaskingCalledFor masking) {
        String from = "from " + masking.transducer().crossHearingFromDecibels()
                + " dB of difference on, the other ear may have heard the tone.";
        return earOf(masking)
                + masking.at().stream().map(ValidityWords::difference).collect(Collectors.joining("; ")) + ": " + from
                + (masking.transducer() == Transducer.NOT_KNOWN
                        ? " The record does not say which earphones were used; supra-aural ones are assumed."
                        : "");
    }

    private static String difference(EarDifference at) {
        return "at " + at.frequency().hertz() + " Hz " + Words.threshold(at.worse()) + " beside "
                + Words.threshold(at.better()) + " in the other ear";
    }

    private static String changes(List<LevelChange> changes) {
        return changes.stream()
                .map(at -> "at " + at.frequency().hertz() + " Hz " + Words.threshold(at.now()) + " after "
                        + Words.threshold(at.before()))
                .collect(Collectors.joining("; "));
    }

    private static String earOf(ValidityFlag.OfAnEar flag) {
        Ear ear = flag.ear();
        return Words.capitalised(Words.ear(ear)) + ": ";
    }

    /** {@code 2000, 3000 and 4000 Hz}. */
    private static String hertz(List<Frequency> frequencies) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < frequencies.size(); i++) {
            words.append(frequencies.get(i).hertz()).append(Counted.joint(i, frequencies));
        }
        return words + " Hz";
    }

    private static String wereNot(List<Frequency> frequencies) {
        return frequencies.size() == 1 ? " was not " : " were not ";
    }

    private static String mean(Fit fit) {
        return fit.meanTenths() / 10 + "." + fit.meanTenths() % 10 + " dB";
    }
}
