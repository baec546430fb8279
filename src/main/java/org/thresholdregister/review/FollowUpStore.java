package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;

/**
 * What is owed, for the services of other features. It checks no role: the service that calls it does, and screens never
 * call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class FollowUpStore {

    private static final Set<FollowUpKind> TESTS =
            EnumSet.of(FollowUpKind.RETEST, FollowUpKind.ANNUAL_TEST, FollowUpKind.BASELINE_TEST);

    /** How many things of a kind are due on a day. */
    public record DueOnDay(FollowUpKind kind, LocalDate day, int number) {}

    private final EntityManager entityManager;
    private final DailyJudging dailyJudging;

    FollowUpStore(EntityManager entityManager, DailyJudging dailyJudging) {
        this.entityManager = entityManager;
        this.dailyJudging = dailyJudging;
    }

    /** The tests owed to workers in the scope that are due no later than a day, in no order. */
    public List<OwedTest> tests(SiteScope scope, LocalDate dueBy) {
        return inScope(scope)
                .where("f.kind in (?)", TESTS)
                .where("f.dueDate <= ?", dueBy)
                .all(
                        "f.workerId, f.kind, f.dueDate, f.testDate, f.ears, w.enrolledFrom, f.ruleSet",
                        "",
                        FollowUpStore::owed);
    }

    /** The tests owed to one worker. */
    public List<OwedTest> testsOf(long workerKey) {
        return inScope(SiteScope.all())
                .where("f.kind in (?)", TESTS)
                .where("f.workerId = ?", workerKey)
                .all(
                        "f.workerId, f.kind, f.dueDate, f.testDate, f.ears, w.enrolledFrom, f.ruleSet",
                        "order by f.dueDate, f.id",
                        FollowUpStore::owed);
    }

    /** How much is due on each day from the first to the last, by day and kind. */
    public List<DueOnDay> countsByDay(SiteScope scope, LocalDate first, LocalDate last) {
        return inScope(scope)
                .where("f.dueDate between ? and ?", first, last)
                .all(
                        "f.kind, f.dueDate, count(*)",
                        "group by f.kind, f.dueDate order by f.dueDate, f.kind",
                        tuple -> new DueOnDay(
                                tuple.get(0, FollowUpKind.class),
                                tuple.get(1, LocalDate.class),
                                Math.toIntExact(tuple.get(2, Long.class))));
    }

    private ListQuery inScope(SiteScope scope) {
        dailyJudging.bringUpToDate();
        return ListQuery.ofOwned(entityManager, "StoredFollowUp f", "Worker w on w.id = f.workerId", "w.site", scope);
    }

    private static OwedTest owed(Tuple tuple) {
        return new OwedTest(
                tuple.get(0, Long.class),
                tuple.get(1, FollowUpKind.class),
                tuple.get(2, LocalDate.class),
                Optional.ofNullable(tuple.get(3, LocalDate.class)),
                tuple.get(4, Ears.class),
                Optional.ofNullable(tuple.get(5, LocalDate.class)),
                tuple.get(6, String.class));
    }
}
