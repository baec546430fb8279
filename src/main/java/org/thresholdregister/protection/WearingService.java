package org.thresholdregister.protection;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/** Who of the user's sites has to wear protectors, and whom a shift leaves to be refitted or trained. */
@Service
@Transactional(readOnly = true)
public class WearingService {

    private final Wearing wearing;
    private final CurrentUser currentUser;
    private final Clock clock;

    WearingService(Wearing wearing, CurrentUser currentUser, Clock clock) {
        this.wearing = wearing;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** Those who have to wear protectors, the most pressing first. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<WearingRow> mustWear() {
        return wearing.mustWear(currentUser.scope(), LocalDate.now(clock));
    }

    /** Refitting and training that cases leave owed, those with a date first. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<OwedRow> owedAfterShift() {
        return wearing.owed(currentUser.scope(), LocalDate.now(clock));
    }
}
