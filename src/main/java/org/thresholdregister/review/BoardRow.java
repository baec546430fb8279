package org.thresholdregister.review;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalLong;
import org.thresholdregister.platform.duty.OpenDuty;

/** One thing that is open, on a day. */
public sealed interface BoardRow {

    /** The last day for it; empty where the rule gives none. */
    Optional<LocalDate> due();

    /** The day on which it is looked at. */
    LocalDate today();

    /** Empty where none is given. */
    String site();

    /** The paragraph that makes it due; empty where none does. */
    String basis();

    default DueState state() {
        return DueState.of(due(), today());
    }

    /** Days from today to the due date, negative once it is overdue; absent where the rule gives no date. */
    default OptionalLong daysLeft() {
        return due().map(day -> OptionalLong.of(ChronoUnit.DAYS.between(today(), day)))
                .orElse(OptionalLong.empty());
    }

    /**
     * Something about a worker's test. Texts that are not given are empty.
     *
     * @param openSince since when it has been open, where the register knows better than the date of the test
     * @param booked when and where a retest is booked for
     * @param postponed how it is put off beyond today; empty where it is not
     */
    record OfTask(
            TaskKey key,
            String familyName,
            String givenName,
            String site,
            String department,
            Optional<LocalDate> due,
            LocalDate openSince,
            String basis,
            String booked,
            Optional<Postponement> postponed,
            LocalDate today)
            implements BoardRow {

        public String workerId() {
            return key.workerId();
        }

        public TaskKind kind() {
            return key.kind();
        }
    }

    /** A duty that another feature knows of. */
    record OfDuty(OpenDuty duty, LocalDate today) implements BoardRow {
        @Override
        public Optional<LocalDate> due() {
            return Optional.of(duty.due());
        }

        @Override
        public String site() {
            return duty.site();
        }

        @Override
        public String basis() {
            return duty.basis().place();
        }
    }
}
