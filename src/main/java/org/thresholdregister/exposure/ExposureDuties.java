package org.thresholdregister.exposure;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.duty.DutySource;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.security.SiteScope;

/** People to be told a result, as one duty for each measurement. */
@Component
class ExposureDuties implements DutySource {

    /** The rule gives no time; the days are those that the rule for mines gives, from memory, taken as common practice. */
    private static final Citation TELLING =
            new Citation("29 CFR 1910.95(e), without a time; 15 days as in a mine by 30 CFR 62.110 (from memory)");

    private static final int DAYS = 15;

    private final NoisePlaces places;

    ExposureDuties(NoisePlaces places) {
        this.places = places;
    }

    @Override
    public List<OpenDuty> open(SiteScope scope, LocalDate today, LocalDate until) {
        return places.all(scope, today).stream()
                .filter(place -> place.untold() > 0)
                .flatMap(ExposureDuties::telling)
                .filter(duty -> !duty.due().isAfter(until))
                .toList();
    }

    private static Stream<OpenDuty> telling(NoisePlace place) {
        return place.current().stream()
                .map(current -> new OpenDuty(
                        "telling the result of a noise measurement",
                        new OpenDuty.Subject.OfThing(
                                place.subject().name() + ", " + Counted.of(place.untold(), "person", "people")),
                        place.subject().site(),
                        current.details().measuredOn().plusDays(DAYS),
                        TELLING,
                        NoisePaths.place(place.subject())));
    }
}
