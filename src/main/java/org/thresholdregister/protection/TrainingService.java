package org.thresholdregister.protection;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.training.TrainingTopic;
import org.thresholdregister.core.wording.TrainingWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.documents.DocumentStore;
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.pdf.PdfRenderer;
import org.thresholdregister.platform.pdf.PrintedDocument;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.security.SignedInUser;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/** The yearly training: who is due, what was held, who took part, and the sheet to sign. */
@Service
@Transactional
public class TrainingService {

    private static final String WHO = Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER;

    private static final String SHEET = "org/thresholdregister/protection/attendance-sheet";

    private final EntityManager entityManager;
    private final TrainingBook book;
    private final WorkerStore workers;
    private final CaseActs caseActs;
    private final DocumentStore documents;
    private final PdfRenderer pdf;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    TrainingService(
            EntityManager entityManager,
            TrainingBook book,
            WorkerStore workers,
            CaseActs caseActs,
            DocumentStore documents,
            PdfRenderer pdf,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.entityManager = entityManager;
        this.book = book;
        this.workers = workers;
        this.caseActs = caseActs;
        this.documents = documents;
        this.pdf = pdf;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** Everybody to whom training is owed, sooner or later, whoever is due first in front. */
    @PreAuthorize(WHO)
    @Transactional(readOnly = true)
    public List<TrainingRow> due() {
        return book.due(currentUser.scope(), LocalDate.now(clock));
    }

    /** Those who may be on a sheet of this site and, where given, this department: everyone employed there, by name. */
    @PreAuthorize(WHO)
    @Transactional(readOnly = true)
    public List<Person> people(String site, Optional<String> department) {
        return PersonRow.employed(entityManager, currentUser.scope(), LocalDate.now(clock)).stream()
                .filter(person -> person.site().equals(site))
                .filter(person -> department
                        .filter(some -> !some.equals(person.department()))
                        .isEmpty())
                .map(person -> new Person(person.workerId(), person.name(), person.department()))
                .toList();
    }

    /** Somebody who may take part. */
    public record Person(String workerId, String name, String department) {}

    /** The trainings at the user's sites, the latest first. */
    @PreAuthorize(WHO)
    @Transactional(readOnly = true)
    public List<TrainingSession> sessions() {
        return book.sessions(currentUser.scope());
    }

    @PreAuthorize(WHO)
    @Transactional(readOnly = true)
    public Optional<TrainingSession> session(long key) {
        return book.find(key, currentUser.scope());
    }

    /** Takes down a training and who took part; cases that owe training move on. */
    @PreAuthorize(WHO)
    public TrainingResult add(NewSession session, Collection<String> workerIds) {
        Optional<ProtectionProblem> problem = objectionTo(session);
        if (problem.isPresent()) {
            return new TrainingResult.NotEntered(problem.get());
        }
        List<StoredWorker> present = inScope(workerIds, session.site());
        if (present.size() < Set.copyOf(workerIds).size()) {
            return new TrainingResult.NotEntered(ProtectionProblem.UNKNOWN_WORKER);
        }
        var stored = new StoredSession(session, currentUser.username(), clock.instant());
        entityManager.persist(stored);
        auditTrail.record(
                ProtectionAction.TRAINING_ENTERED,
                "training",
                Long.toString(stored.key()),
                "of " + session.heldOn() + ", " + session.topics().size() + " topics");
        return new TrainingResult.Entered(stored.key(), attend(stored, present));
    }

    private Optional<ProtectionProblem> objectionTo(NewSession session) {
        if (!currentUser.scope().includes(session.site().isEmpty() ? null : session.site())) {
            return Optional.of(ProtectionProblem.SITE_NOT_OPEN);
        }
        if (session.heldOn().isAfter(LocalDate.now(clock))) {
            return Optional.of(ProtectionProblem.IN_THE_FUTURE);
        }
        if (session.topics().isEmpty()) {
            return Optional.of(ProtectionProblem.TOPICS_MISSING);
        }
        if (session.trainer().isBlank()) {
            return Optional.of(ProtectionProblem.TRAINER_MISSING);
        }
        if (session.minutes() < 1 || session.minutes() > NewSession.MOST_MINUTES) {
            return Optional.of(ProtectionProblem.MINUTES_OUT_OF_RANGE);
        }
        return session.trainer().length() > NewSession.LONGEST_TRAINER
                        || session.materials().length() > NewSession.LONGEST_MATERIALS
                        || session.language().length() > NewSession.LONGEST_LANGUAGE
                ? Optional.of(ProtectionProblem.TEXT_TOO_LONG)
                : Optional.empty();
    }

    /** Those of the workers that the user may see and that belong to the site. */
    private List<StoredWorker> inScope(Collection<String> workerIds, String site) {
        SiteScope scope = currentUser.scope();
        return workers.withNumbers(new LinkedHashSet<>(workerIds)).stream()
                .filter(worker -> scope.includes(worker.details().siteIfGiven()))
                .filter(worker -> worker.details().site().equals(site))
                .sorted(Comparator.comparing(worker -> worker.details().workerId()))
                .toList();
    }

    /** Adds people who took part to a training on record; those on its list already are left as they are. */
    @PreAuthorize(WHO)
    public TrainingResult addAttendants(long sessionKey, Collection<String> workerIds) {
        Optional<StoredSession> session = book.stored(sessionKey, currentUser.scope());
        if (session.isEmpty()) {
            return new TrainingResult.NotEntered(ProtectionProblem.UNKNOWN_ENTRY);
        }
        Set<String> there = book.find(sessionKey, currentUser.scope()).orElseThrow().attendants().stream()
                .filter(TrainingSession.Attendant::counts)
                .map(TrainingSession.Attendant::workerId)
                .collect(Collectors.toSet());
        List<String> more = workerIds.stream()
                .filter(number -> !there.contains(number))
                .distinct()
                .toList();
        List<StoredWorker> present = inScope(more, session.get().site());
        return present.size() < more.size()
                ? new TrainingResult.NotEntered(ProtectionProblem.UNKNOWN_WORKER)
                : new TrainingResult.Entered(sessionKey, attend(session.get(), present));
    }

    /** Returns how many workers' cases moved on. */
    private int attend(StoredSession session, List<StoredWorker> present) {
        NewSession details = session.details();
        String reason = TrainingWords.retrainedReason(details.heldOn(), details.topics(), details.trainer());
        int moved = 0;
        for (StoredWorker worker : present) {
            entityManager.persist(
                    new StoredAttendance(session.key(), worker.key(), currentUser.username(), clock.instant()));
            auditTrail.record(
                    ProtectionAction.ATTENDANCE_ENTERED,
                    "worker",
                    worker.details().workerId(),
                    "training " + session.key());
            // 29 CFR 1910.95(g)(8)(ii) is about the use and care of protectors.
            if (details.topics().contains(TrainingTopic.PROTECTORS)
                    && caseActs.trained(worker, details.heldOn(), reason)) {
                moved++;
            }
        }
        return moved;
    }

    /** Says that somebody was put on the list by mistake; it stays readable, and a case's own entries stay. */
    @PreAuthorize(WHO)
    public Optional<ProtectionProblem> withdrawAttendance(long sessionKey, long attendanceKey, String reason) {
        Optional<StoredAttendance> attendance = book.stored(sessionKey, currentUser.scope())
                .flatMap(session -> book.attendance(attendanceKey, sessionKey));
        Optional<ProtectionProblem> problem = WorkerProtectionService.objectionTo(attendance.isPresent(), reason);
        if (problem.isEmpty()) {
            attendance.orElseThrow().withdraw(reason, currentUser.username());
            auditTrail.record(
                    ProtectionAction.ATTENDANCE_WITHDRAWN,
                    "training",
                    Long.toString(sessionKey),
                    "attendance " + attendanceKey);
        }
        return problem;
    }

    /** Keeps the signed sheet; a later one takes its place, and the earlier is kept. */
    @PreAuthorize(WHO)
    public Optional<ProtectionProblem> keepSheet(long sessionKey, NewDocument sheet) {
        Optional<StoredSession> session = book.stored(sessionKey, currentUser.scope());
        session.ifPresent(stored -> {
            long document = documents.add(sheet);
            stored.keepSheet(document);
            auditTrail.record(
                    ProtectionAction.TRAINING_SHEET_KEPT,
                    "training",
                    Long.toString(sessionKey),
                    "document " + document);
        });
        return session.isEmpty() ? Optional.of(ProtectionProblem.UNKNOWN_ENTRY) : Optional.empty();
    }

    /** The signed sheet; empty where there is none. Fetching it goes on the audit trail. */
    @PreAuthorize(WHO)
    public Optional<byte[]> signedSheet(long sessionKey) {
        return book.stored(sessionKey, currentUser.scope())
                .flatMap(StoredSession::sheet)
                .map(document -> {
                    auditTrail.record(
                            ProtectionAction.TRAINING_SHEET_FETCHED,
                            "training",
                            Long.toString(sessionKey),
                            "document " + document);
                    return documents.content(document);
                });
    }

    /** The sheet of a training on record, to be signed by those on its list; empty where there is no such training. */
    @PreAuthorize(WHO)
    public Optional<byte[]> sheetToSign(long sessionKey) {
        return book.find(sessionKey, currentUser.scope()).map(session -> {
            List<Person> people = session.attendants().stream()
                    .filter(TrainingSession.Attendant::counts)
                    .map(attendant -> new Person(attendant.workerId(), attendant.name(), attendant.department()))
                    .toList();
            NewSession details = session.details();
            return sheet(
                    details.site(),
                    Words.day(details.heldOn()),
                    details.trainer(),
                    details.topics(),
                    people,
                    Long.toString(sessionKey));
        });
    }

    /** A sheet for a training that is still to be held: everybody who is due by a day, with room for date and trainer. */
    @PreAuthorize(WHO)
    public byte[] sheetOfDue(String site, Optional<String> department, LocalDate until) {
        List<Person> people = due().stream()
                .filter(row -> row.site().equals(site))
                .filter(row -> department
                        .filter(some -> !some.equals(row.department()))
                        .isEmpty())
                .filter(row -> !row.due().isAfter(until))
                .sorted(Comparator.comparing(TrainingRow::department).thenComparing(TrainingRow::name))
                .map(row -> new Person(row.workerId(), row.name(), row.department()))
                .toList();
        return sheet(site, "", "", Set.of(TrainingTopic.values()), people, "");
    }

    private byte[] sheet(
            String site, String day, String trainer, Set<TrainingTopic> topics, List<Person> people, String key) {
        auditTrail.record(ProtectionAction.TRAINING_SHEET_PRINTED, "training", key, people.size() + " people to sign");
        String who = currentUser.find().map(SignedInUser::displayName).orElse("");
        String title = "Attendance sheet, hearing conservation training" + (day.isEmpty() ? "" : " of " + day);
        return pdf.render(new PrintedDocument(
                SHEET,
                Map.of(
                        "site", site,
                        "day", day,
                        "trainer", trainer,
                        "topics",
                                topics.stream()
                                        .sorted()
                                        .map(topic -> Words.capitalised(TrainingWords.topic(topic)) + ". ["
                                                + topic.basis().place() + "]")
                                        .toList(),
                        "people", people),
                title,
                (site.isEmpty() ? "" : site + ", ") + "printed " + Words.day(LocalDate.now(clock)) + " by " + who,
                clock.instant()));
    }
}
