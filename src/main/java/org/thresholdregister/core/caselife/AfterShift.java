package org.thresholdregister.core.caselife;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.Deadline;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSet;

/**
 * What a rule set asks to be done with protectors and training once a shift is confirmed, beside notice and log.
 *
 * @param protectors the paragraph that asks for protectors to be fitted or refitted and for training; empty where none
 *     does
 * @param deadline from the day on which the shift was confirmed; empty where the rule set names no time
 * @param referral the paragraph on referral where it is called for; empty where there is none
 * @param liftedBy whose finding that the loss is not work-related lifts it
 */
public record AfterShift(
        Optional<Citation> protectors, Optional<Deadline> deadline, Optional<Citation> referral, LiftedBy liftedBy) {

    /** The profession whose finding counts; the record does not tell professions apart. */
    public enum LiftedBy {
        PHYSICIAN,
        PHYSICIAN_OR_AUDIOLOGIST
    }

    private static final AfterShift NOTHING =
            new AfterShift(Optional.empty(), Optional.empty(), Optional.empty(), LiftedBy.PHYSICIAN);

    /** 29 CFR 1910.95(g)(8)(ii) names no time. */
    private static final AfterShift OSHA = new AfterShift(
            Optional.of(new Citation("29 CFR 1910.95(g)(8)(ii)(A) and (B)")),
            Optional.empty(),
            Optional.of(new Citation("29 CFR 1910.95(g)(8)(ii)(C) and (D)")),
            LiftedBy.PHYSICIAN);

    /** Counted from receipt of the evidence or confirmation, for which the day of the confirmation is taken. */
    private static final AfterShift MSHA = new AfterShift(
            Optional.of(new Citation("30 CFR 62.174")),
            Optional.of(new Deadline.CalendarDays(30)),
            Optional.empty(),
            LiftedBy.PHYSICIAN_OR_AUDIOLOGIST);

    private static final AfterShift FRA = new AfterShift(
            Optional.of(new Citation("49 CFR 227.109(h)(2) (from memory)")),
            Optional.empty(),
            Optional.of(new Citation("49 CFR 227.109(h)(2) (from memory)")),
            LiftedBy.PHYSICIAN_OR_AUDIOLOGIST);

    /** Nothing for rule sets of which this program knows no such duty; what was done can be entered all the same. */
    public static AfterShift of(RuleSet ruleSet) {
        return switch (ruleSet.word()) {
            case "osha" -> OSHA;
            case "msha" -> MSHA;
            case "fra" -> FRA;
            default -> NOTHING;
        };
    }

    /** The last day for it. */
    Optional<LocalDate> by(LocalDate confirmedOn, Holidays holidays) {
        return deadline.map(some -> some.after(confirmedOn, holidays));
    }
}
