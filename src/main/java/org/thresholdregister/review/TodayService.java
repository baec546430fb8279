package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/** What is owed to workers and by when, within the sites that the signed-in user may see. */
@Service
@Transactional(readOnly = true)
public class TodayService {

    private final EntityManager entityManager;
    private final DailyJudging dailyJudging;
    private final CurrentUser currentUser;
    private final Clock clock;

    TodayService(EntityManager entityManager, DailyJudging dailyJudging, CurrentUser currentUser, Clock clock) {
        this.entityManager = entityManager;
        this.dailyJudging = dailyJudging;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** How many follow-ups there are, by kind and state. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public DueCounts counts() {
        LocalDate today = LocalDate.now(clock);
        Map<FollowUpKind, Map<FollowUpState, Integer>> byKind = new EnumMap<>(FollowUpKind.class);
        inScope()
                .all("f.kind, f.dueDate, count(*)", "group by f.kind, f.dueDate", tuple -> tuple)
                .forEach(tuple -> byKind.computeIfAbsent(
                                tuple.get(0, FollowUpKind.class), kind -> new EnumMap<>(FollowUpState.class))
                        .merge(
                                FollowUpState.withDaysLeft(daysLeft(today, tuple.get(1, LocalDate.class))),
                                Math.toIntExact(tuple.get(2, Long.class)),
                                Integer::sum));
        return new DueCounts(today, byKind);
    }

    /** One page of the follow-ups that the filter lets through. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<FollowUpRow> find(FollowUpFilter filter, Order<FollowUpColumn> order, int offset, int limit) {
        LocalDate today = LocalDate.now(clock);
        return filtered(filter)
                .page(
                        "w.workerId, w.familyName, w.givenName, w.site, w.department, f.kind, f.dueDate, f.testDate,"
                                + " f.ears, f.ruleSet",
                        List.of(order.column().path(), "f.dueDate", "f.id"),
                        order.descending(),
                        offset,
                        limit,
                        tuple -> row(tuple, today));
    }

    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public int count(FollowUpFilter filter) {
        return filtered(filter).count();
    }

    private ListQuery inScope() {
        dailyJudging.bringUpToDate();
        return ListQuery.ofOwned(
                entityManager, "StoredFollowUp f", "Worker w on w.id = f.workerId", "w.site", currentUser.scope());
    }

    private ListQuery filtered(FollowUpFilter filter) {
        LocalDate today = LocalDate.now(clock);
        ListQuery query = inScope().whereMatches("w.search", filter.text());
        filter.kind().ifPresent(kind -> query.where("f.kind = ?", kind));
        filter.state()
                .ifPresent(state ->
                        query.where("f.dueDate between ? and ?", state.firstDueDate(today), state.lastDueDate(today)));
        filter.site().ifPresent(site -> query.where("w.site = ?", site));
        filter.department().ifPresent(department -> query.where("w.department = ?", department));
        return query;
    }

    private static long daysLeft(LocalDate today, LocalDate dueDate) {
        return ChronoUnit.DAYS.between(today, dueDate);
    }

    private static FollowUpRow row(Tuple tuple, LocalDate today) {
        LocalDate dueDate = tuple.get(6, LocalDate.class);
        return new FollowUpRow(
                tuple.get(0, String.class),
                tuple.get(1, String.class),
                tuple.get(2, String.class),
                tuple.get(3, String.class),
                tuple.get(4, String.class),
                tuple.get(5, FollowUpKind.class),
                dueDate,
                daysLeft(today, dueDate),
                Optional.ofNullable(tuple.get(7, LocalDate.class)),
                tuple.get(8, Ears.class),
                tuple.get(9, String.class));
    }
}
