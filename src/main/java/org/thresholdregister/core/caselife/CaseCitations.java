package org.thresholdregister.core.caselife;

import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;

/** The paragraphs behind the moves of a case, 29 CFR 1910.95 and 1904. */
final class CaseCitations {

    private CaseCitations() {}

    static Optional<Citation> of(CaseMove move, CaseScope scope) {
        boolean forTheLog = scope == CaseScope.LOG_ONLY;
        return switch (move) {
            case SHIFT_FOUND ->
                Optional.of(forTheLog ? Citation.RECORDING_REFERENCE : Citation.STANDARD_THRESHOLD_SHIFT);
            case RETEST_BOOKED, CONFIRMED, CLEARED ->
                Optional.of(forTheLog ? Citation.RECORDING_RETEST : Citation.RETEST);
            case NOTICE_SENT -> Optional.of(Citation.NOTICE);
            case PROTECTOR_REFITTED, TRAINED -> Optional.of(Citation.PROTECTORS_AFTER_SHIFT);
            case REFERRED -> Optional.of(Citation.REFERRAL);
            case FOUND_NOT_WORK_RELATED -> Optional.of(Citation.NOT_WORK_RELATED);
            case FOUND_WORK_RELATED -> Optional.of(Citation.WORK_RELATED);
            case FOUND_RECORDABLE, FOUND_NOT_RECORDABLE, LEFT_UNDECIDED -> Optional.of(Citation.RECORDABLE);
            case FOUND_HELD_BY_EARLIER_CASE -> Optional.of(Citation.RECORDING_REFERENCE);
            case RECORDED, RE_ENTERED, LINED_OUT -> Optional.of(Citation.RECORDING_RETEST);
            case RETEST_SET_ASIDE, TEST_SET_ASIDE -> Optional.of(Citation.COMPARISON);
            case CLOSED -> Optional.empty();
        };
    }
}
