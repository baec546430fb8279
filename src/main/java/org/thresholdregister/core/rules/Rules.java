package org.thresholdregister.core.rules;

import static org.thresholdregister.core.audiometry.Frequency.HZ_1000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_2000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_3000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_4000;
import static org.thresholdregister.core.audiometry.Frequency.HZ_500;
import static org.thresholdregister.core.audiometry.Frequency.HZ_6000;
import static org.thresholdregister.core.meaning.referral.ReferralCriterion.BASELINE_DIFFERENCE_HIGH;
import static org.thresholdregister.core.meaning.referral.ReferralCriterion.BASELINE_DIFFERENCE_LOW;
import static org.thresholdregister.core.meaning.referral.ReferralCriterion.BASELINE_LEVEL;
import static org.thresholdregister.core.meaning.referral.ReferralCriterion.WORSENING_HIGH;
import static org.thresholdregister.core.meaning.referral.ReferralCriterion.WORSENING_LOW;
import static org.thresholdregister.core.regulation.Provenance.FROM_MEMORY;
import static org.thresholdregister.core.regulation.Provenance.LOOKED_UP;
import static org.thresholdregister.core.regulation.Provenance.UNVERIFIED;

import java.util.List;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.meaning.referral.ReferralCriterion;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.Criterion.AnyLevel;
import org.thresholdregister.core.rules.Criterion.AnyOf;
import org.thresholdregister.core.rules.Criterion.EitherEar;
import org.thresholdregister.core.rules.Criterion.FromBaseline;
import org.thresholdregister.core.rules.Criterion.MeanLevel;
import org.thresholdregister.core.rules.Criterion.Persistent;
import org.thresholdregister.core.rules.Criterion.SumByAgeAndSex;
import org.thresholdregister.core.rules.Criterion.SumSinceRecentTest;
import org.thresholdregister.core.rules.Criterion.WorseEarCategory;
import org.thresholdregister.core.rules.Criterion.WorseThanOtherEar;
import org.thresholdregister.core.shift.Direction;
import org.thresholdregister.core.shift.Limit;
import org.thresholdregister.core.shift.ShiftCriterion;
import org.thresholdregister.core.shift.ThresholdShift;

/** The rules that rule sets are made of, beside their own shift. */
final class Rules {

    static final List<Frequency> LOW = List.of(HZ_500, HZ_1000, HZ_2000);
    static final List<Frequency> HIGH = List.of(HZ_3000, HZ_4000, HZ_6000);
    static final List<Frequency> ONE_TO_FOUR = List.of(HZ_1000, HZ_2000, HZ_3000, HZ_4000);
    static final List<Frequency> ONE_TO_SIX = List.of(HZ_1000, HZ_2000, HZ_3000, HZ_4000, HZ_6000);
    static final List<Frequency> ALL_BUT_8000 = List.of(HZ_500, HZ_1000, HZ_2000, HZ_3000, HZ_4000, HZ_6000);

    static final ShiftCriterion FIFTEEN_AT_ANY_TO_6000 =
            new ShiftCriterion.AnyFrequency(ALL_BUT_8000, Limit.atLeast(15), Direction.WORSE);

    static final Rule FIFTEEN_TWICE_500_6000 = new Rule(
            "fifteen_twice_500_6000",
            "15 dB twice, 500 to 6000 Hz",
            new Persistent(FIFTEEN_AT_ANY_TO_6000, 2),
            "15 dB or more worse at one and the same frequency from 500 to 6000 Hz on this test and on the one before",
            "The programme looks at noise, protectors and training; it is no regulatory finding.",
            new Citation("Royster 1992, for NIOSH (abstract)"),
            LOOKED_UP);

    static final Rule FIFTEEN_TWICE_1_4K = new Rule(
            "fifteen_twice_1_4k",
            "15 dB twice, 1000 to 4000 Hz",
            new Persistent(new ShiftCriterion.AnyFrequency(ONE_TO_FOUR, Limit.atLeast(15), Direction.WORSE), 2),
            "15 dB or more worse at one and the same frequency from 1000 to 4000 Hz on this test and on the one before",
            "The programme looks at noise, protectors and training; it is no regulatory finding.",
            new Citation("Royster 1996, for NIOSH (abstract)"),
            LOOKED_UP);

    static final Rule TEN_AVERAGE_TWICE = new Rule(
            "ten_avg_twice",
            "10 dB average twice",
            new Persistent(ThresholdShift.STANDARD, 2),
            "a mean of 10 dB or more worse at 2000, 3000 and 4000 Hz on this test and on the one before",
            "The programme looks at noise, protectors and training; it is no regulatory finding.",
            new Citation("Royster 1996, for NIOSH (abstract)"),
            LOOKED_UP);

    static Rule dodEarlyWarning(int decibels) {
        return new Rule(
                "dod_early_warning",
                "early warning",
                new FromBaseline(
                        new ShiftCriterion.AnyFrequency(ONE_TO_FOUR, Limit.atLeast(decibels), Direction.WORSE)),
                decibels + " dB or more worse at 1000, 2000, 3000 or 4000 Hz",
                "The worker is counselled and the protectors are refitted; there is no series of follow-up tests.",
                new Citation("DoDI 6055.12"),
                UNVERIFIED);
    }

    static Rule dodNegativeShift(int decibels) {
        return new Rule(
                "dod_negative",
                "negative shift",
                new FromBaseline(
                        new ShiftCriterion.Mean(Frequency.AVERAGED, Limit.atLeast(decibels), Direction.BETTER)),
                "a mean of " + decibels + " dB or more better at 2000, 3000 and 4000 Hz",
                "One follow-up test, and possibly a new reference.",
                new Citation("DoDI 6055.12"),
                UNVERIFIED);
    }

    static final SumByAgeAndSex L108_SUM_CRITERION = new SumByAgeAndSex(ONE_TO_SIX, SumTable.L108);

    static SumSinceRecentTest l108RapidCriterion(int sumDecibels, int years) {
        return new SumSinceRecentTest(HIGH, Limit.atLeast(sumDecibels), years);
    }

    static final Rule L108_SUM = new Rule(
            "uk_l108_sum",
            "category by the sum of levels",
            L108_SUM_CRITERION,
            "the sum of the levels at 1000, 2000, 3000, 4000 and 6000 Hz reaches the warning value (2) or the referral"
                    + " value (3) for age and sex",
            "Category 2: tell the worker, check protection and training. Category 3: refer to a doctor. A reviewer may"
                    + " find a sign of noise in the audiogram, which can raise the category; the sum alone does not"
                    + " show it.",
            new Citation("HSE L108, table of hearing categories (numbers from memory)"),
            FROM_MEMORY);

    static Rule l108Rapid(SumSinceRecentTest criterion) {
        return new Rule(
                "uk_l108_rapid",
                "rapid loss",
                criterion,
                "the sum of the changes at 3000, 4000 and 6000 Hz since the latest test of the last "
                        + criterion.years() + " years is "
                        + criterion.sumLimit().decibels() + " dB or more",
                "Category 4: refer to a doctor.",
                new Citation("HSE L108 (2021)"),
                LOOKED_UP);
    }

    static final Rule L108_UNILATERAL = new Rule(
            "uk_l108_unilateral",
            "one-sided loss",
            // Sums, not means: the limit is that of the four frequencies together.
            new EitherEar(new Criterion.SumWorseThanOtherEar(ONE_TO_FOUR, Limit.moreThan(40))),
            "the sums of the levels at 1000, 2000, 3000 and 4000 Hz differ between the ears by more than 40 dB",
            "Refer to a doctor if it was not known before.",
            new Citation("HSE L108 (from memory)"),
            FROM_MEMORY);

    static Rule l108Category(SumSinceRecentTest rapid) {
        return new Rule(
                "uk_l108_category",
                "hearing category",
                new WorseEarCategory(L108_SUM_CRITERION, rapid, 4),
                "the worse ear's category by its sum, or 4 where either ear shows rapid loss",
                "This is the numeric category only: a reviewer's finding of a sign of noise in the audiogram is not in"
                        + " it.",
                new Citation("HSE L108 (2021)"),
                FROM_MEMORY);
    }

    static final ShiftCriterion ALBERTA_SHIFT = new ShiftCriterion.Neighbours(ONE_TO_SIX, 2, Limit.atLeast(15));

    static final Rule ALBERTA_ABNORMAL_SHIFT = new Rule(
            "alberta_abnormal_shift",
            "abnormal shift",
            new FromBaseline(ALBERTA_SHIFT),
            "15 dB or more worse at two neighbours among 1000, 2000, 3000, 4000 and 6000 Hz",
            "Results, history and baseline go to a physician or audiologist; the worker is told.",
            new Citation("Alberta OHS Code Part 16 (number from memory)"),
            FROM_MEMORY);

    static final Rule ALBERTA_ABNORMAL_AUDIOGRAM = new Rule(
            "alberta_abnormal_audiogram",
            "abnormal audiogram",
            new AnyOf(List.of(
                    new AnyLevel(LOW, Limit.moreThan(25)),
                    new AnyLevel(HIGH, Limit.moreThan(60)),
                    new WorseThanOtherEar(HIGH, Limit.moreThan(30)))),
            "more than 25 dB at any of 500, 1000 and 2000 Hz, or more than 60 dB at any of 3000, 4000 and 6000 Hz, or"
                    + " worse than the other ear by a mean of more than 30 dB at 3000, 4000 and 6000 Hz",
            "Results, history and baseline go to a physician or audiologist; the worker is told.",
            new Citation("Manitoba Reg. 217/2006, definitions; Alberta OHS Code Part 16"),
            LOOKED_UP);

    static final Rule AAO_BASELINE = new Rule(
            "aao_baseline",
            "referral by level or difference",
            new EitherEar(new AnyOf(List.of(
                    new MeanLevel(BASELINE_LEVEL.frequencies(), limit(BASELINE_LEVEL)),
                    new WorseThanOtherEar(BASELINE_DIFFERENCE_LOW.frequencies(), limit(BASELINE_DIFFERENCE_LOW)),
                    new WorseThanOtherEar(BASELINE_DIFFERENCE_HIGH.frequencies(), limit(BASELINE_DIFFERENCE_HIGH))))),
            "a mean level of more than 25 dB at 500, 1000, 2000 and 3000 Hz in either ear, or a mean difference between"
                    + " the ears of more than 15 dB at 500, 1000 and 2000 Hz or of more than 30 dB at 3000, 4000 and"
                    + " 6000 Hz",
            "The reviewer considers a referral to an ear specialist.",
            new Citation("AAO-HNS referral criteria (1983, 1997; from memory)"),
            FROM_MEMORY);

    static final ShiftCriterion AAO_PERIODIC_SHIFT = new ShiftCriterion.AnyOf(List.of(
            new ShiftCriterion.Mean(WORSENING_LOW.frequencies(), limit(WORSENING_LOW), Direction.WORSE),
            new ShiftCriterion.Mean(WORSENING_HIGH.frequencies(), limit(WORSENING_HIGH), Direction.WORSE)));

    static final Rule AAO_PERIODIC = new Rule(
            "aao_periodic",
            "referral by change",
            new FromBaseline(AAO_PERIODIC_SHIFT),
            "a mean of more than 15 dB worse at 500, 1000 and 2000 Hz, or of more than 20 dB worse at 3000, 4000 and"
                    + " 6000 Hz",
            "The test is repeated; the reviewer considers a referral to an ear specialist.",
            new Citation("AAO-HNS referral criteria (1983, 1997; from memory)"),
            FROM_MEMORY);

    private Rules() {}

    private static Limit limit(ReferralCriterion criterion) {
        return Limit.moreThan(criterion.moreThanDecibels());
    }
}
