package org.thresholdregister.core.wording;

import java.util.Optional;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.Deadline;
import org.thresholdregister.core.rules.Duty;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.rules.Reference;
import org.thresholdregister.core.rules.RetestRule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.Setting;
import org.thresholdregister.core.rules.TestSchedule;

/** Says what a rule set does, for a person who has to answer to it. */
public final class RuleSetWording {

    private RuleSetWording() {}

    public static String shift(RuleSet ruleSet) {
        String age = ruleSet.allowsForAge() ? ", after the allowance for age where it is made," : "";
        return Words.capitalised(ruleSet.shift().explained()) + age + " is a "
                + ruleSet.shift().name() + ", measured from "
                + switch (ruleSet.shift().reference()) {
                    case Reference.Baseline ignored -> "the ear's baseline.";
                    case Reference.LatestWithin recent ->
                        "the ear's latest test of the " + recent.years() + " years before.";
                };
    }

    public static String retest(RuleSet ruleSet) {
        Optional<RetestRule> rule = ruleSet.retest();
        if (rule.isEmpty()) {
            return "There is no retest: what a test shows stands.";
        }
        String days = Counted.of(rule.get().days(), "day", "days");
        return switch (rule.get().effect()) {
            case MAY_REPLACE ->
                switch (rule.get().choice()) {
                            case LAST ->
                                "A retest within " + days + " of the test may take its place; the last one counts";
                            case FIRST -> "One retest within " + days + " of the test may take its place";
                        }
                        + ". Without one the test stands.";
            case MUST_CONFIRM ->
                "A shift is established only by two tests running, at the same frequency of the same ear; the second is"
                        + " wanted within " + days + ".";
        };
    }

    public static String quiet(RuleSet ruleSet) {
        QuietRule rule = ruleSet.quiet();
        return Counted.of(rule.hours(), "hour", "hours") + " without workplace noise before "
                + Words.listed(rule.before().stream()
                        .sorted()
                        .map(purpose -> "a " + Words.purpose(purpose))
                        .toList())
                + (rule.protectorsMayStandIn()
                        ? "; hearing protectors may be worn instead."
                        : "; hearing protectors do not count as quiet.");
    }

    public static String notice(RuleSet ruleSet) {
        return ruleSet.notice()
                .map(notice -> {
                    String within = ", within " + Words.deadline(notice.deadline()) + " of the test";
                    return "The worker is told in writing of "
                            + switch (notice.occasion()) {
                                case SHIFT -> "every shift" + within + " that settled it.";
                                case CONFIRMED_SHIFT ->
                                    "every shift that is established" + within + " that settled it.";
                                case EVERY_TEST -> "the results of every test" + within + ".";
                            };
                })
                .orElse("The rule set names no notice.");
    }

    public static String recording(RuleSet ruleSet) {
        return switch (ruleSet.recording()) {
            case RecordingRule.None ignored -> "The rule set keeps no log.";
            case RecordingRule.ShiftAndLevel both ->
                "A shift that stands, together with a mean level of "
                        + both.level().decibels()
                        + " dB HL or more at 2000, 3000 and 4000 Hz in the same ear, within "
                        + recordingTime(both) + ".";
            case RecordingRule.LargeShift large ->
                "A mean shift of " + mean(large)
                        + " dB or more from the first baseline or one revised for better hearing, reported within "
                        + Words.deadline(large.deadline()) + ".";
        };
    }

    private static String recordingTime(RecordingRule.ShiftAndLevel rule) {
        String afterRetest = Words.deadline(rule.afterRetest());
        return rule.afterRetest().equals(rule.withoutRetest())
                ? afterRetest + " of the test that settled it"
                : afterRetest + " of the retest, or within " + Words.deadline(rule.withoutRetest())
                        + " of the test where there was none";
    }

    private static int mean(RecordingRule.LargeShift large) {
        return large.criterion().limit().decibels();
    }

    public static String tests(RuleSet ruleSet) {
        TestSchedule tests = ruleSet.tests();
        String baseline = tests.baseline().equals(new Deadline.Months(0))
                ? "A first test before exposure"
                : "A baseline within " + Words.deadline(tests.baseline()) + " of enrolment";
        String later = Words.deadline(tests.later());
        return tests.earlyYears() == 0
                ? baseline + ", then a test within " + later + " of the last."
                : baseline + ", then within " + Words.deadline(tests.early()) + " of the last in the first "
                        + (tests.earlyYears() == 1 ? "year" : tests.earlyYears() + " years") + ", and within " + later
                        + " afterwards.";
    }

    /** {@code within 21 days of the determination of a shift}. */
    public static String when(Duty duty) {
        return duty.deadline()
                .map(deadline -> "within " + Words.deadline(deadline) + " of " + duty.from())
                .orElse("after " + duty.from() + "; no time is named");
    }

    /** {@code notice-days: the time for written notice of a shift, 30 days}. */
    public static String setting(Setting setting) {
        return setting.word() + ": " + setting.meaning() + ", " + setting.value() + " " + setting.unit();
    }

    /** {@code notice-days: 30 days}. */
    public static String settingInShort(Setting setting) {
        return setting.word() + ": " + setting.value() + " " + setting.unit();
    }

    /** How a number or step is known, in a word or two; empty where its text was read. */
    public static String mark(Provenance provenance) {
        return switch (provenance) {
            case LOOKED_UP -> "";
            case FROM_MEMORY -> "from memory";
            case UNVERIFIED -> "unverified";
        };
    }
}
