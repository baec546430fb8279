package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Knows how each site is tested. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class TestSiteFinder {

    /** By the name that calendars know it by. */
    static final ZoneId UTC = ZoneId.of("Etc/UTC");

    private final EntityManager entityManager;
    private final Clock clock;

    TestSiteFinder(EntityManager entityManager, Clock clock) {
        this.entityManager = entityManager;
        this.clock = clock;
    }

    /** As it was set, else without a mobile unit and names, in the program's own time zone. */
    TestSite of(String site) {
        ZoneId own = clock.getZone();
        return Optional.ofNullable(entityManager.find(StoredTestSite.class, site))
                .map(StoredTestSite::toTestSite)
                .orElse(new TestSite(site, false, false, own.equals(ZoneOffset.UTC) ? UTC : own));
    }
}
