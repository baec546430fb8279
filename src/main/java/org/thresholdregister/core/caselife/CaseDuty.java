package org.thresholdregister.core.caselife;

import java.util.Optional;

/** What a case may leave owed. */
public enum CaseDuty {
    NOTICE(CaseMove.NOTICE_SENT),
    /** To find out whether the case is recordable, where the record does not tell; no single move does it. */
    RECORDABILITY,
    RECORD(CaseMove.RECORDED),
    /** To line out the entry of a loss that was found not work-related after it was recorded. */
    LINE_OUT(CaseMove.LINED_OUT),
    /** To fit or refit protectors. */
    REFIT(CaseMove.PROTECTOR_REFITTED),
    /** To train, or train again. */
    TRAINING(CaseMove.TRAINED);

    private final Optional<CaseMove> doneBy;

    CaseDuty() {
        this.doneBy = Optional.empty();
    }

    CaseDuty(CaseMove doneBy) {
        this.doneBy = Optional.of(doneBy);
    }

    public boolean isDoneBy(CaseMove move) {
        return doneBy.filter(move::equals).isPresent();
    }
}
