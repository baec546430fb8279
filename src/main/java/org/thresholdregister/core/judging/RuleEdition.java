package org.thresholdregister.core.judging;

/**
 * Which program of ours a determination was made by, so that an old one can be told from a new one. The edition of a
 * rule set's text stands with the rule set.
 */
public final class RuleEdition {

    /**
     * The edition of this program's rules. It goes up by one whenever the same record may be judged otherwise than
     * before; every worker is then judged anew, and what was determined by the earlier edition is kept.
     */
    public static final int OF_THIS_PROGRAM = 1;

    /** The edition of a judgement that no longer holds, since the rules of its site have changed. */
    public static final int NONE = 0;

    private RuleEdition() {}
}
