package org.thresholdregister.core.caselife;

import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.Step;

/** The paragraphs of a rule set behind the moves and the duties of a case. */
final class CaseParagraphs {

    /** Whether work caused or contributed to a loss, which is presumed. */
    private static final Citation WORK_RELATED = new Citation("29 CFR 1904.10(b)(5)");

    /** The log shows what changed: an entry that is none any more is removed or lined out. */
    private static final Citation LOG_KEPT_UP = new Citation("29 CFR 1904.33(b)(1)");

    private CaseParagraphs() {}

    static Optional<Citation> of(CaseMove move, CaseScope scope, RuleSet ruleSet) {
        boolean forTheLog = scope == CaseScope.LOG_ONLY;
        return switch (move) {
            case SHIFT_FOUND -> step(ruleSet, forTheLog ? Step.RECORDING_REFERENCE : Step.SHIFT);
            case RETEST_BOOKED, CONFIRMED, CLEARED -> step(ruleSet, forTheLog ? Step.RECORDING_DEADLINE : Step.RETEST);
            case NOTICE_SENT -> step(ruleSet, Step.NOTICE);
            case PROTECTOR_REFITTED, TRAINED -> AfterShift.of(ruleSet).protectors();
            case REFERRED -> AfterShift.of(ruleSet).referral();
            case FOUND_NOT_WORK_RELATED -> step(ruleSet, Step.NOT_WORK_RELATED);
            case FOUND_WORK_RELATED ->
                isOsha(ruleSet) ? Optional.of(WORK_RELATED) : step(ruleSet, Step.NOT_WORK_RELATED);
            case FOUND_RECORDABLE, FOUND_NOT_RECORDABLE, LEFT_UNDECIDED -> step(ruleSet, Step.RECORDABLE);
            case FOUND_HELD_BY_EARLIER_CASE -> step(ruleSet, Step.RECORDING_REFERENCE);
            case RECORDED, RE_ENTERED, LINED_OUT -> step(ruleSet, Step.RECORDING_DEADLINE);
            case RETEST_SET_ASIDE, TEST_SET_ASIDE -> step(ruleSet, Step.COMPARISON);
            case CLOSED -> Optional.empty();
        };
    }

    static Optional<Citation> of(CaseDuty duty, RuleSet ruleSet) {
        return switch (duty) {
            case NOTICE -> step(ruleSet, Step.NOTICE);
            case RECORDABILITY -> step(ruleSet, Step.RECORDABLE);
            case RECORD -> step(ruleSet, Step.RECORDING_DEADLINE);
            case LINE_OUT -> isOsha(ruleSet) ? Optional.of(LOG_KEPT_UP) : step(ruleSet, Step.NOT_WORK_RELATED);
            case REFIT, TRAINING -> AfterShift.of(ruleSet).protectors();
        };
    }

    private static boolean isOsha(RuleSet ruleSet) {
        return ruleSet.word().equals("osha");
    }

    private static Optional<Citation> step(RuleSet ruleSet, Step step) {
        return Optional.of(ruleSet.paragraph(step));
    }
}
