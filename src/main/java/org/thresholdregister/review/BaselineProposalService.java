package org.thresholdregister.review;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Clock;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.baseline.BaselineChange;
import org.thresholdregister.core.judging.ProposalCase;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.ProposalResult.Objection;
import org.thresholdregister.roster.WorkerStore;

/**
 * The baseline revisions that wait for a professional, within the sites that the signed-in user may see, and what the
 * professional answers: 29 CFR 1910.95(g)(9).
 */
@Service
public class BaselineProposalService {

    /** The most characters of a professional's name; the profession is added to it. */
    public static final int LONGEST_NAME = DecisionService.LONGEST_BY - 20;

    private final EntityManager entityManager;
    private final DailyJudging dailyJudging;
    private final WorkerStore workers;
    private final WorkerRecordService records;
    private final DecisionService decisions;
    private final CurrentUser currentUser;
    private final Clock clock;

    BaselineProposalService(
            EntityManager entityManager,
            DailyJudging dailyJudging,
            WorkerStore workers,
            WorkerRecordService records,
            DecisionService decisions,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.dailyJudging = dailyJudging;
        this.workers = workers;
        this.records = records;
        this.decisions = decisions;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** One page of the proposals that the filter lets through. */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<ProposalRow> find(ProposalFilter filter, Order<ProposalColumn> order, int offset, int limit) {
        LocalDate today = LocalDate.now(clock);
        return filtered(filter)
                .page(
                        "w.workerId, w.familyName, w.givenName, w.site, w.department, p.ear, p.kind, p.fromDate,"
                                + " p.toDate, p.firstTestDate, p.secondTestDate",
                        List.of(order.column().path(), "p.secondTestDate", "p.id"),
                        order.descending(),
                        offset,
                        limit,
                        tuple -> row(tuple, today));
    }

    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public int count(ProposalFilter filter) {
        return filtered(filter).count();
    }

    /**
     * The open proposal for this ear of the worker with this number; empty where there is none, or the user may not
     * see the worker. That the worker's record was opened goes on the audit trail.
     */
    @PreAuthorize(Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public Optional<OpenedProposal> open(String workerId, Ear ear) {
        return records.open(workerId)
                .flatMap(record -> openProposal(record, ear)
                        .map(about -> new OpenedProposal(record, about, currentUser.role() == Role.SAFETY_OFFICER)));
    }

    /** What taking down this answer would change, in sentences; nothing is stored. */
    @PreAuthorize(Roles.HAS_SAFETY_OFFICER)
    @Transactional(readOnly = true)
    public List<String> outlook(String workerId, ProposalAnswer answer) {
        return workers.find(workerId, currentUser.scope())
                .map(records::judged)
                .flatMap(record -> openProposal(record, answer.ear())
                        .map(about -> ProposalOutlook.of(record, about, answer.decision())))
                .orElse(List.of());
    }

    /** Takes down the professional's answer and judges the worker anew. */
    @PreAuthorize(Roles.HAS_SAFETY_OFFICER)
    @Transactional
    public ProposalResult answer(String workerId, ProposalAnswer answer) {
        Optional<BaselineChange> proposal = workers.find(workerId, currentUser.scope())
                .map(records::judged)
                .flatMap(record -> openProposal(record, answer.ear()))
                .map(ProposalCase::proposal)
                .filter(open -> open.to().date().equals(answer.to()));
        if (proposal.isEmpty()) {
            return new ProposalResult.Refused(Objection.NO_SUCH_PROPOSAL);
        }
        Optional<Objection> objection = objection(proposal.get(), answer);
        if (objection.isPresent()) {
            return new ProposalResult.Refused(objection.get());
        }
        if (decisions.enter(workerId, answer.decision()) instanceof DecisionResult.Recorded) {
            return new ProposalResult.Answered();
        }
        throw new IllegalStateException("an answer that nothing objects to was not taken down");
    }

    private Optional<Objection> objection(BaselineChange proposal, ProposalAnswer answer) {
        if (answer.name().isBlank() || answer.profession().isEmpty()) {
            return Optional.of(Objection.PROFESSIONAL_MISSING);
        }
        if (answer.reason().isBlank()) {
            return Optional.of(Objection.REASON_MISSING);
        }
        if (answer.decidedOn().isBefore(proposal.after().date())) {
            return Optional.of(Objection.BEFORE_THE_EVIDENCE);
        }
        if (answer.decidedOn().isAfter(LocalDate.now(clock))) {
            return Optional.of(Objection.IN_THE_FUTURE);
        }
        return answer.name().length() > LONGEST_NAME || answer.reason().length() > DecisionService.LONGEST_REASON
                ? Optional.of(Objection.TEXT_TOO_LONG)
                : Optional.empty();
    }

    private static Optional<ProposalCase> openProposal(WorkerRecord record, Ear ear) {
        return ProposalCase.open(record.history(), record.options(), ear);
    }

    private ListQuery filtered(ProposalFilter filter) {
        dailyJudging.bringUpToDate();
        ListQuery query = ListQuery.ofOwned(
                        entityManager,
                        "StoredProposal p",
                        "Worker w on w.id = p.workerId",
                        "w.site",
                        currentUser.scope())
                .whereMatches("w.search", filter.text());
        filter.kind().ifPresent(kind -> query.where("p.kind = ?", kind));
        filter.site().ifPresent(site -> query.where("w.site = ?", site));
        filter.department().ifPresent(department -> query.where("w.department = ?", department));
        return query;
    }

    private static ProposalRow row(Tuple tuple, LocalDate today) {
        LocalDate secondTest = tuple.get(10, LocalDate.class);
        return new ProposalRow(
                tuple.get(0, String.class),
                tuple.get(1, String.class),
                tuple.get(2, String.class),
                tuple.get(3, String.class),
                tuple.get(4, String.class),
                tuple.get(5, Ear.class),
                tuple.get(6, BaselineChange.Kind.class),
                tuple.get(7, LocalDate.class),
                tuple.get(8, LocalDate.class),
                tuple.get(9, LocalDate.class),
                secondTest,
                ChronoUnit.DAYS.between(secondTest, today));
    }
}
