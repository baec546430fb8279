package org.thresholdregister.core.caselife;

import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;

/** What a case may leave owed. */
public enum Duty {
    NOTICE(CaseMove.NOTICE_SENT, Citation.NOTICE),
    /** To find out whether the case is recordable, where the record does not tell; no single move does it. */
    RECORDABILITY(Citation.RECORDABLE),
    RECORD(CaseMove.RECORDED, Citation.RECORDING_RETEST),
    /** To line out the entry of a loss that was found not work-related after it was recorded. */
    LINE_OUT(CaseMove.LINED_OUT, Citation.LOG_KEPT_UP),
    /** To fit or refit protectors; the rule gives no deadline. */
    REFIT(CaseMove.PROTECTOR_REFITTED, Citation.PROTECTORS_AFTER_SHIFT),
    /** To train, or train again; the rule gives no deadline. */
    TRAINING(CaseMove.TRAINED, Citation.PROTECTORS_AFTER_SHIFT);

    private final Optional<CaseMove> doneBy;
    private final Citation basis;

    Duty(Citation basis) {
        this.doneBy = Optional.empty();
        this.basis = basis;
    }

    Duty(CaseMove doneBy, Citation basis) {
        this.doneBy = Optional.of(doneBy);
        this.basis = basis;
    }

    public boolean isDoneBy(CaseMove move) {
        return doneBy.filter(move::equals).isPresent();
    }

    public Citation basis() {
        return basis;
    }
}
