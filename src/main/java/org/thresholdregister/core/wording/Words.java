package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.Deadline;

/** The words that people read for the engine's values. Files use the values' own {@code word()}. */
public final class Words {

    /** The line that stands under every determination. */
    public static final String CAUTION = "Computed from the record by the rule named; a professional decides.";

    /** For a number that the record leaves open. */
    static final String NOT_KNOWN = "not known";

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.ENGLISH);

    private Words() {}

    /** {@code 9 Mar 2026}. */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    public static String ear(Ear ear) {
        return switch (ear) {
            case LEFT -> "left ear";
            case RIGHT -> "right ear";
        };
    }

    public static String ears(Ears ears) {
        return switch (ears) {
            case LEFT -> "left ear";
            case RIGHT -> "right ear";
            case BOTH -> "both ears";
        };
    }

    public static String purpose(TestPurpose purpose) {
        return switch (purpose) {
            case BASELINE -> "baseline test";
            case ANNUAL -> "annual test";
            case EXIT -> "exit test";
            case RETEST -> "retest";
            case OTHER -> "other test";
        };
    }

    public static String outcome(Outcome outcome) {
        return switch (outcome) {
            case BASELINE -> "baseline";
            case BEFORE_BASELINE -> "before the baseline";
            case NO_SHIFT -> "no shift";
            case AWAITING_RETEST -> "awaiting retest";
            case CONFIRMED -> "shift confirmed";
            case NOT_CONFIRMED -> "shift not confirmed";
            case UNDECIDED -> "undecided";
            case RETEST -> "retest";
        };
    }

    public static String recordability(Recordability recordability) {
        return switch (recordability) {
            case YES -> "recordable";
            case NO -> "not recordable";
            case AWAITING_RETEST -> "awaiting retest";
            case ALREADY_RECORDED -> "already recorded";
            case UNDECIDED -> "undecided";
            case NOT_ASKED -> "not asked";
        };
    }

    public static String followUp(FollowUpKind kind) {
        return switch (kind) {
            case RETEST -> "retest (optional)";
            case NOTICE -> "written notice";
            case RECORD -> "entry on the injury log";
            case ANNUAL_TEST -> "annual test";
            case BASELINE_TEST -> "baseline test";
        };
    }

    public static String decision(DecisionKind kind) {
        return switch (kind) {
            case NOT_WORK_RELATED -> "found not work-related";
            case WORK_RELATED -> "found work-related";
            case RECORDED -> "recorded on the injury log";
            case LINED_OUT -> "lined out on the injury log";
            case NOTICE_GIVEN -> "written notice given";
            case BASELINE -> "made the baseline";
            case BASELINE_KEPT -> "declined as the baseline";
            case INVALID_TEST -> "set aside as invalid";
            case RETEST_BOOKED -> "retest booked";
            case PROTECTOR_REFITTED -> "protectors fitted or refitted";
            case TRAINED -> "trained in the use of protectors";
            case REFERRED -> "referred for examination";
        };
    }

    public static String answer(Answer answer) {
        return switch (answer) {
            case YES -> "yes";
            case NO -> "no";
            case UNDECIDED -> "undecided";
        };
    }

    /** {@code 25 dB HL}, or what is known instead. */
    public static String threshold(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured measured -> measured.level().decibels() + " dB HL";
            case Threshold.NoResponse noResponse ->
                noResponse
                        .limit()
                        .map(limit -> "no response at " + limit.decibels() + " dB HL")
                        .orElse("no response, level not given");
            case Threshold.NotTested notTested ->
                switch (notTested.reason()) {
                    case NOT_GIVEN, DID_NOT_TEST -> "not tested";
                    case COULD_NOT_TEST -> "could not be tested";
                };
        };
    }

    /** {@code 25} where a sentence gives the unit already; in words where there is no number. */
    static String bareThreshold(Threshold threshold) {
        return threshold instanceof Threshold.Measured measured
                ? Integer.toString(measured.level().decibels())
                : threshold(threshold);
    }

    /**
     * For a table cell under a heading that gives the unit, as the audiogram file writes it: {@code 25}, {@code >95},
     * {@code NR}; in words where the file has a blank, {@code DNT} or {@code CNT}.
     */
    public static String thresholdCell(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured measured ->
                Integer.toString(measured.level().decibels());
            case Threshold.NoResponse noResponse ->
                noResponse.limit().map(limit -> ">" + limit.decibels()).orElse("NR");
            case Threshold.NotTested notTested -> threshold(notTested);
        };
    }

    /** {@code 11.67 dB}, {@code 26.67 dB or more}, or {@value #NOT_KNOWN}, for the mean of three with this sum. */
    public static String mean(DecibelRange sum) {
        return mean(sum, " dB");
    }

    /** {@code 25.00 dB HL}, {@code 26.67 dB HL or more}, or {@value #NOT_KNOWN}, for three levels with this sum. */
    public static String meanLevel(DecibelRange sum) {
        return mean(sum, " dB HL");
    }

    private static String mean(DecibelRange sum, String unit) {
        OptionalInt exact = sum.exact();
        if (exact.isPresent()) {
            return MeanOfThree.ofSum(exact.getAsInt()) + unit;
        }
        if (sum.lowest().isPresent()) {
            return MeanOfThree.ofSum(sum.lowest().getAsInt()) + unit + " or more";
        }
        if (sum.highest().isPresent()) {
            return MeanOfThree.ofSum(sum.highest().getAsInt()) + unit + " or less";
        }
        return NOT_KNOWN;
    }

    /** {@code 2000, 3000 and 4000 Hz}. */
    public static String frequencies(List<Frequency> frequencies) {
        return listed(frequencies.stream()
                        .map(frequency -> Integer.toString(frequency.hertz()))
                        .toList())
                + " Hz";
    }

    /** {@code one, two and three}. */
    public static String listed(List<String> items) {
        int last = items.size() - 1;
        return last < 1
                ? String.join("", items)
                : String.join(", ", items.subList(0, last)) + " and " + items.get(last);
    }

    /** {@code 21 days}, {@code 10 working days}. */
    public static String deadline(Deadline deadline) {
        return switch (deadline) {
            case Deadline.CalendarDays calendar -> Counted.of(calendar.days(), "day", "days");
            case Deadline.WorkingDays working -> Counted.of(working.days(), "working day", "working days");
            case Deadline.Months months -> Counted.of(months.months(), "month", "months");
        };
    }

    /** The text with its first letter a capital, to start a sentence or a heading. */
    public static String capitalised(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
