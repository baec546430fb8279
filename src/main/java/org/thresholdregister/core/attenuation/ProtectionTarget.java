package org.thresholdregister.core.attenuation;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.RuleSet;

/** The level that a rule set asks a protector to bring a worker's exposure down to. */
public sealed interface ProtectionTarget {

    /**
     * At most this much.
     *
     * @param dba eight-hour time-weighted average
     * @param shiftOn day of the test whose shift lowers the target; empty where there was none
     */
    record AtMost(BigDecimal dba, Optional<LocalDate> shiftOn, Citation basis, Provenance provenance)
            implements ProtectionTarget {}

    /** The rule set names no level under the protector, as far as this program knows its text. */
    record NotNamed() implements ProtectionTarget {}

    /** Without a shift, 29 CFR 1910.95(j)(2) and 49 CFR 227.117. */
    BigDecimal WITHOUT_SHIFT = BigDecimal.valueOf(90);

    /** After a standard threshold shift, 29 CFR 1910.95(j)(3) and 49 CFR 227.117. */
    BigDecimal AFTER_SHIFT = BigDecimal.valueOf(85);

    /**
     * What is asked of a worker.
     *
     * <p>Reading: (j)(3) speaks of employees who have experienced a shift and makes no exception for one found not
     * work-related, so the lower target stays. 30 CFR 62.160 names no level.
     *
     * @param shiftOn day of the test of the latest shift that stands; empty where none does
     */
    static ProtectionTarget of(RuleSet rules, Optional<LocalDate> shiftOn) {
        return of(rules, shiftOn.isPresent(), shiftOn);
    }

    /** What is asked where a shift has no day, as in a calculation about nobody. */
    static ProtectionTarget of(RuleSet rules, boolean afterShift) {
        return of(rules, afterShift, Optional.empty());
    }

    private static ProtectionTarget of(RuleSet rules, boolean afterShift, Optional<LocalDate> shiftOn) {
        BigDecimal level = afterShift ? AFTER_SHIFT : WITHOUT_SHIFT;
        return switch (rules.word()) {
            case "osha" ->
                new AtMost(
                        level,
                        shiftOn,
                        new Citation(afterShift ? "29 CFR 1910.95(j)(3)" : "29 CFR 1910.95(j)(2)"),
                        Provenance.LOOKED_UP);
            case "fra" -> new AtMost(level, shiftOn, new Citation("49 CFR 227.117"), Provenance.LOOKED_UP);
            default -> new NotNamed();
        };
    }

    /** Whether an estimate reaches it; undecided where there is no estimate or no target. */
    default Answer isReachedBy(Estimate estimate) {
        return switch (this) {
            case AtMost target ->
                switch (estimate) {
                    case Estimate.Estimated level ->
                        level.levelUnder().compareTo(target.dba()) <= 0 ? Answer.YES : Answer.NO;
                    case Estimate.Unavailable none -> Answer.UNDECIDED;
                };
            case NotNamed none -> Answer.UNDECIDED;
        };
    }
}
