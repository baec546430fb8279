package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.RuleSet;

/**
 * Whether a worker has to wear protectors, and why.
 *
 * @param answer undecided where the level is not on record and no other reason holds, or where this program knows no
 *     such rule in the rule set
 */
public record MustWear(Answer answer, List<Reason> reasons) {

    /** What makes protectors a must. */
    public enum Why {
        /** Exposure over the limit. */
        OVER_LIMIT,
        /** Exposure so high that a plug and a muff are worn together. */
        PLUG_AND_MUFF,
        /** No baseline six months after the first exposure at the action level. */
        NO_BASELINE_IN_TIME,
        /** A shift at or above the action level. */
        SHIFT
    }

    /** One reason, and the paragraph that it rests on. */
    public record Reason(Why why, Citation basis, Provenance provenance) {}

    /**
     * What is known of a worker.
     *
     * @param twaDba time-weighted average without protectors
     * @param enrolledFrom first day at or above the action level
     * @param hasBaseline whether there is any test to compare with
     * @param shiftOn day of the test of the latest shift that stands
     */
    public record Facts(
            Optional<BigDecimal> twaDba,
            Optional<LocalDate> enrolledFrom,
            boolean hasBaseline,
            Optional<LocalDate> shiftOn) {}

    private static final BigDecimal LIMIT = BigDecimal.valueOf(90);
    private static final BigDecimal ACTION_LEVEL = BigDecimal.valueOf(85);
    private static final BigDecimal DUAL_LEVEL = BigDecimal.valueOf(105);
    private static final int MONTHS_TO_BASELINE = 6;

    public MustWear {
        reasons = List.copyOf(reasons);
    }

    /** The paragraphs of one rule set. */
    private record Paragraphs(
            String limit, boolean limitItself, Optional<String> dual, String noBaseline, String shift) {}

    private static Optional<Paragraphs> paragraphs(RuleSet rules) {
        return switch (rules.word()) {
            case "osha" ->
                Optional.of(new Paragraphs(
                        "29 CFR 1910.95(i)(2)(i)",
                        false,
                        Optional.empty(),
                        "29 CFR 1910.95(i)(2)(ii)(A)",
                        "29 CFR 1910.95(i)(2)(ii)(B)"));
            case "msha" ->
                Optional.of(new Paragraphs(
                        "30 CFR 62.160(b)",
                        false,
                        Optional.of("30 CFR 62.140"),
                        "30 CFR 62.160(c)(2)",
                        "30 CFR 62.160(c)(1)"));
            case "fra" ->
                Optional.of(new Paragraphs(
                        "49 CFR 227.115(d)", true, Optional.empty(), "49 CFR 227.115(c)", "49 CFR 227.115(c)"));
            default -> Optional.empty();
        };
    }

    /** By the rules in force on a day. */
    public static MustWear of(RuleSet rules, Facts facts, LocalDate today) {
        return paragraphs(rules).map(some -> of(some, facts, today)).orElse(new MustWear(Answer.UNDECIDED, List.of()));
    }

    private static MustWear of(Paragraphs rule, Facts facts, LocalDate today) {
        List<Reason> reasons = new ArrayList<>();
        facts.twaDba().ifPresent(twa -> {
            int overLimit = twa.compareTo(LIMIT);
            if (overLimit > 0 || (overLimit == 0 && rule.limitItself())) {
                reasons.add(reason(Why.OVER_LIMIT, rule.limit()));
            }
            rule.dual()
                    .filter(some -> twa.compareTo(DUAL_LEVEL) > 0)
                    .ifPresent(place -> reasons.add(reason(Why.PLUG_AND_MUFF, place)));
        });
        if (isAtActionLevel(facts, today)) {
            boolean late = facts.enrolledFrom()
                    .filter(first -> first.plusMonths(MONTHS_TO_BASELINE).isBefore(today))
                    .isPresent();
            if (late && !facts.hasBaseline()) {
                reasons.add(reason(Why.NO_BASELINE_IN_TIME, rule.noBaseline()));
            }
            if (facts.shiftOn().isPresent()) {
                reasons.add(reason(Why.SHIFT, rule.shift()));
            }
        }
        if (!reasons.isEmpty()) {
            return new MustWear(Answer.YES, reasons);
        }
        return new MustWear(facts.twaDba().isPresent() ? Answer.NO : Answer.UNDECIDED, List.of());
    }

    /** By the level where there is one; else by being enrolled, which is to be at the action level. */
    private static boolean isAtActionLevel(Facts facts, LocalDate today) {
        return facts.twaDba()
                .map(twa -> twa.compareTo(ACTION_LEVEL) >= 0)
                .orElseGet(() -> facts.enrolledFrom()
                        .filter(first -> !first.isAfter(today))
                        .isPresent());
    }

    private static Reason reason(Why why, String place) {
        return new Reason(why, new Citation(place), Provenance.LOOKED_UP);
    }
}
