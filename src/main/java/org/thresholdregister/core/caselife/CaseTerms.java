package org.thresholdregister.core.caselife;

import java.util.Optional;
import org.thresholdregister.core.rules.NoticeRule;
import org.thresholdregister.core.rules.RecordingRule;
import org.thresholdregister.core.rules.RuleSet;

/**
 * What a rule set lets follow from a case. The moves are the same for all; what is owed is not.
 *
 * @param told what has to be told to the worker; empty where nothing has
 * @param asksForProtectors whether protectors and training are asked for after a shift
 * @param keepsLog whether cases are recorded or reported
 */
public record CaseTerms(
        CaseScope scope, Optional<NoticeRule.Occasion> told, boolean asksForProtectors, boolean keepsLog) {

    static CaseTerms of(RuleSet ruleSet, CaseScope scope) {
        return new CaseTerms(
                scope,
                ruleSet.notice().map(NoticeRule::occasion),
                AfterShift.of(ruleSet).protectors().isPresent(),
                !(ruleSet.recording() instanceof RecordingRule.None));
    }

    /** Whether the worker is to be told while the shift stands so. */
    boolean tells(CaseState.Shift shift) {
        if (told.isEmpty() || shift == CaseState.Shift.NONE || shift == CaseState.Shift.SET_ASIDE) {
            return false;
        }
        boolean ofThisShift = scope == CaseScope.SHIFT_AND_LOG;
        return switch (told.get()) {
            case SHIFT -> ofThisShift && shift != CaseState.Shift.CLEARED;
            case CONFIRMED_SHIFT -> ofThisShift && shift == CaseState.Shift.CONFIRMED;
            case EVERY_TEST -> true;
        };
    }

    /** Whether protectors and training are asked for while the shift stands so. */
    boolean asksForProtectors(CaseState.Shift shift) {
        return asksForProtectors && scope == CaseScope.SHIFT_AND_LOG && shift == CaseState.Shift.CONFIRMED;
    }
}
