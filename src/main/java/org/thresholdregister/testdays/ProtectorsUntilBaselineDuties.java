package org.thresholdregister.testdays;

import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Component;
import org.thresholdregister.core.scheduling.MobileUnitRule;
import org.thresholdregister.platform.duty.DutySource;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.security.SiteScope;

/** Protectors for those who wait for a mobile unit, until it is noted that they are worn. */
@Component
class ProtectorsUntilBaselineDuties implements DutySource {

    private final AwaitsBaselineFinder finder;

    ProtectorsUntilBaselineDuties(AwaitsBaselineFinder finder) {
        this.finder = finder;
    }

    @Override
    public List<OpenDuty> open(SiteScope scope, LocalDate today, LocalDate until) {
        return finder.find(scope, until).stream()
                .filter(waiting -> waiting.wornFrom().isEmpty())
                .map(waiting -> new OpenDuty(
                        "hearing protectors until the baseline test",
                        new OpenDuty.Subject.OfWorker(waiting.workerId(), waiting.name()),
                        waiting.site(),
                        waiting.protectorsFrom(),
                        MobileUnitRule.PROTECTORS,
                        "protectors-until-baseline"))
                .toList();
    }
}
