package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.validity.FlagCount;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.RegisterRules.OfToday;
import org.thresholdregister.roster.WorkerStore;

/**
 * The shifts of a year, ear by ear, within the sites that the signed-in user may see: tests that show a standard
 * threshold shift themselves, those that a retest confirmed, and those that show none from a revised baseline but are,
 * or may become, a case from the recording reference. Retests stand with the test that they answer.
 */
@Service
@Transactional(readOnly = true)
public class ShiftReviewService {

    private final EntityManager entityManager;
    private final DailyJudging dailyJudging;
    private final WorkerStore workers;
    private final HistoryStore histories;
    private final RegisterRules rules;
    private final ShiftDoubts doubts;
    private final ShiftActsFinder actsOfShifts;
    private final CurrentUser currentUser;

    ShiftReviewService(
            EntityManager entityManager,
            DailyJudging dailyJudging,
            WorkerStore workers,
            HistoryStore histories,
            RegisterRules rules,
            ShiftDoubts doubts,
            ShiftActsFinder actsOfShifts,
            CurrentUser currentUser) {
        this.entityManager = entityManager;
        this.dailyJudging = dailyJudging;
        this.workers = workers;
        this.histories = histories;
        this.rules = rules;
        this.doubts = doubts;
        this.actsOfShifts = actsOfShifts;
        this.currentUser = currentUser;
    }

    /** One page of the shifts that the filter lets through. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<ShiftRow> find(ShiftFilter filter, Order<ShiftColumn> order, int offset, int limit) {
        List<ShiftRow> rows = filtered(filter)
                .page(
                        "w.workerId, w.familyName, w.givenName, w.site, w.department, d.testDate, d.purpose, d.ear,"
                                + " d.baselineDate, d.shiftSum, d.sts, d.levelSum, d.outcome, d.recordable, d.retestBy,"
                                + " d.notifyBy, d.recordBy, d.settledOn",
                        List.of(order.column().path(), "d.testDate", "d.id"),
                        order.descending(),
                        offset,
                        limit,
                        ShiftReviewService::row);
        Map<String, JudgedWorker> judged = judged(rows);
        return actsOfShifts.addedTo(doubts.countedOn(rows, judged), judged);
    }

    /** The workers of a page, by number; only their histories are read, and each is judged once. */
    private Map<String, JudgedWorker> judged(List<ShiftRow> rows) {
        if (rows.isEmpty()) {
            return Map.of();
        }
        OfToday today = rules.today();
        List<String> workerIds =
                rows.stream().map(ShiftRow::workerId).distinct().toList();
        return histories.of(workers.withNumbers(workerIds)).stream()
                .map(today::judged)
                .collect(Collectors.toMap(
                        worker -> worker.stored().worker().details().workerId(), worker -> worker));
    }

    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public int count(ShiftFilter filter) {
        return filtered(filter).count();
    }

    /** How many of the shifts that the filter lets through there are, by outcome and recordability. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public ShiftCounts counts(ShiftFilter filter) {
        return new ShiftCounts(filtered(filter)
                .all(
                        "d.outcome, d.recordable, count(*)",
                        "group by d.outcome, d.recordable",
                        tuple -> new ShiftCounts.Group(
                                tuple.get(0, Outcome.class),
                                tuple.get(1, Recordability.class),
                                Math.toIntExact(tuple.get(2, Long.class)))));
    }

    /** The years from the last that has tests back to the first; none where there are no tests. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    public List<Integer> years() {
        return inScope().all("year(max(d.testDate)), year(min(d.testDate))", "", tuple -> tuple).stream()
                .filter(tuple -> tuple.get(0) != null)
                .flatMap(tuple -> Stream.iterate(
                        tuple.get(0, Integer.class), year -> year >= tuple.get(1, Integer.class), year -> year - 1))
                .toList();
    }

    private ListQuery inScope() {
        dailyJudging.bringUpToDate();
        return ListQuery.ofOwned(
                entityManager, "StoredDetermination d", "Worker w on w.id = d.workerId", "w.site", currentUser.scope());
    }

    private ListQuery filtered(ShiftFilter filter) {
        ListQuery query = inScope()
                .whereMatches("w.search", filter.text())
                .where(
                        "d.testDate between ? and ?",
                        LocalDate.of(filter.year(), 1, 1),
                        LocalDate.of(filter.year(), 12, 31))
                .where("d.outcome <> ?", Outcome.RETEST)
                .where(
                        "(d.sts = ? or d.outcome = ? or d.recordable in (?, ?))",
                        Answer.YES,
                        Outcome.CONFIRMED,
                        Recordability.YES,
                        Recordability.AWAITING_RETEST);
        filter.site().ifPresent(site -> query.where("w.site = ?", site));
        filter.department().ifPresent(department -> query.where("w.department = ?", department));
        filter.outcome().ifPresent(outcome -> query.where("d.outcome = ?", outcome));
        filter.recordable().ifPresent(recordable -> query.where("d.recordable = ?", recordable));
        return query;
    }

    private static ShiftRow row(Tuple tuple) {
        return new ShiftRow(
                tuple.get(0, String.class),
                tuple.get(1, String.class),
                tuple.get(2, String.class),
                tuple.get(3, String.class),
                tuple.get(4, String.class),
                tuple.get(5, LocalDate.class),
                tuple.get(6, TestPurpose.class),
                tuple.get(7, Ear.class),
                tuple.get(8, LocalDate.class),
                optional(tuple.get(9, Integer.class)),
                tuple.get(10, Answer.class),
                optional(tuple.get(11, Integer.class)),
                tuple.get(12, Outcome.class),
                tuple.get(13, Recordability.class),
                Optional.ofNullable(tuple.get(14, LocalDate.class)),
                Optional.ofNullable(tuple.get(15, LocalDate.class)),
                Optional.ofNullable(tuple.get(16, LocalDate.class)),
                Optional.ofNullable(tuple.get(17, LocalDate.class)),
                FlagCount.NONE,
                ShiftActs.NONE);
    }

    private static OptionalInt optional(@Nullable Integer number) {
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }
}
