package org.thresholdregister.testdays;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SignedInUser;
import org.thresholdregister.review.FollowUpStore;

/**
 * The calendar of whoever an address belongs to: a nurse's own test days, a safety officer's of all the own sites, and
 * how much falls due on each day. It follows the account's role and sites as they are now.
 */
@Component
class CalendarFeed {

    /** How far back and ahead a calendar tells; our choice. */
    private static final int MONTHS_BACK = 3;

    private static final int MONTHS_AHEAD = 14;

    private final EntityManager entityManager;
    private final BookingReader reader;
    private final TestSiteFinder sites;
    private final FollowUpStore followUps;
    private final AccountFinder accounts;
    private final Clock clock;

    CalendarFeed(
            EntityManager entityManager,
            BookingReader reader,
            TestSiteFinder sites,
            FollowUpStore followUps,
            AccountFinder accounts,
            Clock clock) {
        this.entityManager = entityManager;
        this.reader = reader;
        this.sites = sites;
        this.followUps = followUps;
        this.accounts = accounts;
        this.clock = clock;
    }

    /** The calendar as text; empty where the address is unknown or its account may read no calendar. */
    @Transactional(readOnly = true)
    Optional<String> of(String token) {
        return entityManager
                .createQuery("select c from CalendarLink c where c.tokenHash = :hash", CalendarLink.class)
                .setParameter("hash", CalendarToken.hash(token))
                .getResultStream()
                .findFirst()
                .flatMap(link -> account(link.username()).map(user -> calendar(link, user)));
    }

    private Optional<SignedInUser> account(String username) {
        return accounts.find(username).filter(user -> user.role() == Role.NURSE || user.role() == Role.SAFETY_OFFICER);
    }

    private String calendar(CalendarLink link, SignedInUser user) {
        LocalDate today = LocalDate.now(clock);
        LocalDate first = today.minusMonths(MONTHS_BACK);
        LocalDate last = today.plusMonths(MONTHS_AHEAD);
        CalendarText text = new CalendarText(link.uid(), clock.instant(), first, last);
        for (StoredTestDay day : reader.days(user.scope())) {
            boolean own = user.role() == Role.SAFETY_OFFICER
                    || day.toTestDay().nurse().equals(user.getUsername());
            if (own && !day.date().isBefore(first) && !day.date().isAfter(last)) {
                TestSite site = sites.of(day.site());
                List<StoredBooking> held = reader.bookingsOf(List.of(day.key())).stream()
                        .filter(booking -> booking.state().holdsItsTime())
                        .toList();
                text.add(day, site.timeZone(), held.size(), site.namesInCalendar() ? reader.inFull(held) : List.of());
            }
        }
        followUps.countsByDay(user.scope(), first, last).forEach(text::add);
        return text.toString();
    }
}
