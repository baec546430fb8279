package org.thresholdregister.core.judging;

import java.time.LocalDate;

/**
 * Which wording of the rules, and which program of ours, a determination was made by, so that an old one can be told
 * from a new one.
 */
public final class RuleEdition {

    /**
     * The edition of this program's rules. It goes up by one whenever the same record may be judged otherwise than
     * before; every worker is then judged anew, and what was determined by the earlier edition is kept.
     */
    public static final int OF_THIS_PROGRAM = 1;

    private RuleEdition() {}

    /** The day of the last amendment that is in the text applied. */
    public static LocalDate amendedTo(RuleSet ruleSet) {
        return switch (ruleSet) {
            // 1910.95: 73 FR 75584, 12 December 2008. 1904.10(b)(6): 84 FR 21457 (cited from memory).
            case OSHA -> LocalDate.of(2019, 5, 14);
        };
    }
}
