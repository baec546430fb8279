package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.BaselineTest;
import org.thresholdregister.core.judging.Determination.BeforeBaseline;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Determination.Resolution;
import org.thresholdregister.core.judging.Determination.Retest;
import org.thresholdregister.core.rules.Deadline;
import org.thresholdregister.core.rules.NoticeRule;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.ShiftRule;
import org.thresholdregister.core.rules.Step;
import org.thresholdregister.core.shift.ThresholdShift;

/** Letters in English. */
final class EnglishLetterWords implements LetterWords {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.US);

    @Override
    public String title(LetterKind kind) {
        return switch (kind) {
            case RESULT -> "The result of your hearing test";
            case SHIFT_NOTICE -> "Written notice about your hearing";
            case RETEST_INVITATION -> "Please come for a second hearing test";
            case REFERRAL -> "Referral for an examination of hearing";
            case BASELINE_REVISION -> "Your new baseline test";
            case NOT_WORK_RELATED -> "What was found about your hearing loss";
        };
    }

    @Override
    public String day(LocalDate date) {
        return DAY.format(date);
    }

    @Override
    public String ear(Ear ear) {
        return Words.ear(ear);
    }

    @Override
    public String ears(Ears ears) {
        return Words.ears(ears);
    }

    @Override
    public String purpose(TestPurpose purpose) {
        return purpose == TestPurpose.RETEST ? "second test" : Words.purpose(purpose);
    }

    @Override
    public String shift(ShiftRule rule) {
        return rule.name();
    }

    @Override
    public String deadline(Deadline deadline) {
        return Words.deadline(deadline);
    }

    @Override
    public String thresholdCell(Threshold threshold) {
        return Words.thresholdCell(threshold);
    }

    @Override
    public String finding(Determination found) {
        return switch (found) {
            case BaselineTest ignored -> "This test is the baseline. We will compare later tests with it.";
            case BeforeBaseline ignored -> "This test was made before the baseline test. It stays on record.";
            case Retest retest ->
                "This second test answers for the test of "
                        + day(retest.resolves().date()) + ". " + change(retest.comparison());
            case Judged judged -> judged(judged);
        };
    }

    private String judged(Judged judged) {
        ThresholdShift settling = judged.settlingComparison();
        String since = day(settling.earlier().date());
        String name = shift(judged.ruleSet().shift());
        return switch (judged.outcome()) {
            case BASELINE, BEFORE_BASELINE, RETEST ->
                throw new IllegalStateException("no outcome of a judged test: " + judged.outcome());
            case NO_SHIFT -> "We found no large change since the baseline test of " + since + ". " + change(settling);
            case AWAITING_RETEST, CONFIRMED ->
                "This ear hears less well than in the baseline test of " + since + ". This change is called a " + name
                        + ". " + change(settling) + shownTwice(judged);
            case NOT_CONFIRMED ->
                "The test of " + day(judged.test().date()) + " showed a change. The second test of "
                        + day(judged.settledBy().date()) + " does not show it. So it does not count as a " + name
                        + ". " + change(settling);
            case UNDECIDED ->
                "We cannot say if hearing in this ear has changed since the baseline test of " + since
                        + ". Some numbers are missing.";
        };
    }

    private String shownTwice(Judged judged) {
        return secondTest(judged)
                .map(test -> " The test of " + day(test.date()) + " shows it too.")
                .orElse("");
    }

    private static Optional<Audiogram> secondTest(Judged judged) {
        return switch (judged.resolution()) {
            case Resolution.ByRetest(ThresholdShift retest) -> Optional.of(retest.later());
            case Resolution.BySecondTest(ThresholdShift second) -> Optional.of(second.later());
            case Resolution.ByTestItself ignored -> Optional.empty();
        };
    }

    private static String change(ThresholdShift shift) {
        String allowance = shift.sum().equals(shift.uncorrectedSum()) ? "" : ", after taking off what age alone may do";
        String mean = Words.mean(shift.sum());
        return mean.equals(Words.NOT_KNOWN)
                ? "The average change at 2000, 3000 and 4000 Hz is not known."
                : "The average change at 2000, 3000 and 4000 Hz is " + mean + allowance + ".";
    }

    @Override
    public String notCompared() {
        return "This test is on record. It was not compared with the baseline.";
    }

    @Override
    public List<String> nextSteps(NextSteps steps) {
        List<String> said = new ArrayList<>();
        steps.retestBy()
                .ifPresent(day -> said.add("You may take a second test, by " + day(day)
                        + ". It shows if the change is there to stay. We will tell you the time and the place."));
        if (steps.writtenNotice()) {
            said.add("You will get a written notice about the change.");
        }
        if (steps.protectors()) {
            said.add("We will check how your hearing protectors fit, and show you once more how to use them.");
            said.add("We may ask you to see an ear doctor or a hearing expert.");
        }
        if (steps.mayRepeat()) {
            said.add("We may ask you to come for the test once more.");
        }
        steps.nextTest().ifPresent(day -> said.add("Your next test is due by " + day(day) + "."));
        return said;
    }

    @Override
    public String noticeStatement(RuleSet ruleSet) {
        return ruleSet.notice()
                .map(rule -> "The rule " + ruleSet.paragraph(Step.NOTICE) + " says that we must tell you "
                        + told(rule, ruleSet) + " in writing, within " + deadline(rule.deadline())
                        + ". This letter does so.")
                .orElse("We tell you of this in writing.");
    }

    private String told(NoticeRule rule, RuleSet ruleSet) {
        return switch (rule.occasion()) {
            case SHIFT, CONFIRMED_SHIFT -> "of a " + shift(ruleSet.shift());
            case EVERY_TEST -> "the result of each test";
        };
    }

    @Override
    public String quietTime(QuietRule rule) {
        return "Stay away from loud noise for " + Counted.of(rule.hours(), "hour", "hours")
                + " before the test, at work and at home. This means loud music, power tools and engines too."
                + (rule.protectorsMayStandIn()
                        ? " If you have to work in noise before the test, wear your hearing protectors all the time."
                        : "");
    }

    @Override
    public String whenAndWhere(Optional<String> booked) {
        return booked.map(words -> "Your test: " + words).orElse("Day and time:\nPlace:");
    }

    @Override
    public String whyRevised(boolean forBetterHearing) {
        return forBetterHearing
                ? "You hear better in this test than in the old one."
                : "Your hearing has changed and the change has stayed.";
    }

    @Override
    public String frequencyHeading() {
        return "Pitch, Hz";
    }

    @Override
    public String tableNote() {
        return "The numbers are hearing levels in decibels (dB HL). The higher the number, the louder a sound must be to"
                + " be heard. “>95” means that the loudest sound we could play, here 95, was not heard.";
    }

    @Override
    public String referralFacts() {
        return "Who is referred";
    }

    @Override
    public String birthDate() {
        return "Date of birth";
    }

    @Override
    public String jobTitle() {
        return "Job and department";
    }

    @Override
    public String noiseLevel() {
        return "Noise at work, eight-hour average";
    }

    @Override
    public String enrolledFrom() {
        return "At or above the action level since";
    }

    @Override
    public String rules() {
        return "Rules that the workplace answers to";
    }

    @Override
    public String historyHeading() {
        return "History";
    }

    @Override
    public String nothingOnRecord() {
        return "Nothing of this is on record here.";
    }

    @Override
    public String enclosuresHeading() {
        return "Enclosures, 29 CFR 1910.95(g)(7)(iii)";
    }

    @Override
    public List<String> enclosures(LocalDate baseline, LocalDate latest) {
        return List.of(
                "(A) The requirements for hearing conservation, 29 CFR 1910.95(c) to (n)",
                "(B) The baseline audiogram of " + day(baseline) + " and the most recent audiogram of " + day(latest)
                        + ": in this letter",
                "(C) Background sound levels of the test room, Appendix D",
                "(D) Records of the audiometer’s calibrations, paragraph (h)(5)");
    }

    @Override
    public String signatureAndDate() {
        return "Signature and date";
    }

    @Override
    public String aProfessional() {
        return "a health professional";
    }

    @Override
    public String caution() {
        return "This letter is made from the hearing record. It is not a diagnosis. An audiologist or a doctor decides"
                + " what the tests mean and what must be done.";
    }

    @Override
    public String healthRecord() {
        return "Health record";
    }

    @Override
    public String printed(LocalDate day, String by) {
        return "printed " + Words.day(day) + " by " + by;
    }

    @Override
    public String reprint(LocalDate issuedOn, LocalDate printedOn) {
        return "Reprint of " + day(printedOn) + ". The letter was first printed on " + day(issuedOn) + ".";
    }
}
