package org.thresholdregister.employment;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.employment.Absence;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.WorkingLifeWords;
import org.thresholdregister.platform.duty.DutySource;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.duty.OpenDuty.Subject;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.platform.ui.Paths;

/**
 * What leaving, coming back and a sale call for. The baseline test on enrolment and the annual test are follow-ups, which
 * take their dates from the roster row.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class WorkingLifeDuties implements DutySource {

    /** How long after the last day a missing exit test stays on the list: a limit of our own. */
    private static final int DAYS_AFTER_THE_LAST = 30;

    private final EntityManager entityManager;
    private final LifeStore lives;
    private final SaleStore sales;

    WorkingLifeDuties(EntityManager entityManager, LifeStore lives, SaleStore sales) {
        this.entityManager = entityManager;
        this.lives = lives;
        this.sales = sales;
    }

    @Override
    public List<OpenDuty> open(SiteScope scope, LocalDate today, LocalDate until) {
        List<OpenDuty> open = new ArrayList<>();
        open.addAll(exitTests(scope, today, until));
        open.addAll(testsOnReturn(scope, until));
        open.addAll(recordsToSuccessors(scope, until));
        return open;
    }

    /** Those who leave were enrolled, do not go with a sold plant, and have no exit test of this employment. */
    private List<OpenDuty> exitTests(SiteScope scope, LocalDate today, LocalDate until) {
        return ListQuery.of(entityManager, "Worker w", "w.site", scope)
                .where("w.endDate between ? and ?", today.minusDays(DAYS_AFTER_THE_LAST), until)
                .where("w.enrolledFrom is not null")
                .where(
                        "not exists (select 1 from StoredAudiogram a where a.workerId = w.id and a.purpose = ?"
                                + " and (w.hireDate is null or a.testDate >= w.hireDate))",
                        TestPurpose.EXIT)
                .where(
                        "not exists (select 1 from StoredWorkEvent e where e.workerId = w.id and e.kind = ?"
                                + " and e.happenedOn = w.endDate)",
                        EventKind.SOLD)
                .all(
                        "w.workerId, w.givenName, w.familyName, w.site, w.endDate",
                        "",
                        row -> new OpenDuty(
                                "exit test",
                                worker(row.get(0, String.class), row.get(1, String.class), row.get(2, String.class)),
                                row.get(3, String.class),
                                row.get(4, LocalDate.class),
                                WorkingLifeWords.EXIT_TEST,
                                Paths.worker(row.get(0, String.class))));
    }

    private record AnnualTest(long worker, LocalDate due, Subject.OfWorker subject, String site) {}

    /** An annual test that fell due during a leave, and is still owed, on the first day back. */
    private List<OpenDuty> testsOnReturn(SiteScope scope, LocalDate until) {
        Map<Long, AnnualTest> owed = new LinkedHashMap<>();
        ListQuery.ofOwned(entityManager, "StoredFollowUp f", "Worker w on w.id = f.workerId", "w.site", scope)
                .where("f.kind = ? and f.dueDate <= ?", FollowUpKind.ANNUAL_TEST, until)
                .where(
                        "exists (select 1 from StoredWorkEvent e where e.workerId = f.workerId and e.kind = ?"
                                + " and e.happenedOn <= f.dueDate)",
                        EventKind.LEAVE_BEGAN)
                .all(
                        "f.workerId, f.dueDate, w.workerId, w.givenName, w.familyName, w.site",
                        "",
                        row -> new AnnualTest(
                                row.get(0, Long.class),
                                row.get(1, LocalDate.class),
                                worker(row.get(2, String.class), row.get(3, String.class), row.get(4, String.class)),
                                row.get(5, String.class)))
                .forEach(test -> owed.put(test.worker(), test));
        if (owed.isEmpty()) {
            return List.of();
        }
        List<OpenDuty> open = new ArrayList<>();
        lives.rows(owed.keySet()).forEach((worker, rows) -> {
            AnnualTest test = owed.get(worker);
            if (test != null) {
                firstDayBack(rows, test.due(), until)
                        .ifPresent(back -> open.add(new OpenDuty(
                                "annual test on return from leave",
                                test.subject(),
                                test.site(),
                                back,
                                WorkingLifeWords.TEST_ON_RETURN,
                                Paths.worker(test.subject().workerId()))));
            }
        });
        return open;
    }

    private static Optional<LocalDate> firstDayBack(List<StoredWorkEvent> rows, LocalDate due, LocalDate until) {
        return LifeStore.life(rows).absences(until).stream()
                .filter(absence -> absence.kind() == Absence.Kind.LEAVE && absence.includes(due))
                .flatMap(absence -> absence.firstDayBack().stream())
                .filter(back -> !back.isAfter(until))
                .findFirst();
    }

    private List<OpenDuty> recordsToSuccessors(SiteScope scope, LocalDate until) {
        return sales.sales(scope).stream()
                .filter(sale -> sale.handOver().isEmpty() && !sale.soldOn().isAfter(until) && sale.workers() > 0)
                .map(sale -> new OpenDuty(
                        "records to the successor",
                        new Subject.OfThing("records of " + Counted.of(sale.workers(), "worker", "workers") + " to "
                                + sale.successor()),
                        sale.site(),
                        sale.soldOn(),
                        WorkingLifeWords.TO_SUCCESSOR,
                        "sold-plant"))
                .toList();
    }

    private static Subject.OfWorker worker(String workerId, String given, String family) {
        String name = (given + " " + family).strip();
        return new Subject.OfWorker(workerId, name.isEmpty() ? workerId : name);
    }
}
