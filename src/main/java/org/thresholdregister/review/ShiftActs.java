package org.thresholdregister.review;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.caselife.CaseEvent;
import org.thresholdregister.core.caselife.CaseLife;
import org.thresholdregister.core.caselife.CaseMove;

/**
 * What was done about one ear's shift.
 *
 * @param noticeGivenOn the day of the last notice
 * @param recordedOn the day of the entry that stands on the log
 * @param linedOutOn the day on which the entry was lined out, where it is
 */
public record ShiftActs(
        Optional<LocalDate> noticeGivenOn, Optional<LocalDate> recordedOn, Optional<LocalDate> linedOutOn) {

    /** Nothing was done. */
    public static final ShiftActs NONE = new ShiftActs(Optional.empty(), Optional.empty(), Optional.empty());

    static ShiftActs of(CaseLife life, Ear ear) {
        Optional<CaseEvent> entry = life.latest(ear, CaseMove.RECORDED, CaseMove.RE_ENTERED, CaseMove.LINED_OUT);
        return new ShiftActs(
                life.latest(ear, CaseMove.NOTICE_SENT).map(CaseEvent::day),
                entry.filter(event -> event.move() != CaseMove.LINED_OUT).map(CaseEvent::day),
                entry.filter(event -> event.move() == CaseMove.LINED_OUT).map(CaseEvent::day));
    }
}
