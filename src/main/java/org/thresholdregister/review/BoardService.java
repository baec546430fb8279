package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.duty.DutySource;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.query.SearchText;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;

/**
 * Everything that is open and by when, within the sites that the signed-in user may see: what is owed to workers, and
 * what the other features know to be due.
 */
@Service
public class BoardService {

    /** The most rows that can be chosen and answered at once. */
    public static final int MOST_AT_ONCE = 500;

    /** How far ahead duties of other features are shown; overdue ones always are. */
    private static final int DAYS_AHEAD = 90;

    private static final Comparator<BoardRow.OfDuty> BY_DUE_DATE = Comparator.comparing(
                    (BoardRow.OfDuty row) -> row.duty().due())
            .thenComparing(row -> row.duty().kind())
            .thenComparing(row -> nameOf(row.duty()));

    private final EntityManager entityManager;
    private final DailyJudging dailyJudging;
    private final List<DutySource> sources;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    BoardService(
            EntityManager entityManager,
            DailyJudging dailyJudging,
            List<DutySource> sources,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.dailyJudging = dailyJudging;
        this.sources = List.copyOf(sources);
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** How much is open, by kind and state. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public BoardCounts counts() {
        LocalDate today = LocalDate.now(clock);
        Map<TaskKind, Map<DueState, Integer>> tasks = new EnumMap<>(TaskKind.class);
        inScope()
                .forEach(
                        "f.kind, f.dueDate, count(*)",
                        "group by f.kind, f.dueDate",
                        tuple -> tasks.computeIfAbsent(
                                        tuple.get(0, TaskKind.class), kind -> new EnumMap<>(DueState.class))
                                .merge(
                                        DueState.of(Optional.ofNullable(tuple.get(1, LocalDate.class)), today),
                                        Math.toIntExact(tuple.get(2, Long.class)),
                                        Integer::sum));
        Map<String, Map<DueState, Integer>> byKind = new LinkedHashMap<>();
        tasks.forEach((kind, states) -> byKind.put(kind.word(), states));
        Map<String, Map<DueState, Integer>> duties = new TreeMap<>();
        for (BoardRow.OfDuty row : duties(BoardFilter.EVERYTHING)) {
            duties.computeIfAbsent(row.duty().kind(), kind -> new EnumMap<>(DueState.class))
                    .merge(row.state(), 1, Integer::sum);
        }
        byKind.putAll(duties);
        return new BoardCounts(today, byKind);
    }

    /** How much the filter lets through. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public int count(BoardFilter filter) {
        return filtered(filter).count() + duties(filter).size();
    }

    /** One page of what the filter lets through. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<BoardRow> find(BoardFilter filter, Order<BoardColumn> order, int offset, int limit) {
        List<BoardRow.OfDuty> duties = duties(filter);
        if (duties.isEmpty()) {
            return List.copyOf(tasks(filter, order, offset, limit));
        }
        return order.column() == BoardColumn.DUE_DATE
                ? byDueDate(filter, order, duties, offset, limit)
                : tasksFirst(filter, order, duties, offset, limit);
    }

    /** What came since yesterday. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public BoardNews news() {
        LocalDate today = LocalDate.now(clock);
        LocalDate yesterday = today.minusDays(1);
        int overdue = inScope().where("f.dueDate = ?", yesterday).count();
        int shifts = ListQuery.ofOwned(
                        entityManager,
                        "StoredDetermination d",
                        "Worker w on w.id = d.workerId",
                        "w.site",
                        currentUser.scope())
                .where("d.judgedAsOf >= ? and d.testDate > ?", yesterday, today.minusYears(1))
                .where("d.outcome in (?, ?)", Outcome.AWAITING_RETEST, Outcome.CONFIRMED)
                .all("count(distinct d.audiogramId)", "", tuple -> Math.toIntExact(tuple.get(0, Long.class)))
                .getFirst();
        return new BoardNews(yesterday, overdue, shifts);
    }

    /** Rows to be downloaded: these tasks, or all that the filter lets through where none are named. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public List<BoardRow> download(BoardFilter filter, Order<BoardColumn> order, Collection<TaskKey> chosen) {
        List<BoardRow> rows = chosen.isEmpty()
                ? find(filter, order, 0, Integer.MAX_VALUE)
                : List.copyOf(ofTasks(chosen).values());
        auditTrail.record(ReviewAction.BOARD_DOWNLOADED, "register", "", rows.size() + " rows");
        return rows;
    }

    /** Those of these tasks that are open and may be seen, in the order in which they were named. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public Map<TaskKey, BoardRow.OfTask> ofTasks(Collection<TaskKey> keys) {
        if (keys.isEmpty()) {
            return Map.of();
        }
        Set<TaskKey> asked = new HashSet<>(keys);
        Map<TaskKey, BoardRow.OfTask> found = new HashMap<>();
        // In order of the number, so that only these workers are looked up.
        List<String> numbers = asked.stream().map(TaskKey::workerId).distinct().toList();
        rows(inScope().where("w.workerId in ?", numbers), Order.ascending(BoardColumn.WORKER_ID), 0, Integer.MAX_VALUE)
                .stream()
                .filter(row -> asked.contains(row.key()))
                .forEach(row -> found.put(row.key(), row));
        Map<TaskKey, BoardRow.OfTask> inOrder = new LinkedHashMap<>();
        keys.forEach(key -> Optional.ofNullable(found.get(key)).ifPresent(row -> inOrder.put(key, row)));
        return inOrder;
    }

    /** All tasks that are open about a worker; none where the user may not see the worker. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<BoardRow.OfTask> ofWorker(String workerId) {
        return rows(
                inScope().where("w.workerId = ?", workerId),
                Order.ascending(BoardColumn.WORKER_ID),
                0,
                Integer.MAX_VALUE);
    }

    private List<BoardRow> tasksFirst(
            BoardFilter filter, Order<BoardColumn> order, List<BoardRow.OfDuty> duties, int offset, int limit) {
        List<BoardRow> page = new ArrayList<>(tasks(filter, order, offset, limit));
        int left = limit - page.size();
        if (left > 0) {
            int before = Math.max(0, offset - (page.isEmpty() ? filtered(filter).count() : offset));
            page.addAll(duties.subList(
                    Math.min(before, duties.size()), (int) Math.min((long) before + left, duties.size())));
        }
        return page;
    }

    /** Where each duty stands among the tasks follows from how many tasks are due before it. */
    private List<BoardRow> byDueDate(
            BoardFilter filter, Order<BoardColumn> order, List<BoardRow.OfDuty> duties, int offset, int limit) {
        Map<Optional<LocalDate>, Integer> tasksByDay = new HashMap<>();
        filtered(filter)
                .forEach(
                        "f.dueDate, count(*)",
                        "group by f.dueDate",
                        tuple -> tasksByDay.put(
                                Optional.ofNullable(tuple.get(0, LocalDate.class)),
                                Math.toIntExact(tuple.get(1, Long.class))));
        List<BoardRow.OfDuty> inOrder = order.descending() ? duties.reversed() : duties;
        TreeMap<Integer, BoardRow.OfDuty> places = new TreeMap<>();
        for (int i = 0; i < inOrder.size(); i++) {
            LocalDate due = inOrder.get(i).duty().due();
            int before = tasksByDay.entrySet().stream()
                    .filter(day -> day.getKey()
                            .map(one -> order.descending() ? one.isAfter(due) : !one.isAfter(due))
                            .orElse(order.descending()))
                    .mapToInt(Map.Entry::getValue)
                    .sum();
            places.put(before + i, inOrder.get(i));
        }
        int end = (int) Math.min((long) offset + limit, Integer.MAX_VALUE);
        Map<Integer, BoardRow.OfDuty> here = places.subMap(offset, end);
        List<BoardRow.OfTask> tasks =
                tasks(filter, order, offset - places.headMap(offset).size(), limit - here.size());
        List<BoardRow> page = new ArrayList<>(tasks);
        here.forEach((place, duty) -> page.add(Math.min(place - offset, page.size()), duty));
        return page;
    }

    private List<BoardRow.OfTask> tasks(BoardFilter filter, Order<BoardColumn> order, int offset, int limit) {
        return limit <= 0 ? List.of() : rows(filtered(filter), order, offset, limit);
    }

    private List<BoardRow.OfTask> rows(ListQuery query, Order<BoardColumn> order, int offset, int limit) {
        LocalDate today = LocalDate.now(clock);
        record Found(Tuple tuple, Optional<Long> postponement) {}
        List<Found> found = query.page(
                "w.workerId, w.familyName, w.givenName, w.site, w.department, f.kind, f.dueDate, f.openSince,"
                        + " f.testDate, f.ears, f.basis, f.postponementId, f.postponedUntil, f.booked",
                List.of(order.column().path(), "f.dueDate", "f.id"),
                order.descending(),
                offset,
                limit,
                tuple -> new Found(
                        tuple, Optional.ofNullable(tuple.get(11, Long.class)).filter(key -> {
                            LocalDate until = tuple.get(12, LocalDate.class);
                            return until != null && until.isAfter(today);
                        })));
        Map<Long, Postponement> postponed = postponements(
                found.stream().flatMap(row -> row.postponement().stream()).toList());
        return found.stream()
                .map(row -> row(
                        row.tuple(), row.postponement().flatMap(key -> Optional.ofNullable(postponed.get(key))), today))
                .toList();
    }

    private Map<Long, Postponement> postponements(List<Long> keys) {
        return keys.isEmpty()
                ? Map.of()
                : entityManager
                        .createQuery("from StoredPostponement p where p.id in :keys", StoredPostponement.class)
                        .setParameter("keys", keys)
                        .getResultStream()
                        .collect(Collectors.toMap(StoredPostponement::key, row -> row.toPostponement(clock)));
    }

    private static BoardRow.OfTask row(Tuple tuple, Optional<Postponement> postponed, LocalDate today) {
        return new BoardRow.OfTask(
                new TaskKey(
                        tuple.get(0, String.class),
                        tuple.get(5, TaskKind.class),
                        tuple.get(8, LocalDate.class),
                        tuple.get(9, Ears.class)),
                tuple.get(1, String.class),
                tuple.get(2, String.class),
                tuple.get(3, String.class),
                tuple.get(4, String.class),
                Optional.ofNullable(tuple.get(6, LocalDate.class)),
                tuple.get(7, LocalDate.class),
                tuple.get(10, String.class),
                tuple.get(13, String.class),
                postponed,
                today);
    }

    private ListQuery inScope() {
        dailyJudging.bringUpToDate();
        return ListQuery.ofOwned(
                entityManager, "StoredTask f", "Worker w on w.id = f.workerId", "w.site", currentUser.scope());
    }

    private ListQuery filtered(BoardFilter filter) {
        LocalDate today = LocalDate.now(clock);
        ListQuery query = inScope().whereMatches("w.search", filter.text());
        filter.kind()
                .ifPresent(word -> taskKind(word)
                        .ifPresentOrElse(kind -> query.where("f.kind = ?", kind), () -> query.where("1 = 0")));
        filter.who()
                .ifPresent(who -> query.where(
                        "f.kind in ?",
                        Arrays.stream(TaskKind.values())
                                .filter(kind -> kind.doer() == who)
                                .toList()));
        filter.state().ifPresent(state -> {
            if (state == DueState.WITHOUT_DATE) {
                query.where("f.dueDate is null");
            } else {
                query.where("f.dueDate between ? and ?", state.firstDueDate(today), state.lastDueDate(today));
            }
        });
        filter.from().ifPresent(day -> query.where("f.dueDate >= ?", day));
        filter.to().ifPresent(day -> query.where("f.dueDate <= ?", day));
        filter.postponed().ifPresent(which -> {
            switch (which) {
                case POSTPONED -> query.where("f.postponedUntil > ?", today);
                case NOT_POSTPONED -> query.where("(f.postponedUntil is null or f.postponedUntil <= ?)", today);
            }
        });
        filter.site().ifPresent(site -> query.where("w.site = ?", site));
        filter.department().ifPresent(department -> query.where("w.department = ?", department));
        return query;
    }

    private static Optional<TaskKind> taskKind(String word) {
        return Arrays.stream(TaskKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst();
    }

    /** The duties of other features that the filter lets through, in order of their due dates. */
    private List<BoardRow.OfDuty> duties(BoardFilter filter) {
        if (filter.kind().flatMap(BoardService::taskKind).isPresent()
                || filter.department().isPresent()
                || filter.who().isPresent()
                || filter.postponed()
                        .filter(BoardFilter.Postponed.POSTPONED::equals)
                        .isPresent()
                || filter.state().filter(DueState.WITHOUT_DATE::equals).isPresent()) {
            return List.of();
        }
        LocalDate today = LocalDate.now(clock);
        LocalDate until = today.plusDays(DAYS_AHEAD);
        LocalDate last = filter.to().filter(day -> day.isAfter(until)).orElse(until);
        return sources.stream()
                .flatMap(source -> source.open(currentUser.scope(), today, last).stream())
                .filter(duty -> filter.kind().map(duty.kind()::equals).orElse(true))
                .filter(duty -> filter.site().map(duty.site()::equals).orElse(true))
                .filter(duty ->
                        filter.from().map(day -> !duty.due().isBefore(day)).orElse(true))
                .filter(duty -> filter.to().map(day -> !duty.due().isAfter(day)).orElse(true))
                .filter(duty -> SearchText.matches(nameOf(duty), filter.text()))
                .map(duty -> new BoardRow.OfDuty(duty, today))
                .filter(row -> filter.state().map(row.state()::equals).orElse(true))
                .sorted(BY_DUE_DATE)
                .toList();
    }

    private static String nameOf(OpenDuty duty) {
        return switch (duty.subject()) {
            case OpenDuty.Subject.OfWorker(var number, var name) -> name + " " + number;
            case OpenDuty.Subject.OfThing(var name) -> name;
        };
    }
}
