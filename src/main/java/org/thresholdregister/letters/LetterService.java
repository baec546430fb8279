package org.thresholdregister.letters;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.core.wording.LetterWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.letters.LetterComposer.Circumstances;
import org.thresholdregister.letters.LetterComposer.Texts;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.documents.DocumentStore;
import org.thresholdregister.platform.documents.MediaType;
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.pdf.PdfPapers;
import org.thresholdregister.platform.pdf.PdfRenderer;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.DecisionResult;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.Evidence;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.WorkerRecordService;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;

/**
 * Prints letters, keeps each as it was printed, and takes down when it was given. A safety officer reads all but
 * referrals, which hold clinical notes.
 */
@Service
@Transactional
public class LetterService {

    /** The most letters that are shown or printed at a time. */
    public static final int MOST = 200;

    private static final String WHO_MAY_READ = Roles.HAS_NURSE + " or " + Roles.HAS_SAFETY_OFFICER;

    private final WaitingLetters waitingLetters;
    private final LetterTexts texts;
    private final WorkerRecordService records;
    private final WorkerStore workers;
    private final DecisionService decisions;
    private final DocumentStore documents;
    private final PdfRenderer renderer;
    private final ClinicalHistory clinical;
    private final ObjectProvider<RetestBookings> bookings;
    private final EntityManager entityManager;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final Clock clock;

    LetterService(
            WaitingLetters waitingLetters,
            LetterTexts texts,
            WorkerRecordService records,
            WorkerStore workers,
            DecisionService decisions,
            DocumentStore documents,
            PdfRenderer renderer,
            ClinicalHistory clinical,
            ObjectProvider<RetestBookings> bookings,
            EntityManager entityManager,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            Clock clock) {
        this.waitingLetters = waitingLetters;
        this.texts = texts;
        this.records = records;
        this.workers = workers;
        this.decisions = decisions;
        this.documents = documents;
        this.renderer = renderer;
        this.clinical = clinical;
        this.bookings = bookings;
        this.entityManager = entityManager;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.clock = clock;
    }

    /** The letters that are due and not printed, what is due first in front. */
    @PreAuthorize(WHO_MAY_READ)
    @Transactional(readOnly = true)
    public List<WaitingLetter> waiting() {
        return waitingLetters.find(currentUser.scope(), LocalDate.now(clock)).stream()
                .filter(letter -> mayRead(letter.occasion().kind()))
                .toList();
    }

    /** Prints letters and keeps them; nothing is kept where one of them fails. */
    @PreAuthorize(Roles.HAS_NURSE)
    public PrintRun print(List<LetterRequest> requests) {
        if (requests.size() > MOST) {
            throw new IllegalArgumentException("at most " + MOST + " letters are printed at a time");
        }
        List<byte[]> printed = new ArrayList<>();
        for (LetterRequest request : requests) {
            LetterOccasion occasion = request.occasion();
            Optional<WorkerRecord> record = records.open(occasion.workerId())
                    .filter(found -> found.tests().stream()
                            .anyMatch(test -> test.key() == occasion.testKey()
                                    && test.audiogram().date().equals(occasion.testDate())));
            record.ifPresent(found -> printed.add(print(found, request)));
        }
        return new PrintRun(
                printed.isEmpty() ? new byte[0] : PdfPapers.together(printed),
                printed.size(),
                requests.size() - printed.size());
    }

    private byte[] print(WorkerRecord record, LetterRequest request) {
        LetterOccasion occasion = request.occasion();
        StoredWorker worker =
                workers.find(occasion.workerId(), currentUser.scope()).orElseThrow();
        Language language =
                request.language().orElseGet(() -> Language.of(record.details().language()));
        var circumstances = new Circumstances(
                clock.instant(),
                clock.getZone(),
                currentUser.get().displayName(),
                booked(request, language),
                occasion.kind() == LetterKind.REFERRAL ? clinical.of(worker.key()) : List.of());
        String site = record.details().site();
        byte[] pdf = renderer.render(new LetterComposer(record, occasion, language, circumstances)
                .compose(new Texts(
                        texts.inForce(site, language, TextPart.LETTERHEAD),
                        texts.inForce(site, language, TextPart.of(occasion.kind())),
                        texts.inForce(site, language, TextPart.SIGNATURE))));
        long document = documents.add(new NewDocument(
                occasion.kind().word() + "-" + occasion.testDate() + MediaType.PDF.suffix(), MediaType.PDF, pdf));
        var letter = new StoredLetter(
                worker.key(), occasion, language, document, LocalDate.now(clock), currentUser.username());
        entityManager.persist(letter);
        auditTrail.record(
                LetterAction.LETTER_PRINTED,
                "worker",
                occasion.workerId(),
                "letter " + letter.key() + ", " + occasion.kind().word() + ", test of " + occasion.testDate());
        return pdf;
    }

    private Optional<String> booked(LetterRequest request, Language language) {
        if (!request.booked().isBlank()) {
            String typed = request.booked().strip();
            return Optional.of(typed.substring(0, Math.min(typed.length(), LetterRequest.LONGEST_BOOKED)));
        }
        return bookings.stream()
                .flatMap(source -> source.next(request.occasion().workerId()).stream())
                .findFirst()
                .map(booking -> LetterWords.in(language).day(booking.at().toLocalDate()) + ", "
                        + booking.at().toLocalTime() + ", " + booking.place());
    }

    /** The letters that were printed, the latest first, at most {@value #MOST}. */
    @PreAuthorize(WHO_MAY_READ)
    @Transactional(readOnly = true)
    public List<PrintedLetter> printed(LetterFilter filter) {
        ListQuery query = ListQuery.ofOwned(
                        entityManager, "StoredLetter l", "Worker w on w.id = l.workerId", "w.site", currentUser.scope())
                .whereMatches("w.search", filter.text());
        filter.kind().ifPresent(kind -> query.where("l.kind = ?", kind));
        filter.given().ifPresent(given -> query.where(given ? "l.givenOn is not null" : "l.givenOn is null"));
        if (currentUser.role() != Role.NURSE) {
            query.where("l.kind <> ?", LetterKind.REFERRAL);
        }
        List<Long> keys = query.page("l.id, w.id", List.of("l.id"), true, 0, MOST, tuple -> tuple.get(0, Long.class));
        return toPrinted(stored(keys));
    }

    /** The letters to or about a worker, the latest first. */
    @PreAuthorize(WHO_MAY_READ)
    @Transactional(readOnly = true)
    public List<PrintedLetter> ofWorker(String workerId) {
        return workers.find(workerId, currentUser.scope())
                .map(worker -> toPrinted(entityManager
                        .createQuery(
                                "select l from StoredLetter l where l.workerId = :worker order by l.id desc",
                                StoredLetter.class)
                        .setParameter("worker", worker.key())
                        .getResultList()))
                .orElse(List.of());
    }

    /**
     * Letters as they were printed, each page marked as a reprint of today; what was kept stays as it is. Letters that
     * the user may not see are left out.
     */
    @PreAuthorize(WHO_MAY_READ)
    public byte[] reprint(Collection<Long> keys) {
        List<byte[]> copies = new ArrayList<>();
        for (StoredLetter letter : stored(keys)) {
            for (PrintedLetter printed : toPrinted(List.of(letter))) {
                copies.add(PdfPapers.marked(
                        documents.content(letter.documentKey()),
                        LetterWords.in(printed.language()).reprint(printed.printedOn(), LocalDate.now(clock))));
                auditTrail.record(
                        LetterAction.LETTER_REPRINTED,
                        "worker",
                        printed.occasion().workerId(),
                        "letter " + printed.key());
            }
        }
        return copies.isEmpty() ? new byte[0] : PdfPapers.together(copies);
    }

    /**
     * Takes down that letters were given to their readers. A written notice closes what is owed by a decision, which the
     * letter is the evidence of.
     */
    @PreAuthorize(Roles.HAS_NURSE)
    public GivenResult markGiven(Collection<Long> keys, LocalDate day, LetterMethod method) {
        int given = 0;
        List<String> notes = new ArrayList<>();
        for (StoredLetter letter : stored(keys)) {
            for (PrintedLetter printed : toPrinted(List.of(letter))) {
                Optional<String> objection = objection(printed, day);
                if (objection.isPresent()) {
                    notes.add(objection.get());
                    continue;
                }
                letter.give(day, method, currentUser.username());
                given++;
                auditTrail.record(
                        LetterAction.LETTER_GIVEN,
                        "worker",
                        printed.occasion().workerId(),
                        "letter " + printed.key() + " on " + day);
                if (printed.occasion().kind() == LetterKind.SHIFT_NOTICE) {
                    enterNotice(printed, letter.documentKey(), day, method).ifPresent(notes::add);
                }
            }
        }
        return new GivenResult(given, notes);
    }

    private Optional<String> objection(PrintedLetter letter, LocalDate day) {
        String which = "Letter to " + letter.occasion().workerId() + " of " + Words.day(letter.printedOn());
        if (letter.givenOn().isPresent()) {
            return Optional.of(which + " was marked as given before; nothing was changed.");
        }
        if (day.isBefore(letter.printedOn())) {
            return Optional.of(which + " cannot have been given before it was printed. Give a later day.");
        }
        return day.isAfter(LocalDate.now(clock))
                ? Optional.of(which + " cannot have been given in the future. Give today or an earlier day.")
                : Optional.empty();
    }

    private Optional<String> enterNotice(PrintedLetter letter, long documentKey, LocalDate day, LetterMethod method) {
        LetterOccasion occasion = letter.occasion();
        DecisionResult result = decisions.enter(
                occasion.workerId(),
                new Decision(
                        occasion.ears(),
                        occasion.testDate(),
                        DecisionKind.NOTICE_GIVEN,
                        day,
                        currentUser.get().displayName(),
                        "Letter " + letter.key() + ", " + method.words()),
                new Evidence(means(method), "", Optional.of(new Evidence.Attached.Kept(documentKey))));
        String notEntered = "The notice to " + occasion.workerId() + " is marked as given, but its follow-up stays: ";
        return switch (result) {
            case DecisionResult.Recorded() -> Optional.empty();
            case DecisionResult.AlreadyOnRecord() -> Optional.empty();
            case DecisionResult.OutOfOrder(var why) -> Optional.of(notEntered + CaseWords.objection(why));
            case DecisionResult.Refused(var why) ->
                Optional.of(notEntered
                        + switch (why) {
                            case UNKNOWN_WORKER -> "the worker is not among those you may see.";
                            case NO_SUCH_TEST -> "the test is not on record any more.";
                            case BEFORE_THE_TEST -> "its day is before the test.";
                            case IN_THE_FUTURE -> "its day is in the future.";
                            case REASON_MISSING, TEXT_TOO_LONG, EVIDENCE_MISSING -> "its reason does not fit.";
                        });
        };
    }

    private static Evidence.Means means(LetterMethod method) {
        return switch (method) {
            case HANDED_OVER -> Evidence.Means.HANDED_OVER;
            case POST -> Evidence.Means.POSTED;
            case EMAIL -> Evidence.Means.ELECTRONIC;
        };
    }

    private boolean mayRead(LetterKind kind) {
        return kind != LetterKind.REFERRAL || currentUser.role() == Role.NURSE;
    }

    private List<StoredLetter> stored(Collection<Long> keys) {
        return entityManager
                .createQuery("select l from StoredLetter l where l.id in :keys order by l.id desc", StoredLetter.class)
                .setParameter("keys", keys)
                .getResultList();
    }

    /** Those that the user may see. */
    private List<PrintedLetter> toPrinted(List<StoredLetter> letters) {
        Map<Long, StoredWorker> byKey =
                workers
                        .withKeys(letters.stream()
                                .map(StoredLetter::workerKey)
                                .distinct()
                                .toList())
                        .stream()
                        .filter(worker ->
                                currentUser.scope().includes(worker.details().siteIfGiven()))
                        .collect(Collectors.toMap(StoredWorker::key, Function.identity()));
        return letters.stream()
                .flatMap(letter -> Optional.ofNullable(byKey.get(letter.workerKey())).map(letter::toPrinted).stream())
                .filter(letter -> mayRead(letter.occasion().kind()))
                .toList();
    }
}
