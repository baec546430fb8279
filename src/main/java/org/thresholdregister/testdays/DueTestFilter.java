package org.thresholdregister.testdays;

import java.time.LocalDate;
import java.util.Optional;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.WorkShift;
import org.thresholdregister.platform.query.SearchText;

/**
 * Which due tests a list shows.
 *
 * @param dueBy the last day in time is no later; missed tests are shown whatever their day
 * @param site only this site, or those without one where the text is empty
 * @param department likewise
 * @param shift only this shift, or those whose shift is not known where the text is empty
 * @param text words that the worker's name or number must hold; empty for all
 */
public record DueTestFilter(
        LocalDate dueBy,
        Optional<Occasion> occasion,
        Optional<Booked> booked,
        Optional<String> site,
        Optional<String> department,
        Optional<String> shift,
        String text) {

    /** Whether somebody has a time. */
    public enum Booked {
        WITHOUT_A_TIME,
        WITH_A_TIME,
        /** Was called before and did not come. */
        MISSED
    }

    /** All that is due by a day. */
    public static DueTestFilter all(LocalDate dueBy) {
        return new DueTestFilter(
                dueBy, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), "");
    }

    boolean includes(DuePerson person) {
        var worker = person.worker();
        String names = SearchText.fold(worker.familyName() + " " + worker.givenName() + " " + worker.workerId());
        return occasion.map(chosen -> chosen == person.due().occasion()).orElse(true)
                && booked.map(chosen -> is(chosen, person)).orElse(true)
                && site.map(worker.site()::equals).orElse(true)
                && department.map(worker.department()::equals).orElse(true)
                && shift.map(chosen -> person.due()
                                .shift()
                                .map(WorkShift::name)
                                .orElse("")
                                .equals(chosen))
                        .orElse(true)
                && SearchText.words(text).stream().allMatch(names::contains);
    }

    private static boolean is(Booked booked, DuePerson person) {
        return switch (booked) {
            case WITHOUT_A_TIME -> person.booking().isEmpty();
            case WITH_A_TIME -> person.booking().isPresent();
            case MISSED -> person.due().missed() > 0;
        };
    }
}
