package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.summary.CountedTest;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;

/**
 * What the engine found, for counting. It checks no role: the service that calls it does, and screens never call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class DeterminationStore {

    /** The state of all that was found at one moment. */
    public record Stamp(long latestKey, long number) {}

    private final EntityManager entityManager;
    private final DailyJudging dailyJudging;

    DeterminationStore(EntityManager entityManager, DailyJudging dailyJudging) {
        this.entityManager = entityManager;
        this.dailyJudging = dailyJudging;
    }

    /** The years in which workers of the scope were tested, latest first. */
    public List<Integer> years(SiteScope scope) {
        return inScope(scope).all("distinct year(d.testDate)", "order by 1 desc", tuple -> tuple.get(0, Integer.class));
    }

    /** Tells one state of all that was found from another: whoever is judged anew gets new keys. */
    public Stamp stamp() {
        dailyJudging.bringUpToDate();
        return entityManager
                .createQuery("select coalesce(max(d.id), 0), count(*) from StoredDetermination d", Tuple.class)
                .getResultStream()
                .map(tuple -> new Stamp(tuple.get(0, Long.class), tuple.get(1, Long.class)))
                .findFirst()
                .orElseThrow();
    }

    /** Hands over what was found in this year about each worker of the scope, worker by worker. */
    public void forEachWorker(SiteScope scope, int year, BiConsumer<Group, List<CountedTest>> action) {
        Workers workers = new Workers(action);
        inScope(scope)
                .where("d.testDate between ? and ?", LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31))
                .forEach(
                        "d.workerId, w.site, w.department, d.testDate, d.purpose, d.outcome, d.sts, d.recordable",
                        "order by d.workerId",
                        workers::see);
        workers.finish();
    }

    private ListQuery inScope(SiteScope scope) {
        dailyJudging.bringUpToDate();
        return ListQuery.ofOwned(
                entityManager, "StoredDetermination d", "Worker w on w.id = d.workerId", "w.site", scope);
    }

    /** Gathers rows that come worker by worker. */
    private static final class Workers {
        private final BiConsumer<Group, List<CountedTest>> action;
        private final List<CountedTest> tests = new ArrayList<>();
        private Group group = Group.EVERYBODY;
        private @Nullable Long worker;

        Workers(BiConsumer<Group, List<CountedTest>> action) {
            this.action = action;
        }

        void see(Tuple row) {
            Long workerOfRow = row.get(0, Long.class);
            if (!workerOfRow.equals(worker)) {
                finish();
                worker = workerOfRow;
                group = Group.of(given(row.get(1, String.class)), given(row.get(2, String.class)));
            }
            tests.add(new CountedTest(
                    row.get(3, LocalDate.class),
                    row.get(4, TestPurpose.class),
                    row.get(5, Outcome.class),
                    Optional.ofNullable(row.get(6, Answer.class)),
                    Optional.ofNullable(row.get(7, Recordability.class))));
        }

        void finish() {
            if (!tests.isEmpty()) {
                action.accept(group, List.copyOf(tests));
                tests.clear();
            }
        }

        private static Optional<String> given(String text) {
            return Optional.of(text).filter(some -> !some.isEmpty());
        }
    }
}
