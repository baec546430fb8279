package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;

/** How each site is tested, and what its calendar tells. An administrator sets this for any site, by its name. */
@Service
@Transactional
@PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_ADMINISTRATOR)
public class TestSiteService {

    /** The most characters of a site's name. */
    public static final int LONGEST_SITE = 200;

    private final EntityManager entityManager;
    private final TestSiteFinder finder;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;

    TestSiteService(
            EntityManager entityManager, TestSiteFinder finder, AuditTrail auditTrail, CurrentUser currentUser) {
        this.entityManager = entityManager;
        this.finder = finder;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
    }

    @Transactional(readOnly = true)
    public TestSite of(String site) {
        return finder.of(site);
    }

    /** Stores how a site is tested. Says whether it was stored: not for a site that the user may not see. */
    public boolean set(TestSite settings) {
        String site = settings.site();
        boolean mayChange =
                currentUser.role() == Role.ADMINISTRATOR || currentUser.scope().includes(site.isEmpty() ? null : site);
        if (!mayChange || site.length() > LONGEST_SITE) {
            return false;
        }
        entityManager.merge(new StoredTestSite(settings));
        auditTrail.record(
                TestDayAction.TEST_SITE_CHANGED,
                "site",
                site,
                (settings.mobileUnit() ? "mobile unit" : "no mobile unit") + ", "
                        + (settings.namesInCalendar() ? "names in calendars" : "no names in calendars") + ", "
                        + settings.timeZone());
        return true;
    }
}
