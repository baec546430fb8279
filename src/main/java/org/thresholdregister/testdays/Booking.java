package org.thresholdregister.testdays;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.scheduling.Occasion;
import org.thresholdregister.core.scheduling.QuietTime;

/**
 * A worker's time on a test day. Texts that are not given are empty.
 *
 * @param lastDay the last day on which the test is in time
 * @param shift the name of the worker's shift; empty where it is not known
 * @param quietHours how many hours away from noise the site's rule set asks for
 * @param missed how often the worker did not come to this test before
 * @param hoursSinceNoise as asked on arrival
 * @param protectorsWorn whether protectors were worn in all noise of these hours, as asked on arrival
 */
public record Booking(
        long key,
        long dayKey,
        LocalDate date,
        LocalTime starts,
        String workerId,
        String familyName,
        String givenName,
        String site,
        String department,
        Occasion occasion,
        LocalDate lastDay,
        Citation basis,
        Optional<LocalDate> afterTest,
        String shift,
        QuietTime quiet,
        int quietHours,
        BookingState state,
        int missed,
        Optional<BigDecimal> hoursSinceNoise,
        Optional<Boolean> protectorsWorn,
        String note) {

    /** The name, or the number where no name is on file. */
    public String name() {
        String name = (givenName + " " + familyName).strip();
        return name.isEmpty() ? workerId : name;
    }
}
