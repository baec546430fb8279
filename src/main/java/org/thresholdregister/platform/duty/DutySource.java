package org.thresholdregister.platform.duty;

import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.platform.security.SiteScope;

/**
 * A feature that knows of things to be done by a day. The lists of open things ask every source there is; the caller has
 * checked the role and holds the transaction.
 */
public interface DutySource {

    /**
     * What is open as of a day at the sites in the scope, and due no later than {@code until}; overdue things are always
     * in it. In no order.
     */
    List<OpenDuty> open(SiteScope scope, LocalDate today, LocalDate until);
}
