package org.thresholdregister.clinical;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.clinical.ClinicalResult.Kept;
import org.thresholdregister.clinical.ClinicalResult.Reason;
import org.thresholdregister.clinical.ClinicalResult.Refused;
import org.thresholdregister.core.clinical.CanalFinding;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.clinical.EarLook;
import org.thresholdregister.core.clinical.Reply;
import org.thresholdregister.core.wording.ClinicalWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.documents.DocumentStore;
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.pdf.PdfRenderer;
import org.thresholdregister.platform.pdf.PrintedDocument;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.security.SignedInUser;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.roster.WorkerStore;

/** The clinical part of the record, which a nurse enters and reads, and nobody else. */
@Service
@PreAuthorize(Roles.HAS_NURSE)
@Transactional
public class ClinicalService {

    /** The most characters of a reason. */
    public static final int LONGEST_REASON = 2000;

    private final WorkerStore workers;
    private final ClinicalStore clinical;
    private final DocumentStore documents;
    private final PdfRenderer renderer;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final EntityManager entityManager;
    private final Clock clock;

    ClinicalService(
            WorkerStore workers,
            ClinicalStore clinical,
            DocumentStore documents,
            PdfRenderer renderer,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            EntityManager entityManager,
            Clock clock) {
        this.workers = workers;
        this.clinical = clinical;
        this.documents = documents;
        this.renderer = renderer;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.entityManager = entityManager;
        this.clock = clock;
    }

    /** The clinical part of the worker with this number; empty also for a worker of a site that the user may not see. */
    @Transactional(readOnly = true)
    public Optional<ClinicalRecord> of(String workerId) {
        return find(workerId)
                .map(worker -> new ClinicalRecord(today(), clinical.entries(worker.key()), refusals(worker.key())));
    }

    /** Who a form is about, for its heading. */
    @Transactional(readOnly = true)
    public Optional<WorkerDetails> worker(String workerId) {
        return find(workerId).map(StoredWorker::details);
    }

    /**
     * Keeps the clinical part as of a day. Where one of that day is in force it is replaced, which needs a reason.
     *
     * @param reason why the day's entry is replaced; empty for a first one
     */
    public ClinicalResult enter(String workerId, LocalDate day, ClinicalFacts facts, String reason) {
        Optional<StoredWorker> worker = find(workerId);
        if (worker.isEmpty()) {
            return new Refused(Reason.UNKNOWN_WORKER);
        }
        Optional<Reason> objection = objection(facts, reason);
        if (objection.isPresent()) {
            return new Refused(objection.get());
        }
        if (facts.isEmpty()) {
            return new Refused(Reason.NOTHING_ENTERED);
        }
        if (day.isAfter(today())) {
            return new Refused(Reason.IN_THE_FUTURE);
        }
        boolean replaces = clinical.on(worker.get().key(), day).isPresent();
        if (replaces && reason.isBlank()) {
            return new Refused(Reason.REASON_MISSING);
        }
        clinical.keep(worker.get().key(), day, facts, reason, currentUser.username());
        auditTrail.record(
                replaces ? ClinicalAction.CLINICAL_ENTRY_REPLACED : ClinicalAction.CLINICAL_ENTRY_MADE,
                "worker",
                workerId,
                "as of " + day);
        return new Kept();
    }

    private static Optional<Reason> objection(ClinicalFacts facts, String reason) {
        List<EarLook> looks = List.of(facts.ears().left(), facts.ears().right());
        boolean tooLong = reason.length() > LONGEST_REASON
                || facts.said().length() > ClinicalFacts.LONGEST_SAID
                || looks.stream().anyMatch(look -> look.note().length() > EarLook.LONGEST_NOTE)
                || facts.history().replies().values().stream()
                        .anyMatch(reply -> reply.note().length() > Reply.LONGEST_NOTE);
        if (tooLong) {
            return Optional.of(Reason.TEXT_TOO_LONG);
        }
        if (looks.stream().anyMatch(EarLook::contradictsItself)) {
            return Optional.of(Reason.CLEAR_AND_MORE);
        }
        return looks.stream()
                        .anyMatch(look -> look.findings().contains(CanalFinding.OTHER)
                                && look.note().isBlank())
                ? Optional.of(Reason.OTHER_WITHOUT_NOTE)
                : Optional.empty();
    }

    /** What was typed beside a test that is not signed yet; empty where nothing was. */
    @Transactional(readOnly = true)
    public Optional<ClinicalFacts> draft(String workerId, long draftKey) {
        return find(workerId)
                .flatMap(worker -> Optional.ofNullable(entityManager.find(StoredClinicalDraft.class, draftKey))
                        .filter(draft -> draft.workerKey() == worker.key()))
                .map(StoredClinicalDraft::facts);
    }

    /** Keeps what is typed beside a test; it counts as an entry of the test's day once the test is signed. */
    public ClinicalResult keepDraft(String workerId, long draftKey, ClinicalFacts facts) {
        Optional<StoredWorker> worker = find(workerId);
        if (worker.isEmpty()) {
            return new Refused(Reason.UNKNOWN_WORKER);
        }
        StoredClinicalDraft onRecord = entityManager.find(StoredClinicalDraft.class, draftKey);
        if (onRecord != null && onRecord.workerKey() != worker.get().key()) {
            return new Refused(Reason.UNKNOWN_WORKER);
        }
        Optional<Reason> objection = objection(facts, "");
        if (objection.isPresent()) {
            return new Refused(objection.get());
        }
        entityManager.merge(
                new StoredClinicalDraft(draftKey, worker.get().key(), facts, currentUser.username(), clock.instant()));
        return new Kept();
    }

    /**
     * Takes down that the worker did not want to be tested.
     *
     * @param reason in the worker's words; never empty
     * @param signedSheet the form with the signature, where there is one
     */
    public ClinicalResult refuse(String workerId, LocalDate day, String reason, Optional<NewDocument> signedSheet) {
        Optional<StoredWorker> worker = find(workerId);
        if (worker.isEmpty()) {
            return new Refused(Reason.UNKNOWN_WORKER);
        }
        if (reason.isBlank()) {
            return new Refused(Reason.REASON_MISSING);
        }
        if (reason.length() > LONGEST_REASON) {
            return new Refused(Reason.TEXT_TOO_LONG);
        }
        if (day.isAfter(today())) {
            return new Refused(Reason.IN_THE_FUTURE);
        }
        entityManager.persist(new StoredTestRefusal(
                worker.get().key(),
                day,
                reason,
                signedSheet.map(documents::add).orElse(null),
                currentUser.username(),
                clock.instant()));
        auditTrail.record(ClinicalAction.REFUSAL_ENTERED, "worker", workerId, "as of " + day);
        return new Kept();
    }

    /** Takes a refusal back that was entered by mistake; it stays readable. */
    public ClinicalResult takeBackRefusal(String workerId, long refusalKey, String reason) {
        Optional<StoredWorker> worker = find(workerId);
        if (worker.isEmpty()) {
            return new Refused(Reason.UNKNOWN_WORKER);
        }
        if (reason.isBlank()) {
            return new Refused(Reason.REASON_MISSING);
        }
        if (reason.length() > LONGEST_REASON) {
            return new Refused(Reason.TEXT_TOO_LONG);
        }
        List<StoredTestRefusal> rows = refusalRows(worker.get().key());
        boolean alreadyTakenBack = rows.stream().anyMatch(row -> row.takesBack().equals(Optional.of(refusalKey)));
        Optional<StoredTestRefusal> refusal = rows.stream()
                .filter(row -> row.key() == refusalKey && row.takesBack().isEmpty() && !alreadyTakenBack)
                .findFirst();
        if (refusal.isEmpty()) {
            return new Refused(Reason.NO_SUCH_REFUSAL);
        }
        entityManager.persist(
                StoredTestRefusal.takingBack(refusal.get(), reason, currentUser.username(), clock.instant()));
        auditTrail.record(
                ClinicalAction.REFUSAL_TAKEN_BACK,
                "worker",
                workerId,
                "as of " + refusal.get().day());
        return new Kept();
    }

    /** The form on which the worker signs that the test is not wanted, as a PDF; empty for a worker of another site. */
    @Transactional(readOnly = true)
    public Optional<byte[]> refusalForm(String workerId) {
        return find(workerId).map(StoredWorker::details).map(worker -> {
            String name = (worker.givenName() + " " + worker.familyName()).strip();
            String printedBy = currentUser.find().map(SignedInUser::displayName).orElse("");
            return renderer.render(new PrintedDocument(
                    "org/thresholdregister/clinical/refusal-form",
                    Map.of(
                            "heading", ClinicalWords.REFUSAL_HEADING,
                            "who", ClinicalWords.refusalFor(name, workerId),
                            "sentences", ClinicalWords.REFUSAL_SENTENCES),
                    ClinicalWords.REFUSAL_HEADING,
                    "Health record. " + (worker.site().isEmpty() ? "" : worker.site() + ". ") + "Printed "
                            + Words.day(today()) + " by " + printedBy + ".",
                    clock.instant()));
        });
    }

    /** The signed sheet of a refusal; empty where there is none that the user may see. */
    public Optional<byte[]> signedSheet(String workerId, long refusalKey) {
        Optional<Long> document = find(workerId)
                .flatMap(worker -> refusalRows(worker.key()).stream()
                        .filter(row -> row.key() == refusalKey)
                        .findFirst())
                .flatMap(StoredTestRefusal::document);
        document.ifPresent(
                key -> auditTrail.record(ClinicalAction.REFUSAL_SHEET_FETCHED, "worker", workerId, "document " + key));
        return document.map(documents::content);
    }

    private List<Refusal> refusals(long workerKey) {
        List<StoredTestRefusal> rows = refusalRows(workerKey);
        Map<Long, String> takenBack = rows.stream()
                .filter(row -> row.takesBack().isPresent())
                .collect(Collectors.toMap(row -> row.takesBack().orElseThrow(), StoredTestRefusal::reason));
        return rows.stream()
                .filter(row -> row.takesBack().isEmpty())
                .sorted(Comparator.comparing(StoredTestRefusal::day)
                        .thenComparing(StoredTestRefusal::key)
                        .reversed())
                .map(row -> row.toRefusal(
                        row.document().flatMap(documents::find), Optional.ofNullable(takenBack.get(row.key()))))
                .toList();
    }

    private List<StoredTestRefusal> refusalRows(long workerKey) {
        return entityManager
                .createQuery(
                        "select r from StoredTestRefusal r where r.workerId = :key order by r.id",
                        StoredTestRefusal.class)
                .setParameter("key", workerKey)
                .getResultList();
    }

    private Optional<StoredWorker> find(String workerId) {
        return workers.find(workerId, currentUser.scope());
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
