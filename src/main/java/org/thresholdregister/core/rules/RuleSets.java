package org.thresholdregister.core.rules;

import static org.thresholdregister.core.regulation.Provenance.FROM_MEMORY;
import static org.thresholdregister.core.regulation.Provenance.LOOKED_UP;
import static org.thresholdregister.core.regulation.Provenance.UNVERIFIED;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.thresholdregister.core.aging.AgeTables;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.Deadline.CalendarDays;
import org.thresholdregister.core.rules.Deadline.Months;
import org.thresholdregister.core.rules.Deadline.WorkingDays;
import org.thresholdregister.core.rules.NoticeRule.Occasion;
import org.thresholdregister.core.rules.RetestRule.Choice;
import org.thresholdregister.core.rules.RetestRule.Effect;
import org.thresholdregister.core.shift.Direction;
import org.thresholdregister.core.shift.Limit;
import org.thresholdregister.core.shift.ShiftCriterion;
import org.thresholdregister.core.shift.ThresholdShift;

/** The rule sets that the program knows. Each is data; how it is applied stands in {@code core.judging}. */
public final class RuleSets {

    private static final String EDITION_OF_THE_READING = "2026-11";

    private static final ShiftRule STANDARD_SHIFT_BY_APPENDIX_F = new ShiftRule(
            "standard threshold shift",
            "a mean of 10 dB or more",
            ThresholdShift.STANDARD,
            new Reference.Baseline(),
            Optional.of(AgeTables.OSHA_APPENDIX_F));

    private static final QuietRule OSHA_QUIET =
            QuietRule.beforeBaseline(14, true, "29 CFR 1910.95(g)(5)(iii)", LOOKED_UP);

    public static final RuleSet OSHA = osha();

    private static final List<Definition> DEFINITIONS = List.of(
            new Definition(List.of(), settings -> OSHA),
            new Definition(List.of(), settings -> msha()),
            new Definition(List.of(days("notice-days", "the time for written notice of a shift", 30)), RuleSets::fra),
            new Definition(
                    List.of(
                            days("confirm-days", "the time for the confirmation test", 30),
                            days("notice-days", "the time for written notice of a confirmed shift", 30)),
                    RuleSets::niosh),
            new Definition(
                    List.of(
                            days("retest-days", "the time for the follow-up tests", 30),
                            days("baseline-days", "the time for the reference audiogram", 30),
                            decibels("negative-shift-db", "the mean improvement that is a negative shift", 10),
                            decibels("early-warning-db", "the change at one frequency that is an early warning", 15)),
                    RuleSets::dod),
            new Definition(List.of(), settings -> ukL108()),
            new Definition(List.of(), settings -> alberta()),
            new Definition(List.of(), settings -> aao()),
            new Definition(List.of(), settings -> twice()));

    /** All rule sets with the settings as they come. */
    public static final List<RuleSet> ALL =
            DEFINITIONS.stream().map(Definition::asItComes).toList();

    private RuleSets() {}

    private record Definition(List<Setting> settings, Function<Settings, RuleSet> maker) {
        RuleSet asItComes() {
            return maker.apply(new Settings(settings));
        }
    }

    /** The values of a rule set's settings while it is made. */
    private record Settings(List<Setting> settings) {
        int value(String word) {
            return settings.stream()
                    .filter(setting -> setting.word().equals(word))
                    .findFirst()
                    .orElseThrow()
                    .value();
        }
    }

    public static Optional<RuleSet> find(String word) {
        return ALL.stream().filter(set -> set.word().equals(word)).findFirst();
    }

    /** The words of all rule sets, for a message. */
    public static String words() {
        return ALL.stream().map(RuleSet::word).collect(Collectors.joining(", "));
    }

    /**
     * The same rule set with other values of its settings.
     *
     * @throws IllegalArgumentException for a setting that the rule set does not have, or a value outside its range
     */
    public static RuleSet with(RuleSet ruleSet, Map<String, Integer> values) {
        for (String word : values.keySet()) {
            if (ruleSet.settings().stream().noneMatch(setting -> setting.word().equals(word))) {
                throw new IllegalArgumentException("the rule set " + ruleSet.word() + " has no setting " + word);
            }
        }
        Definition definition = DEFINITIONS.get(ALL.indexOf(find(ruleSet.word()).orElseThrow()));
        return definition.maker.apply(new Settings(ruleSet.settings().stream()
                .map(setting -> {
                    Integer value = values.get(setting.word());
                    return value == null ? setting : setting.with(value);
                })
                .toList()));
    }

    private static RuleSet osha() {
        return new RuleSet(
                "osha",
                EDITION_OF_THE_READING,
                "OSHA: 29 CFR 1910.95 and 1904.10",
                "Law in general industry of the United States; 1910.95(g) as of 7 March 1983, 1904.10 since 1 January"
                        + " 2003",
                List.of(
                        "a baseline and yearly thresholds at 2000, 3000 and 4000 Hz",
                        "birth date and sex, where an allowance for age is made"),
                List.of("standard threshold shift", "recordable hearing loss"),
                STANDARD_SHIFT_BY_APPENDIX_F,
                Optional.of(new RetestRule(30, Choice.LAST, Effect.MAY_REPLACE)),
                Optional.of(new NoticeRule(new CalendarDays(21), Occasion.SHIFT)),
                new RecordingRule.ShiftAndLevel(Limit.atLeast(25), new CalendarDays(7), new CalendarDays(30)),
                RevisionRule.GUIDE,
                OSHA_QUIET,
                TestSchedule.every(new Months(6), new Months(12)),
                List.of(),
                paragraphs(
                        Step.BASELINE, "29 CFR 1910.95(g)(5)(i)",
                        Step.PERIODIC_TEST, "29 CFR 1910.95(g)(6)",
                        Step.COMPARISON, "29 CFR 1910.95(g)(7)(i)",
                        Step.SHIFT, "29 CFR 1910.95(g)(10)(i)",
                        Step.AGE_ALLOWANCE, "29 CFR 1910.95(g)(10)(ii) and Appendix F",
                        Step.RETEST, "29 CFR 1910.95(g)(7)(ii)",
                        Step.NOTICE, "29 CFR 1910.95(g)(8)(i)",
                        Step.REVISED_BASELINE, "29 CFR 1910.95(g)(9)",
                        Step.RECORDABLE, "29 CFR 1904.10(a)",
                        Step.RECORDING_REFERENCE, "29 CFR 1904.10(b)(2)(i)",
                        Step.RECORDING_LEVEL, "29 CFR 1904.10(b)(2)(ii)",
                        Step.RECORDING_DEADLINE, "29 CFR 1904.10(b)(4)",
                        Step.NOT_WORK_RELATED, "29 CFR 1904.10(b)(6)"),
                List.of(
                        Duty.within(
                                new Months(6),
                                "first exposure at or above the action level",
                                "A valid baseline audiogram is made; within a year where a mobile van is used and"
                                        + " protectors are worn after six months.",
                                "29 CFR 1910.95(g)(5)(i)-(ii)",
                                LOOKED_UP),
                        Duty.within(
                                new Months(12),
                                "the last audiogram",
                                "A new audiogram is made.",
                                "29 CFR 1910.95(g)(6)",
                                LOOKED_UP),
                        Duty.within(
                                new CalendarDays(30),
                                "the test that shows a shift",
                                "The employer may retest and take the retest as the annual audiogram.",
                                "29 CFR 1910.95(g)(7)(ii)",
                                LOOKED_UP),
                        Duty.within(
                                new CalendarDays(21),
                                "the determination of a shift",
                                "The worker is told in writing.",
                                "29 CFR 1910.95(g)(8)(i)",
                                LOOKED_UP),
                        Duty.untimed(
                                "Unless a physician finds the shift not work-related: protectors are fitted or"
                                        + " refitted, use is trained, and the worker is referred where more tests are"
                                        + " needed.",
                                "a shift",
                                "29 CFR 1910.95(g)(8)(ii)",
                                LOOKED_UP),
                        Duty.within(
                                new CalendarDays(7),
                                "the retest that confirms a recordable shift",
                                "The case is entered on the injury log; without a retest this program counts 30 days"
                                        + " from the test and warns from the seventh.",
                                "29 CFR 1904.10(b)(4) and 1904.29(b)(3)",
                                LOOKED_UP)),
                List.of());
    }

    private static RuleSet msha() {
        return new RuleSet(
                "msha",
                EDITION_OF_THE_READING,
                "MSHA: 30 CFR Part 62",
                "Law in mines of the United States, since 13 September 2000 (date from memory)",
                List.of(
                        "a baseline and yearly thresholds at 2000, 3000 and 4000 Hz",
                        "birth date and sex, where an allowance for age is made",
                        "the day on which results were received: the day of the test is taken"),
                List.of("standard threshold shift", "reportable hearing loss"),
                new ShiftRule(
                        "standard threshold shift",
                        "a mean of 10 dB or more",
                        ThresholdShift.STANDARD,
                        new Reference.Baseline(),
                        Optional.of(AgeTables.MSHA_PART_62)),
                Optional.of(new RetestRule(30, Choice.FIRST, Effect.MAY_REPLACE)),
                Optional.of(new NoticeRule(new WorkingDays(10), Occasion.EVERY_TEST)),
                new RecordingRule.LargeShift(
                        new ShiftCriterion.Mean(Frequency.AVERAGED, Limit.atLeast(25), Direction.WORSE),
                        new WorkingDays(10)),
                RevisionRule.GUIDE,
                QuietRule.beforeBaseline(14, true, "30 CFR 62.170(a)(2)", FROM_MEMORY),
                TestSchedule.every(new Months(6), new Months(12)),
                List.of(),
                paragraphs(
                        Step.BASELINE, "30 CFR 62.170(a)(1) (from memory)",
                        Step.PERIODIC_TEST, "30 CFR 62.170(b) (from memory)",
                        Step.COMPARISON, "30 CFR 62.172(a) (from memory)",
                        Step.SHIFT, "30 CFR 62.101",
                        Step.AGE_ALLOWANCE, "30 CFR 62.172(c), Tables 62-3 and 62-4",
                        Step.RETEST, "30 CFR 62.172(b)(2)",
                        Step.NOTICE, "30 CFR 62.175(a)",
                        Step.REVISED_BASELINE, "30 CFR 62.170(c) (from memory)",
                        Step.RECORDABLE, "30 CFR 62.101 and 62.175(b)",
                        Step.RECORDING_REFERENCE, "30 CFR 62.101 and 62.170(c)(2)",
                        Step.RECORDING_DEADLINE, "30 CFR 50.20(a)",
                        Step.NOT_WORK_RELATED, "30 CFR 62.175(b)"),
                List.of(
                        Duty.within(
                                new Months(6),
                                "enrolment",
                                "A baseline audiogram is offered; within twelve months with a mobile van.",
                                "30 CFR 62.170(a)(1)",
                                FROM_MEMORY),
                        Duty.within(
                                new Months(12),
                                "the last audiogram",
                                "A new audiogram is offered.",
                                "30 CFR 62.170(b)",
                                FROM_MEMORY),
                        Duty.within(
                                new WorkingDays(10),
                                "receipt of the results of any audiogram",
                                "The miner is told in writing: results, any shift or reportable loss, need of further"
                                        + " testing.",
                                "30 CFR 62.175(a)",
                                LOOKED_UP),
                        Duty.within(
                                new CalendarDays(30),
                                "receipt of the results",
                                "One retest may be made and taken as the annual audiogram.",
                                "30 CFR 62.172(b)(2)",
                                LOOKED_UP),
                        Duty.within(
                                new CalendarDays(30),
                                "evidence or confirmation of a shift",
                                "Unless a physician or audiologist finds it not work-related: the miner is retrained,"
                                        + " a protector is offered, and controls are reviewed.",
                                "30 CFR 62.174",
                                LOOKED_UP),
                        Duty.within(
                                new WorkingDays(10),
                                "a reportable hearing loss",
                                "The loss is reported, unless a physician or audiologist finds it not work-related.",
                                "30 CFR 62.175(b) and 50.20(a)",
                                LOOKED_UP),
                        Duty.untimed(
                                "Above a time-weighted average of 105 dBA an ear plug and an ear muff are worn"
                                        + " together.",
                                "exposure above the dual hearing protection level",
                                "30 CFR 62.140",
                                LOOKED_UP)),
                List.of());
    }

    private static RuleSet fra(Settings settings) {
        return new RuleSet(
                "fra",
                EDITION_OF_THE_READING,
                "FRA: 49 CFR Part 227",
                "Law for railroad operating employees of the United States; revision of baselines by Appendix C is"
                        + " mandatory for audiograms since 26 February 2009",
                List.of(
                        "a baseline and periodic thresholds at 2000, 3000 and 4000 Hz",
                        "birth date and sex, where an allowance for age is made"),
                List.of("standard threshold shift", "reportable occupational hearing loss"),
                STANDARD_SHIFT_BY_APPENDIX_F,
                Optional.of(new RetestRule(90, Choice.LAST, Effect.MAY_REPLACE)),
                Optional.of(new NoticeRule(new CalendarDays(settings.value("notice-days")), Occasion.SHIFT)),
                new RecordingRule.ShiftAndLevel(Limit.atLeast(25), new WorkingDays(7), new WorkingDays(7)),
                RevisionRule.GUIDE,
                QuietRule.beforeBaseline(14, true, "49 CFR 227.109(e)", FROM_MEMORY),
                TestSchedule.every(new Months(6), new CalendarDays(450)),
                List.of(),
                paragraphs(
                        Step.BASELINE, "49 CFR 227.109(e)(1)",
                        Step.PERIODIC_TEST, "49 CFR 227.109(f) (from memory)",
                        Step.COMPARISON, "49 CFR 227.109(g)(1) (from memory)",
                        Step.SHIFT, "49 CFR 227.5",
                        Step.AGE_ALLOWANCE, "49 CFR 227.109(j) and Appendix F",
                        Step.RETEST, "49 CFR 227.109(g)(2)",
                        Step.NOTICE, "49 CFR 227.109(h)(1) (from memory)",
                        Step.REVISED_BASELINE, "49 CFR 227.109(i) and Appendix C",
                        Step.RECORDABLE, "49 CFR 225.5",
                        Step.RECORDING_REFERENCE, "49 CFR 225.5, read as 29 CFR 1904.10(b)(2)(i)",
                        Step.RECORDING_LEVEL, "49 CFR 225.5",
                        Step.RECORDING_DEADLINE, "49 CFR 225.25(f)",
                        Step.NOT_WORK_RELATED, "49 CFR 225.5"),
                List.of(
                        Duty.within(
                                new Months(6),
                                "the first tour of duty",
                                "A baseline audiogram is made; within a year with a mobile van.",
                                "49 CFR 227.109(e)(1)",
                                LOOKED_UP),
                        Duty.within(
                                new CalendarDays(450),
                                "the last offer of a test",
                                "A test is offered each calendar year, 280 to 450 days after the last offer.",
                                "49 CFR 227.109(f)(1)",
                                FROM_MEMORY),
                        Duty.within(
                                new CalendarDays(1095),
                                "the last test",
                                "The employee is tested.",
                                "49 CFR 227.109(f)(2)",
                                FROM_MEMORY),
                        Duty.within(
                                new CalendarDays(90),
                                "the test that shows a shift",
                                "A retest may be made and taken as the periodic audiogram.",
                                "49 CFR 227.109(g)(2)",
                                LOOKED_UP),
                        Duty.within(
                                new CalendarDays(settings.value("notice-days")),
                                "the determination of a shift",
                                "The employee is told in writing.",
                                "49 CFR 227.109(h)(1)",
                                UNVERIFIED),
                        Duty.within(
                                new WorkingDays(7),
                                "the diagnosis, for which the test that settled the shift is taken",
                                "Work-related hearing loss is entered in the railroad's record.",
                                "49 CFR 225.25(f)",
                                LOOKED_UP)),
                settings.settings());
    }

    private static RuleSet niosh(Settings settings) {
        return new RuleSet(
                "niosh",
                EDITION_OF_THE_READING,
                "NIOSH: recommended criteria, Publication 98-126",
                "Recommendation of June 1998, not law",
                List.of(
                        "a baseline and yearly thresholds at 500, 1000, 2000, 3000, 4000 and 6000 Hz",
                        "two tests running at the same frequency of the same ear"),
                List.of("significant threshold shift"),
                new ShiftRule(
                        "significant threshold shift",
                        "15 dB or more worse at any of 500, 1000, 2000, 3000, 4000 and 6000 Hz",
                        Rules.FIFTEEN_AT_ANY_TO_6000,
                        new Reference.Baseline(),
                        Optional.empty()),
                Optional.of(new RetestRule(settings.value("confirm-days"), Choice.LAST, Effect.MUST_CONFIRM)),
                Optional.of(new NoticeRule(new CalendarDays(settings.value("notice-days")), Occasion.CONFIRMED_SHIFT)),
                new RecordingRule.None(),
                RevisionRule.GUIDE,
                new QuietRule(
                        12,
                        false,
                        Set.of(TestPurpose.BASELINE, TestPurpose.RETEST),
                        new Citation("NIOSH Publication 98-126 (1998)"),
                        FROM_MEMORY),
                TestSchedule.every(new CalendarDays(30), new Months(12)),
                List.of(Rules.FIFTEEN_TWICE_500_6000),
                paragraphs(
                        Step.BASELINE, "NIOSH 98-126 (from memory)",
                        Step.PERIODIC_TEST, "NIOSH 98-126 (from memory)",
                        Step.COMPARISON, "NIOSH 98-126",
                        Step.SHIFT, "NIOSH 98-126",
                        Step.AGE_ALLOWANCE, "NIOSH 98-126: no age correction of individual audiograms",
                        Step.RETEST, "NIOSH 98-126 and 96-110: same ear and same frequency",
                        Step.NOTICE, "NIOSH 98-126 (from memory, unverified)",
                        Step.REVISED_BASELINE, "NIOSH 98-126 (from memory, unverified)"),
                List.of(
                        Duty.untimed(
                                "The test is repeated at once, after new instruction and refitting of the phones.",
                                "15 dB or more worse at any frequency",
                                "NIOSH 96-110",
                                LOOKED_UP),
                        Duty.within(
                                new CalendarDays(settings.value("confirm-days")),
                                "the test that shows the change",
                                "A confirmation test is made after 12 hours of quiet; protectors do not count as"
                                        + " quiet.",
                                "NIOSH 98-126",
                                FROM_MEMORY),
                        Duty.within(
                                new CalendarDays(settings.value("notice-days")),
                                "the confirmation",
                                "The worker is told in writing; protectors are refitted or changed, the worker is"
                                        + " retrained or moved to quieter work.",
                                "NIOSH 98-126",
                                UNVERIFIED)),
                settings.settings());
    }

    private static RuleSet dod(Settings settings) {
        return new RuleSet(
                "dod",
                EDITION_OF_THE_READING,
                "DoD: Instruction 6055.12",
                "Instruction of 14 August 2019, change 1 of 22 November 2023, for the department's own programmes;"
                        + " civilians are under OSHA recordkeeping too",
                List.of("a reference audiogram and yearly thresholds at 1000, 2000, 3000 and 4000 Hz"),
                List.of("significant threshold shift", "negative shift", "early warning"),
                new ShiftRule(
                        "significant threshold shift",
                        "a mean of 10 dB or more",
                        ThresholdShift.STANDARD,
                        new Reference.Baseline(),
                        Optional.empty()),
                Optional.of(new RetestRule(settings.value("retest-days"), Choice.LAST, Effect.MAY_REPLACE)),
                Optional.of(new NoticeRule(new CalendarDays(21), Occasion.SHIFT)),
                new RecordingRule.None(),
                RevisionRule.GUIDE,
                QuietRule.beforeBaseline(14, false, "DoDI 6055.12 (training slides of 2003)", LOOKED_UP),
                TestSchedule.every(new CalendarDays(settings.value("baseline-days")), new Months(12)),
                List.of(
                        Rules.dodNegativeShift(settings.value("negative-shift-db")),
                        Rules.dodEarlyWarning(settings.value("early-warning-db"))),
                paragraphs(
                        Step.SHIFT, "DoDI 6055.12 (from memory)",
                        Step.COMPARISON, "DoDI 6055.12 (from memory)",
                        Step.AGE_ALLOWANCE, "DoDI 6055.12: age correction is not applied (from memory)",
                        Step.RETEST, "DoDI 6055.12 (from memory, unverified)",
                        Step.NOTICE, "DoDI 6055.12 (from memory)"),
                List.of(
                        Duty.within(
                                new CalendarDays(settings.value("retest-days")),
                                "the test that shows a shift",
                                "Two follow-up tests are made, each after 14 hours without hazardous noise; the last"
                                        + " one decides here.",
                                "DoDI 6055.12",
                                UNVERIFIED),
                        Duty.within(
                                new CalendarDays(21),
                                "the determination of a shift",
                                "The worker is told in writing.",
                                "DoDI 6055.12",
                                FROM_MEMORY)),
                settings.settings());
    }

    private static RuleSet ukL108() {
        Criterion.SumSinceRecentTest rapid = Rules.l108RapidCriterion(30, 3);
        return new RuleSet(
                "uk-l108",
                EDITION_OF_THE_READING,
                "HSE L108 (UK): hearing categories",
                "Guidance to the Control of Noise at Work Regulations 2005, third edition of 2021",
                List.of(
                        "thresholds at 1000, 2000, 3000, 4000 and 6000 Hz",
                        "birth date and sex, for the table",
                        "a reviewer's finding of a sign of noise in the audiogram, which the program does not make"),
                List.of("hearing category 1 to 4", "rapid loss", "one-sided loss"),
                new ShiftRule(
                        "rapid hearing loss",
                        "a sum of 30 dB or more at 3000, 4000 and 6000 Hz within three years",
                        new ShiftCriterion.Mean(Rules.HIGH, Limit.atLeast(10), Direction.WORSE),
                        new Reference.LatestWithin(rapid.years()),
                        Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                new RecordingRule.None(),
                RevisionRule.GUIDE,
                QuietRule.beforeBaseline(16, false, "practice in the United Kingdom", FROM_MEMORY),
                new TestSchedule(new Months(0), new Months(12), 2, new Months(36)),
                List.of(Rules.L108_SUM, Rules.l108Rapid(rapid), Rules.L108_UNILATERAL, Rules.l108Category(rapid)),
                paragraphs(
                        Step.BASELINE, "HSE L108 (from memory)",
                        Step.PERIODIC_TEST, "HSE L108 (from memory)",
                        Step.COMPARISON, "HSE L108 (2021)",
                        Step.SHIFT, "HSE L108 (2021)",
                        Step.AGE_ALLOWANCE, "HSE L108: nothing is subtracted for age"),
                List.of(
                        Duty.untimed(
                                "Testing before exposure, yearly for the first two years, then at most every three"
                                        + " years; sooner when something is found.",
                                "regular exposure above the upper action value",
                                "Control of Noise at Work Regulations 2005, reg. 9 (intervals from memory)",
                                FROM_MEMORY),
                        Duty.within(
                                new Months(3),
                                "a test more than 10 dB worse at any frequency than the one before",
                                "The test is repeated.",
                                "HSE L108 (2021)",
                                LOOKED_UP),
                        Duty.untimed(
                                "The worker is told, and referred to a doctor in category 3 and 4.",
                                "a test that puts the worker into a category",
                                "HSE L108 (2021)",
                                LOOKED_UP)),
                List.of());
    }

    private static RuleSet alberta() {
        return new RuleSet(
                "alberta",
                EDITION_OF_THE_READING,
                "Alberta and Manitoba: abnormal shift, abnormal audiogram",
                "Law: Alberta OHS Code Part 16, Manitoba Regulation 217/2006 Part 12",
                List.of("a baseline and thresholds from 500 to 6000 Hz"),
                List.of("abnormal shift", "abnormal audiogram"),
                new ShiftRule(
                        "abnormal shift",
                        "15 dB or more worse at two neighbours among 1000, 2000, 3000, 4000 and 6000 Hz",
                        Rules.ALBERTA_SHIFT,
                        new Reference.Baseline(),
                        Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                new RecordingRule.None(),
                RevisionRule.GUIDE,
                OSHA_QUIET,
                new TestSchedule(new Months(6), new Months(12), 1, new Months(24)),
                List.of(Rules.ALBERTA_ABNORMAL_SHIFT, Rules.ALBERTA_ABNORMAL_AUDIOGRAM),
                paragraphs(Step.SHIFT, "Alberta OHS Code Part 16; Manitoba Reg. 217/2006 (number from memory)"),
                List.of(Duty.untimed(
                        "Results, history and baseline go to a physician or audiologist; in Manitoba a report with"
                                + " counts is due at least every two years.",
                        "an abnormal shift or audiogram",
                        "Alberta OHS Code Part 16; Manitoba Reg. 217/2006 Part 12",
                        LOOKED_UP)),
                List.of());
    }

    private static RuleSet aao() {
        return new RuleSet(
                "aao",
                EDITION_OF_THE_READING,
                "AAO-HNS: referral criteria for hearing-conservation programmes",
                "Guidance of 1983, revised 1997, from memory; read beside the rule set of the workplace",
                List.of("a baseline and thresholds from 500 to 6000 Hz"),
                List.of("referral by level or difference", "referral by change"),
                new ShiftRule(
                        "change that calls for referral",
                        "a mean of more than 15 dB worse at 500, 1000 and 2000 Hz or of more than 20 dB worse at"
                                + " 3000, 4000 and 6000 Hz",
                        Rules.AAO_PERIODIC_SHIFT,
                        new Reference.Baseline(),
                        Optional.empty()),
                Optional.empty(),
                Optional.empty(),
                new RecordingRule.None(),
                RevisionRule.GUIDE,
                OSHA_QUIET,
                TestSchedule.every(new Months(6), new Months(12)),
                List.of(Rules.AAO_BASELINE, Rules.AAO_PERIODIC),
                paragraphs(Step.SHIFT, "AAO-HNS referral criteria (1983, 1997; from memory)"),
                List.of(Duty.untimed(
                        "A reviewer considers a referral to an ear specialist; ear pain, drainage, dizziness, severe"
                                + " tinnitus, sudden or fluctuating loss or visible wax are reasons that no audiogram"
                                + " shows.",
                        "any of the criteria",
                        "AAO-HNS referral criteria (1983, 1997)",
                        FROM_MEMORY)),
                List.of());
    }

    private static RuleSet twice() {
        return new RuleSet(
                "twice",
                EDITION_OF_THE_READING,
                "Persistent shifts: 15 dB or a mean of 10 dB twice, for quality review",
                "Studied for NIOSH by Royster 1992 and 1996; not law, read beside the rule set of the workplace",
                List.of("a baseline and two tests running from 500 to 6000 Hz"),
                List.of("15 dB twice", "10 dB average twice"),
                new ShiftRule(
                        "shift of 15 dB, twice",
                        "15 dB or more worse at any of 500, 1000, 2000, 3000, 4000 and 6000 Hz",
                        Rules.FIFTEEN_AT_ANY_TO_6000,
                        new Reference.Baseline(),
                        Optional.empty()),
                Optional.of(new RetestRule(30, Choice.LAST, Effect.MUST_CONFIRM)),
                Optional.empty(),
                new RecordingRule.None(),
                RevisionRule.GUIDE,
                OSHA_QUIET,
                TestSchedule.every(new Months(6), new Months(12)),
                List.of(Rules.FIFTEEN_TWICE_500_6000, Rules.FIFTEEN_TWICE_1_4K, Rules.TEN_AVERAGE_TWICE),
                paragraphs(Step.SHIFT, "Royster 1992, for NIOSH (abstract)"),
                List.of(),
                List.of());
    }

    private static Map<Step, Citation> paragraphs(Object... stepsAndPlaces) {
        Map<Step, Citation> paragraphs = new EnumMap<>(Step.class);
        for (int i = 0; i < stepsAndPlaces.length; i += 2) {
            paragraphs.put((Step) stepsAndPlaces[i], new Citation((String) stepsAndPlaces[i + 1]));
        }
        return paragraphs;
    }

    private static Setting days(String word, String meaning, int days) {
        return new Setting(word, meaning, "days", days, 1, 365);
    }

    private static Setting decibels(String word, String meaning, int decibels) {
        return new Setting(word, meaning, "dB", decibels, 1, 60);
    }
}
