package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.comparing.Difference;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.core.summary.Count;
import org.thresholdregister.core.summary.CountedTest;
import org.thresholdregister.core.summary.Group;
import org.thresholdregister.core.summary.Measure;
import org.thresholdregister.core.summary.SummaryRow;
import org.thresholdregister.core.summary.YearSummary;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.RuleComparison.Counts;
import org.thresholdregister.review.RuleComparison.Row;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerStore;

/**
 * Asks what a year would look like under other rules: who differs, and why. It judges the records in view twice and
 * stores nothing.
 */
@Service
public class CompareService {

    private static final int WORKERS_AT_A_TIME = 500;

    private final EntityManager entityManager;
    private final WorkerStore workers;
    private final HistoryStore histories;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    CompareService(
            EntityManager entityManager,
            WorkerStore workers,
            HistoryStore histories,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.workers = workers;
        this.histories = histories;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /**
     * Judges the tests of a year in two ways, as of today. That it was done goes on the audit trail.
     *
     * @param site a site; empty for all that the user may see
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public RuleComparison compare(int year, Optional<String> site, Way one, Way other) {
        LocalDate today = LocalDate.now(clock);
        Tally tally = new Tally(year);
        List<Long> keys = testedIn(year, site);
        for (int from = 0; from < keys.size(); from += WORKERS_AT_A_TIME) {
            List<Long> some = keys.subList(from, Math.min(from + WORKERS_AT_A_TIME, keys.size()));
            histories.of(workers.withKeys(some)).stream()
                    .sorted(Comparator.comparing(
                            stored -> some.indexOf(stored.worker().key())))
                    .forEach(stored -> tally.add(
                            stored.worker().details(),
                            Judge.judge(stored.history(), one.options(today)),
                            Judge.judge(stored.history(), other.options(today))));
            entityManager.clear();
        }
        auditTrail.record(
                ReviewAction.RULES_COMPARED,
                "year",
                Integer.toString(year),
                one.word() + " beside " + other.word()
                        + site.map(name -> ", " + name).orElse(""));
        return new RuleComparison(
                year,
                site,
                one,
                other,
                tally.counts(),
                List.copyOf(tally.rows),
                tally.differing,
                tally.workers,
                keys.size(),
                Map.copyOf(tally.reasons));
    }

    private List<Long> testedIn(int year, Optional<String> site) {
        ListQuery tested = ListQuery.ofOwned(
                        entityManager,
                        "StoredDetermination d",
                        "Worker w on w.id = d.workerId",
                        "w.site",
                        currentUser.scope())
                .where("d.testDate between ? and ?", LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
        site.ifPresent(name -> tested.where("w.site = ?", name));
        return tested.all("distinct w.workerId, w.id", "order by w.workerId", tuple -> tuple.get(1, Long.class));
    }

    /** What is gathered worker by worker. */
    private static final class Tally {
        private final int year;
        private final YearSummary ofOne = new YearSummary();
        private final YearSummary ofOther = new YearSummary();
        private final List<Row> rows = new ArrayList<>();
        private final Map<Difference.Reason, Integer> reasons = new EnumMap<>(Difference.Reason.class);
        private int differing;
        private int workers;

        Tally(int year) {
            this.year = year;
        }

        void add(WorkerDetails worker, WorkerJudgement one, WorkerJudgement other) {
            ofOne.add(Group.EVERYBODY, counted(one));
            ofOther.add(Group.EVERYBODY, counted(other));
            List<Difference> differences = Difference.between(one, other).stream()
                    .filter(difference -> difference.test().date().getYear() == year)
                    .toList();
            workers += differences.isEmpty() ? 0 : 1;
            for (Difference difference : differences) {
                differing++;
                reasons.merge(difference.reason(), 1, Integer::sum);
                if (rows.size() < RuleComparison.ROWS_AT_MOST) {
                    rows.add(new Row(
                            worker.workerId(), worker.familyName(), worker.givenName(), worker.site(), difference));
                }
            }
        }

        private static List<CountedTest> counted(WorkerJudgement judgement) {
            return judgement.determinations().stream().map(CountedTest::of).toList();
        }

        Map<Measure, Counts> counts() {
            Map<Measure, Integer> countsOfOne = counts(ofOne);
            Map<Measure, Integer> countsOfOther = counts(ofOther);
            Map<Measure, Counts> counts = new EnumMap<>(Measure.class);
            for (Measure measure : Measure.values()) {
                counts.put(
                        measure,
                        new Counts(countsOfOne.getOrDefault(measure, 0), countsOfOther.getOrDefault(measure, 0)));
            }
            return counts;
        }

        private Map<Measure, Integer> counts(YearSummary summary) {
            Map<Measure, Integer> counts = new EnumMap<>(Measure.class);
            for (SummaryRow row : summary.rows()) {
                if (row.year() == year && row.count() instanceof Count.Number(int value)) {
                    counts.put(row.measure(), value);
                }
            }
            return counts;
        }
    }
}
