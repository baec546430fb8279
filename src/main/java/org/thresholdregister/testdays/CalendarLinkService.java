package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import java.security.SecureRandom;
import java.time.InstantSource;
import java.util.Base64;
import java.util.Optional;
import java.util.UUID;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/**
 * The address of the signed-in user's calendar. Its secret part is random and shown once, when it is made: the register
 * keeps its hash only.
 */
@Service
@Transactional
@PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
public class CalendarLinkService {

    /** Of the secret part: 256 bits cannot be guessed. */
    private static final int TOKEN_BYTES = 32;

    private final EntityManager entityManager;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final SecureRandom random = new SecureRandom();
    private final InstantSource systemTime = InstantSource.system();

    CalendarLinkService(EntityManager entityManager, AuditTrail auditTrail, CurrentUser currentUser) {
        this.entityManager = entityManager;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
    }

    /** Whether there is an address that works. */
    @Transactional(readOnly = true)
    public boolean exists() {
        return find().isPresent();
    }

    /** Makes an address in place of any former one, and gives its path, relative to the application. */
    public String make() {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        String token = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        String hash = CalendarToken.hash(token);
        find().ifPresentOrElse(
                        link -> link.renew(hash, systemTime.instant()),
                        () -> entityManager.persist(new CalendarLink(
                                currentUser.username(), UUID.randomUUID().toString(), hash, systemTime.instant())));
        auditTrail.record(TestDayAction.CALENDAR_LINK_MADE, "account", currentUser.username(), "");
        return "calendar/" + token + ".ics";
    }

    /** Ends the address: whoever has it gets nothing any more. */
    public void revoke() {
        find().ifPresent(link -> {
            entityManager.remove(link);
            auditTrail.record(TestDayAction.CALENDAR_LINK_REVOKED, "account", currentUser.username(), "");
        });
    }

    private Optional<CalendarLink> find() {
        return Optional.ofNullable(entityManager.find(CalendarLink.class, currentUser.username()));
    }
}
