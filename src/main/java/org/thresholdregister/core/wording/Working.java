package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.thresholdregister.core.aging.AgeAllowance;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.caselife.AfterShift;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Determination.Resolution;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.recording.RecordingReference;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.rules.Reference;
import org.thresholdregister.core.rules.RetestRule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.Step;
import org.thresholdregister.core.shift.FrequencyShift;
import org.thresholdregister.core.shift.ShiftCriterion;
import org.thresholdregister.core.shift.ThresholdShift;

/**
 * Puts a determination into sentences, in the order in which a person would explain it: what is compared, each number,
 * the sum, the retest, the injury log, what is due.
 */
public final class Working {

    private final RuleSet ruleSet;
    private final List<Sentence> sentences = new ArrayList<>();

    private Working(RuleSet ruleSet) {
        this.ruleSet = ruleSet;
    }

    public static List<Sentence> of(Determination determination) {
        Working working = new Working(determination.ruleSet());
        switch (determination) {
            case Determination.BaselineTest baseline -> working.baseline(baseline);
            case Determination.BeforeBaseline before -> working.beforeBaseline(before);
            case Determination.Retest retest -> working.retest(retest);
            case Judged judged -> working.judged(judged);
        }
        return List.copyOf(working.sentences);
    }

    private void baseline(Determination.BaselineTest baseline) {
        say(
                switch (ruleSet.shift().reference()) {
                    case Reference.Baseline ignored ->
                        subject(baseline) + " is the baseline: later tests of this ear are compared with it.";
                    case Reference.LatestWithin recent ->
                        subject(baseline) + " has no test of the " + recent.years()
                                + " years before it to be compared with.";
                },
                Step.BASELINE);
        say(meanLevel(baseline.test(), baseline.ear()) + ".", Step.COMPARISON);
    }

    private void beforeBaseline(Determination.BeforeBaseline before) {
        say(subject(before) + " was made before the baseline and is not compared.", Step.BASELINE);
    }

    private void retest(Determination.Retest retest) {
        long day =
                ChronoUnit.DAYS.between(retest.resolves().date(), retest.test().date());
        say(
                subject(retest) + " was made on day " + day + " of the " + retestDays() + " after the "
                        + name(retest.resolves()) + ": its answer is given there.",
                Step.RETEST);
        shift(retest.comparison(), earlierTest());
    }

    private void judged(Judged judged) {
        say(
                subject(judged) + " is compared with " + earlierTest() + " of "
                        + Words.day(judged.comparison().earlier().date()) + ".",
                Step.COMPARISON);
        shift(judged.comparison(), earlierTest());
        resolution(judged);
        recording(judged);
        dueDates(judged);
    }

    private String earlierTest() {
        return switch (ruleSet.shift().reference()) {
            case Reference.Baseline ignored -> "the baseline";
            case Reference.LatestWithin ignored -> "the earlier test";
        };
    }

    private int retestDays() {
        return ruleSet.retest().orElseThrow().days();
    }

    private void shift(ThresholdShift shift, String from) {
        allowanceInGeneral(shift.allowance());
        for (FrequencyShift at : shift.frequencies()) {
            say(frequency(at, shift.allowance(), from), frequencyBasis(shift.allowance()));
        }
        sum(shift);
    }

    private void allowanceInGeneral(AgeAllowance allowance) {
        switch (allowance) {
            case AgeAllowance.FromTable table ->
                say(
                        "The age allowance is read from " + table.table().name() + " at " + table.yearsAtBaseline()
                                + " and at " + table.yearsAtTest() + " years.",
                        Step.AGE_ALLOWANCE);
            case AgeAllowance.SwitchedOff ignored -> say("No age allowance is made.", Step.AGE_ALLOWANCE);
            case AgeAllowance.NotKnown unknown ->
                say(
                        "The age allowance is not known: " + missing(unknown) + ". It can only make a shift smaller.",
                        Step.AGE_ALLOWANCE);
        }
    }

    private static String missing(AgeAllowance.NotKnown unknown) {
        if (unknown.birthDateMissing() && unknown.sexMissing()) {
            return "birth date and sex are not on record";
        }
        return unknown.birthDateMissing() ? "the birth date is not on record" : "the sex is not on record";
    }

    private static Step frequencyBasis(AgeAllowance allowance) {
        return allowance instanceof AgeAllowance.FromTable ? Step.AGE_ALLOWANCE : Step.COMPARISON;
    }

    /** "4000 Hz: 25 dB HL now, 5 at the baseline, 20 worse; 3 of it is the age allowance from 27 to 32; 17 left." */
    private static String frequency(FrequencyShift at, AgeAllowance allowance, String from) {
        String levels = at.frequency().hertz() + " Hz: " + Words.threshold(at.now()) + " now, "
                + Words.bareThreshold(at.before()) + " at " + from;
        OptionalInt change = at.uncorrected().exact();
        if (change.isEmpty()) {
            return levels + ": " + openChange(at.uncorrected()) + openAllowance(at, allowance) + ".";
        }
        String moved = levels + ", " + change(change.getAsInt());
        if (!(allowance instanceof AgeAllowance.FromTable table)) {
            return moved + ".";
        }
        int years = at.allowance().exact().orElseThrow();
        String ages = " from " + table.yearsAtBaseline() + " to " + table.yearsAtTest();
        if (years == 0) {
            return moved + "; there is no age allowance" + ages + ".";
        }
        int left = at.corrected().exact().orElseThrow();
        return change.getAsInt() >= years
                ? moved + "; " + years + " of it is the age allowance" + ages + "; " + left + " left."
                : moved + "; the age allowance" + ages + " is " + years + "; " + change(left) + " is left.";
    }

    /** What the allowance takes off a change that is known on one side only, so that the sum can be followed. */
    private static String openAllowance(FrequencyShift at, AgeAllowance allowance) {
        if (!(allowance instanceof AgeAllowance.FromTable table)
                || at.uncorrected().equals(DecibelRange.UNKNOWN)) {
            return "";
        }
        int years = at.allowance().exact().orElseThrow();
        String ages = " from " + table.yearsAtBaseline() + " to " + table.yearsAtTest();
        return years == 0
                ? "; there is no age allowance" + ages
                : "; the age allowance" + ages + " is " + years + "; " + openChange(at.corrected()) + " is left";
    }

    private static String change(int decibels) {
        return decibels == 0 ? "no change" : Math.abs(decibels) + (decibels > 0 ? " worse" : " better");
    }

    private static String openChange(DecibelRange change) {
        if (change.lowest().isPresent()) {
            return "worse by " + change.lowest().getAsInt() + " dB or more";
        }
        if (change.highest().isPresent()) {
            int most = change.highest().getAsInt();
            return most < 0 ? "better by " + -most + " dB or more" : "worse by " + most + " dB at the most";
        }
        return "the change is not known";
    }

    private void sum(ThresholdShift shift) {
        Answer answer = shift.isShift();
        String question = " " + Words.capitalised(ruleSet.shift().explained()) + " is a "
                + ruleSet.shift().name() + ": "
                + switch (answer) {
                    case YES -> "this is one.";
                    case NO -> "this is none.";
                    case UNDECIDED -> "that cannot be decided from the record.";
                };
        say(what(shift) + question, Step.SHIFT);
        if (!(shift.allowance() instanceof AgeAllowance.SwitchedOff)) {
            say(
                    "Without the age allowance the mean is " + Words.mean(shift.uncorrectedSum()) + ": "
                            + switch (shift.isShiftWithoutAllowance()) {
                                case YES -> "a shift.";
                                case NO -> "no shift.";
                                case UNDECIDED -> "undecided.";
                            },
                    Step.AGE_ALLOWANCE);
        }
    }

    /** What the criterion looks at, added up or looked through. */
    private static String what(ThresholdShift shift) {
        return switch (shift.criterion()) {
            case ShiftCriterion.Mean mean -> meanOf(shift, mean);
            case ShiftCriterion.AnyFrequency any -> frequenciesMeeting(shift, any);
            case ShiftCriterion.Neighbours neighbours -> changes(shift, neighbours.frequencies());
            case ShiftCriterion.AnyOf anyOf -> changes(shift, anyOf.frequencies());
        };
    }

    private static String meanOf(ThresholdShift shift, ShiftCriterion.Mean mean) {
        DecibelRange sum = DecibelRange.exactly(0);
        for (Frequency frequency : mean.frequencies()) {
            sum = sum.plus(shift.at(frequency).corrected());
        }
        OptionalInt exact = sum.exact();
        return exact.isPresent()
                ? "What is left adds up to "
                        + mean.frequencies().stream()
                                .map(frequency -> signed(
                                        shift.at(frequency).corrected().exact().orElseThrow()))
                                .collect(Collectors.joining(" + "))
                        + " = " + exact.getAsInt() + " dB, a mean of " + Words.mean(sum) + "."
                : "The mean of what is left is " + Words.mean(sum) + ".";
    }

    private static String frequenciesMeeting(ThresholdShift shift, ShiftCriterion.AnyFrequency any) {
        List<Frequency> meeting = any.frequencies().stream()
                .filter(frequency -> any.metAt(shift.at(frequency).corrected()) == Answer.YES)
                .toList();
        return meeting.isEmpty()
                ? changes(shift, any.frequencies())
                : "The change is that large at " + Words.frequencies(meeting) + ".";
    }

    private static String changes(ThresholdShift shift, List<Frequency> frequencies) {
        return "The changes are "
                + frequencies.stream()
                        .map(frequency -> {
                            OptionalInt change = shift.at(frequency).corrected().exact();
                            return (change.isPresent() ? signed(change.getAsInt()) : "not known") + " at "
                                    + frequency.hertz();
                        })
                        .collect(Collectors.joining(", "))
                + " Hz, in dB.";
    }

    private static String signed(int decibels) {
        return decibels < 0 ? "(" + decibels + ")" : String.valueOf(decibels);
    }

    private void resolution(Judged judged) {
        switch (judged.resolution()) {
            case Resolution.ByRetest(ThresholdShift retest) -> byRetest(judged, retest);
            case Resolution.BySecondTest(ThresholdShift second) -> bySecondTest(judged, second);
            case Resolution.ByTestItself ignored -> byTestItself(judged);
        }
    }

    private void byRetest(Judged judged, ThresholdShift retest) {
        long day = ChronoUnit.DAYS.between(judged.test().date(), retest.later().date());
        boolean confirms = retest.isShift() == Answer.YES;
        say(
                "The retest of " + Words.day(retest.later().date()) + ", day " + day + " of " + retestDays()
                        + ", takes the test's place for both ears; for this ear its mean is "
                        + Words.mean(retest.sum()) + ", " + (confirms ? "a shift" : "no shift")
                        + switch (judged.outcome()) {
                            case NO_SHIFT -> " either.";
                            default -> ": " + Words.outcome(judged.outcome()) + ".";
                        },
                Step.RETEST);
    }

    private void bySecondTest(Judged judged, ThresholdShift second) {
        boolean later = Audiogram.CHRONOLOGICAL.compare(second.later(), judged.test()) > 0;
        String which = "The test " + (later ? "after" : "before") + " it, the " + name(second.later()) + ", ";
        say(
                which
                        + switch (judged.outcome()) {
                            case CONFIRMED -> "shows the same: the shift is established by two tests running.";
                            case NOT_CONFIRMED ->
                                "does not show it at the same frequency: the shift is not established.";
                            default -> "leaves open whether it shows it at the same frequency.";
                        },
                Step.RETEST);
    }

    private void byTestItself(Judged judged) {
        Optional<RetestRule> retest = ruleSet.retest();
        if (retest.isEmpty()) {
            return;
        }
        String last = Words.day(retest.get().lastDay(judged.test().date()));
        if (judged.outcome() == Outcome.AWAITING_RETEST && retest.get().effect() == RetestRule.Effect.MUST_CONFIRM) {
            say(
                    "One test alone does not establish the shift: the next one, wanted by " + last
                            + ", has to show it at the same frequency of this ear.",
                    Step.RETEST);
        } else if (judged.dueDates().retestBy().isPresent()) {
            say("A retest until " + last + " may take this test's place.", Step.RETEST);
        } else if (judged.outcome() == Outcome.CONFIRMED) {
            say("No retest until " + last + " answered for this ear: the shift stands.", Step.RETEST);
        }
    }

    private void recording(Judged judged) {
        Recording recording = judged.recording();
        if (recording.answer() == Recordability.NOT_ASKED) {
            return;
        }
        recording.comparison().ifPresent(this::comparison);
        say(recordingAnswer(judged), recordingBasis(recording));
        recording.comparison().ifPresent(comparison -> otherReading(judged, comparison));
        recording.workRelatedness().ifPresent(this::decided);
        recording.entry().ifPresent(this::decided);
    }

    private void comparison(Recording.Comparison comparison) {
        RecordingReference reference = comparison.reference();
        String deciding = name(comparison.decidingTest());
        say(
                (ruleSet.recording() instanceof RecordingRule.LargeShift
                                ? "For the report the "
                                : "For the injury log the ")
                        + deciding + " is measured from "
                        + switch (reference.kind()) {
                            case FIRST_BASELINE -> "the first baseline, of ";
                            case IMPROVED_BASELINE -> "the baseline revised for better hearing, of ";
                            case RECORDABLE_CASE -> "this ear's last recordable case, the test of ";
                        }
                        + Words.day(reference.audiogram().date()) + ": "
                        + aMean(Words.mean(comparison.shift().sum())) + ", "
                        + switch (comparison.shifted()) {
                            case YES -> largeOrAny() + ".";
                            case NO -> none() + ".";
                            case UNDECIDED -> "which cannot be decided.";
                        },
                Step.RECORDING_REFERENCE);
        if (comparison.rule() instanceof RecordingRule.ShiftAndLevel both) {
            level(comparison, both);
        }
    }

    /**
     * A baseline revised for a lasting shift that was no case divides the official readings: the rule's text measures
     * from the first baseline, the note of 17 December 2002 from the current one.
     */
    private void otherReading(Judged judged, Recording.Comparison comparison) {
        boolean revised = comparison.reference().kind() == RecordingReference.Kind.FIRST_BASELINE
                && !judged.comparison().earlier().equals(comparison.reference().audiogram());
        Answer fromCurrent = judged.settlingComparison().isShift();
        if (revised && fromCurrent != comparison.shifted()) {
            say(
                    "The official readings differ here: measured from the current baseline the shift has "
                            + aMean(Words.mean(judged.settlingComparison().sum())) + ", "
                            + switch (fromCurrent) {
                                case YES -> "a shift";
                                case NO -> "no shift";
                                case UNDECIDED -> "undecided";
                            }
                            + ". A professional decides which applies.",
                    Citation.CURRENT_BASELINE_READING);
        }
    }

    private String none() {
        return largeOrAny().replaceFirst("^a ", "no ");
    }

    private String largeOrAny() {
        return ruleSet.recording() instanceof RecordingRule.LargeShift large
                ? "a shift of " + large.criterion().limit().decibels() + " dB or more"
                : "a shift";
    }

    private void level(Recording.Comparison comparison, RecordingRule.ShiftAndLevel both) {
        say(
                meanLevel(comparison.decidingTest(), comparison.shift().ear()) + " without any age allowance; "
                        + both.level().decibels() + " dB or more is "
                        + switch (comparison.levelReached()) {
                            case YES -> "reached.";
                            case NO -> "not reached.";
                            case UNDECIDED -> "undecided.";
                        },
                Step.RECORDING_LEVEL);
    }

    private static String meanLevel(Audiogram test, Ear ear) {
        String levels = Frequency.AVERAGED.stream()
                .map(frequency -> Words.bareThreshold(test.threshold(ear, frequency)))
                .collect(Collectors.joining(", "));
        return "The levels at 2000, 3000 and 4000 Hz are " + levels + ", " + aMean(Words.meanLevel(test.levelSum(ear)));
    }

    private static String aMean(String mean) {
        return mean.equals(Words.NOT_KNOWN) ? "a mean that is not known" : "a mean of " + mean;
    }

    private static String recordingAnswer(Judged judged) {
        return switch (judged.recording().answer()) {
            case YES ->
                judged.recording()
                                .comparison()
                                .filter(of -> of.rule() instanceof RecordingRule.LargeShift)
                                .isPresent()
                        ? "Reportable, if the loss is work-related."
                        : "Both tests are met in the same ear: recordable, if the loss is work-related.";
            case NOT_ASKED -> throw new IllegalArgumentException("nothing is recorded");
            case NO -> notRecordable(judged);
            case AWAITING_RETEST -> "Whether it is recordable waits for the retest.";
            case ALREADY_RECORDED -> "An earlier case of this ear holds this loss already: nothing new to record.";
            case UNDECIDED -> "Whether it is recordable cannot be decided from the record.";
        };
    }

    private static String notRecordable(Judged judged) {
        Optional<Recording.Comparison> comparison = judged.recording().comparison();
        boolean notWorkRelated = judged.recording()
                .workRelatedness()
                .filter(decision -> decision.kind() == DecisionKind.NOT_WORK_RELATED)
                .isPresent();
        Recordability byNumbers = comparison
                .map(Recording.Comparison::forStandingShift)
                .orElse(
                        judged.outcome() == Outcome.NO_SHIFT || judged.outcome() == Outcome.NOT_CONFIRMED
                                ? Recordability.NO
                                : Recordability.UNDECIDED);
        if (notWorkRelated && byNumbers == Recordability.YES) {
            return "Both tests are met in the same ear, but the loss was found not work-related: not recordable.";
        }
        if (notWorkRelated && byNumbers != Recordability.NO) {
            return "The loss was found not work-related: not recordable.";
        }
        boolean shiftStands = judged.outcome() == Outcome.CONFIRMED
                || comparison.filter(of -> of.shifted() == Answer.YES).isPresent();
        return shiftStands
                ? "The two tests are not both met in this ear: not recordable."
                : "No shift stands, so there is nothing to record.";
    }

    private static Step recordingBasis(Recording recording) {
        return recording.answer() == Recordability.AWAITING_RETEST ? Step.RECORDING_DEADLINE : Step.RECORDABLE;
    }

    private void decided(Decision decision) {
        String by = decision.by().isBlank() ? "" : " by " + decision.by();
        String reason = decision.reason().isBlank() ? "" : ": " + decision.reason();
        sentences.add(new Sentence(
                Words.capitalised(Words.decision(decision.kind())) + " on " + Words.day(decision.decidedOn()) + by
                        + reason + ".",
                switch (decision.kind()) {
                    case NOT_WORK_RELATED, WORK_RELATED -> Optional.of(ruleSet.paragraph(Step.NOT_WORK_RELATED));
                    case RECORDED, LINED_OUT -> Optional.of(ruleSet.paragraph(Step.RECORDING_DEADLINE));
                    case NOTICE_GIVEN -> Optional.of(ruleSet.paragraph(Step.NOTICE));
                    case BASELINE, BASELINE_KEPT -> Optional.of(ruleSet.paragraph(Step.REVISED_BASELINE));
                    case INVALID_TEST -> Optional.empty();
                    case RETEST_BOOKED -> Optional.of(ruleSet.paragraph(Step.RETEST));
                    case PROTECTOR_REFITTED, TRAINED -> AfterShift.of(ruleSet).protectors();
                    case REFERRED -> AfterShift.of(ruleSet).referral();
                }));
    }

    private void dueDates(Judged judged) {
        judged.dueDates().notifyBy().ifPresent(day -> notice(judged, day));
        judged.dueDates()
                .recordBy()
                .ifPresent(day -> say(
                        (ruleSet.recording() instanceof RecordingRule.LargeShift
                                        ? "It is reported by "
                                        : "It is entered on the injury log by ")
                                + Words.day(day) + ".",
                        Step.RECORDING_DEADLINE));
    }

    private void notice(Judged judged, LocalDate day) {
        say(
                "The worker is told in writing by " + Words.day(day) + ", "
                        + Words.deadline(ruleSet.notice().orElseThrow().deadline()) + " after the test"
                        + (judged.outcome() == Outcome.CONFIRMED ? " that settled it" : "")
                        + "; the test's date is taken as the day of determination.",
                Step.NOTICE);
    }

    private static String subject(Determination determination) {
        return Words.capitalised(Words.ear(determination.ear())) + ": the " + name(determination.test());
    }

    private static String name(Audiogram test) {
        return Words.purpose(test.purpose()) + " of " + Words.day(test.date());
    }

    private void say(String text, Step step) {
        say(text, ruleSet.paragraph(step));
    }

    private void say(String text, Citation basis) {
        sentences.add(Sentence.of(text, basis));
    }
}
