package org.thresholdregister.core.wording;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.thresholdregister.core.aging.AgeAllowance;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.comparing.Difference;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Determination.Resolution;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.shift.ShiftCriterion;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * Says why two ways of judging the same record answer differently about a test.
 *
 * @param one what the first way is called, such as {@code OSHA with age allowance}
 * @param other what the second is called
 */
public record DifferenceWording(String one, String other) {

    /** {@code shift confirmed, recordable}: what one side found. */
    public static String found(Determination determination) {
        if (!(determination instanceof Judged judged) || judged.recording().answer() == Recordability.NOT_ASKED) {
            return Words.outcome(determination.outcome());
        }
        return Words.outcome(judged.outcome()) + ", "
                + Words.recordability(judged.recording().answer());
    }

    /** The reason in a few words, for a column or a count. */
    public static String reason(Difference.Reason reason) {
        return switch (reason) {
            case REFERENCE -> "compared with another test";
            case AGE_ALLOWANCE -> "allowance for age";
            case CRITERION -> "another criterion";
            case CONFIRMATION -> "retest or second test";
            case RECORDING -> "what is recorded";
        };
    }

    /** The reason with its numbers, in a sentence or two. */
    public String why(Difference difference) {
        Determination here = difference.one();
        Determination there = difference.other();
        return switch (difference.reason()) {
            case REFERENCE ->
                one + ", compared " + reference(here) + ": " + shift(here) + ". " + other + ", compared "
                        + reference(there) + ": " + shift(there) + ".";
            case AGE_ALLOWANCE, CRITERION -> one + ": " + shift(here) + ". " + other + ": " + shift(there) + ".";
            case CONFIRMATION ->
                "Both read the change alike. " + one + ": " + settled(here) + ". " + other + ": " + settled(there)
                        + ".";
            case RECORDING ->
                "Both agree on the shift. " + one + ": " + recording(here) + ". " + other + ": " + recording(there)
                        + ".";
        };
    }

    private static String reference(Determination determination) {
        return determination
                .shift()
                .map(shift -> "with the test of " + Words.day(shift.earlier().date()))
                .orElse("with nothing");
    }

    /** "a mean of 9.33 dB after 2.67 dB for age (before it 12.00 dB), no shift". */
    private static String shift(Determination determination) {
        Optional<ThresholdShift> compared = determination.shift();
        if (compared.isEmpty()) {
            return Words.outcome(determination.outcome());
        }
        ThresholdShift shift = compared.get();
        return measured(shift) + ", "
                + switch (shift.isShift()) {
                    case YES -> "a shift";
                    case NO -> "no shift";
                    case UNDECIDED -> "undecided";
                };
    }

    private static String measured(ThresholdShift shift) {
        return switch (shift.criterion()) {
            case ShiftCriterion.Mean mean -> mean(shift, mean) + forAge(shift);
            case ShiftCriterion.AnyFrequency any -> worseAt(shift, any);
            case ShiftCriterion.Neighbours neighbours -> changes(shift, neighbours.frequencies());
            case ShiftCriterion.AnyOf anyOf -> changes(shift, anyOf.frequencies());
        };
    }

    /** "20 dB worse at 2000 Hz and 25 dB at 4000 Hz", or how far the changes stay from the limit. */
    private static String worseAt(ThresholdShift shift, ShiftCriterion.AnyFrequency any) {
        List<String> meeting = any.frequencies().stream()
                .filter(frequency -> any.metAt(shift.at(frequency).corrected()) == Answer.YES)
                .map(frequency -> atLeast(shift.at(frequency).corrected()) + " at " + frequency.hertz() + " Hz")
                .toList();
        if (!meeting.isEmpty()) {
            return "worse by " + Words.listed(meeting);
        }
        String limit = any.limit().decibels() + " dB worse";
        return shift.isShift() == Answer.UNDECIDED
                ? "not certain to be " + limit + " at any frequency"
                : "at no frequency " + limit;
    }

    /** A change that reaches a limit for certain has a lowest value. */
    private static String atLeast(DecibelRange change) {
        return change.lowest().orElseThrow() + " dB" + (change.exact().isPresent() ? "" : " or more");
    }

    private static String mean(ThresholdShift shift, ShiftCriterion.Mean mean) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : mean.frequencies()) {
            sum = sum.plus(shift.at(frequency).corrected());
        }
        String at = " at " + Words.frequencies(mean.frequencies());
        return isNotKnown(sum) ? "a mean that is not known" + at : "a mean of " + Words.mean(sum) + at;
    }

    private static String changes(ThresholdShift shift, List<Frequency> frequencies) {
        return "changes of "
                + Words.listed(frequencies.stream()
                        .map(frequency -> {
                            OptionalInt change = shift.at(frequency).corrected().exact();
                            return change.isPresent() ? Integer.toString(change.getAsInt()) : "an unknown number of";
                        })
                        .toList())
                + " dB at " + Words.frequencies(frequencies);
    }

    private static String forAge(ThresholdShift shift) {
        if (shift.allowance() instanceof AgeAllowance.NotKnown) {
            return " after an allowance for age that is not known";
        }
        OptionalInt before = shift.uncorrectedSum().exact();
        OptionalInt after = shift.sum().exact();
        if (shift.allowance() instanceof AgeAllowance.SwitchedOff || before.isEmpty() || after.isEmpty()) {
            return "";
        }
        String allowed =
                " after " + Words.mean(DecibelRange.exactly(before.getAsInt() - after.getAsInt())) + " for age";
        return shift.isShift() == shift.isShiftWithoutAllowance()
                ? allowed
                : allowed + " (before it " + Words.mean(shift.uncorrectedSum()) + ")";
    }

    private static String settled(Determination determination) {
        return switch (determination) {
            case Determination.Retest retest ->
                "a retest, which answers for the test of "
                        + Words.day(retest.resolves().date());
            case Judged judged -> Words.outcome(judged.outcome()) + settledBy(judged);
            case Determination.BaselineTest ignored -> Words.outcome(determination.outcome());
            case Determination.BeforeBaseline ignored -> Words.outcome(determination.outcome());
        };
    }

    private static String settledBy(Judged judged) {
        return switch (judged.resolution()) {
            case Resolution.ByRetest(ThresholdShift retest) ->
                ", by the retest of " + Words.day(retest.later().date());
            case Resolution.BySecondTest(ThresholdShift second) ->
                ", by the test of " + Words.day(second.later().date());
            case Resolution.ByTestItself ignored ->
                judged.dueDates()
                        .retestBy()
                        .map(day -> ", wanted by " + Words.day(day))
                        .orElse(", by the test itself");
        };
    }

    private static String recording(Determination determination) {
        if (!(determination instanceof Judged judged)) {
            return Words.outcome(determination.outcome());
        }
        String numbers =
                judged.recording().comparison().map(DifferenceWording::numbers).orElse("");
        return Words.recordability(judged.recording().answer()) + numbers;
    }

    private static String numbers(Recording.Comparison comparison) {
        DecibelRange change = comparison.shift().sum();
        String since = Words.day(comparison.reference().audiogram().date());
        String shift = isNotKnown(change)
                ? ", a change since " + since + " that is not known"
                : ", a mean of " + Words.mean(change) + " worse than on " + since;
        return comparison.rule() instanceof RecordingRule.ShiftAndLevel ? shift + level(comparison.levelSum()) : shift;
    }

    private static String level(DecibelRange sum) {
        return isNotKnown(sum) ? " and a mean level that is not known" : " and a mean level of " + Words.meanLevel(sum);
    }

    private static boolean isNotKnown(DecibelRange range) {
        return range.lowest().isEmpty() && range.highest().isEmpty();
    }
}
