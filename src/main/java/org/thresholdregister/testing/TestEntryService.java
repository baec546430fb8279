package org.thresholdregister.testing;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.access.prepost.PreAuthorize;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.audiograms.TestSigned;
import org.thresholdregister.audiograms.TestStore;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.review.JudgementStore;
import org.thresholdregister.review.JudgingCause;
import org.thresholdregister.review.TestStory;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.WorkerRecordService;
import org.thresholdregister.roster.StoredWorker;
import org.thresholdregister.roster.WorkerStore;
import org.thresholdregister.testing.EntryProblem.Kind;

/**
 * Tests entered by hand. What is typed is kept as a draft of the person who types it, and counts nowhere; a signed test
 * is on record and is never edited.
 */
@Service
@PreAuthorize(Roles.HAS_NURSE)
@Transactional
public class TestEntryService {

    private final EntityManager entityManager;
    private final WorkerStore workers;
    private final TestStore tests;
    private final WorkerRecordService records;
    private final JudgementStore judgements;
    private final SuggestionSource suggestions;
    private final AuditTrail auditTrail;
    private final CurrentUser currentUser;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    TestEntryService(
            EntityManager entityManager,
            WorkerStore workers,
            TestStore tests,
            WorkerRecordService records,
            JudgementStore judgements,
            SuggestionSource suggestions,
            AuditTrail auditTrail,
            CurrentUser currentUser,
            ApplicationEventPublisher events,
            Clock clock) {
        this.entityManager = entityManager;
        this.workers = workers;
        this.tests = tests;
        this.records = records;
        this.judgements = judgements;
        this.suggestions = suggestions;
        this.auditTrail = auditTrail;
        this.currentUser = currentUser;
        this.events = events;
        this.clock = clock;
    }

    /**
     * Opens the page of a test: the worker's record and the user's draft, which is begun where there is none. Empty where
     * the user may not see the worker, or the worker has no such test that counts.
     *
     * @param inPlaceOf the key of the test on record that it is to supersede; none for a new test
     */
    public Optional<TestEntry> open(String workerId, Optional<Long> inPlaceOf) {
        Optional<StoredWorker> found = workers.find(workerId, currentUser.scope());
        if (found.isEmpty()) {
            return Optional.empty();
        }
        StoredWorker worker = found.get();
        Optional<RecordedTest> former = inPlaceOf.flatMap(key -> onRecord(worker, key));
        if (former.isPresent() != inPlaceOf.isPresent()) {
            return Optional.empty();
        }
        return records.open(workerId).map(record -> {
            StoredDraft draft = draft(worker, inPlaceOf).orElseGet(() -> begin(worker, record, former));
            return new TestEntry(
                    record,
                    draft.toDraft(workerId),
                    former,
                    suggestions.at(worker.details().site(), record.asOf()));
        });
    }

    /** Keeps what has been typed and says what it would mean; empty where the draft is there no more. */
    public Optional<Outlook> type(long draftKey, TypedTest typed) {
        return draft(draftKey).map(found -> {
            found.draft.type(typed, clock.instant());
            return outlook(found.worker, found.draft);
        });
    }

    /** What the draft means as it stands; empty where it is there no more. */
    @Transactional(readOnly = true)
    public Optional<Outlook> look(long draftKey) {
        return draft(draftKey).map(found -> outlook(found.worker, found.draft));
    }

    /** Signs what is typed: the test comes on record, the worker is judged, and the draft is gone. */
    public SignResult sign(long draftKey, TypedTest typed) {
        return draft(draftKey)
                .map(found -> {
                    found.draft.type(typed, clock.instant());
                    return sign(found.worker, found.draft);
                })
                .orElseGet(SignResult.Gone::new);
    }

    /** Throws a draft away; nothing else changes. */
    public void discard(long draftKey) {
        draft(draftKey).ifPresent(found -> {
            entityManager.remove(found.draft);
            auditTrail.record(
                    TestingAction.TEST_DRAFT_DISCARDED,
                    "worker",
                    found.worker.details().workerId(),
                    "");
        });
    }

    /** Takes a test out that was entered in error, such as for the wrong person. It is kept, and counts no more. */
    public WithdrawResult withdraw(String workerId, long testKey, String reason) {
        Optional<StoredWorker> worker = workers.find(workerId, currentUser.scope());
        Optional<RecordedTest> test = worker.stream()
                .flatMap(found -> tests.ofWorkers(List.of(found.key())).stream())
                .filter(known -> known.key() == testKey)
                .findFirst();
        if (worker.isEmpty() || test.isEmpty()) {
            return WithdrawResult.NOT_ON_RECORD;
        }
        if (reason.isBlank()) {
            return WithdrawResult.REASON_MISSING;
        }
        if (reason.length() > TypedTest.LONGEST_TEXT) {
            return WithdrawResult.REASON_TOO_LONG;
        }
        long workerKey = worker.get().key();
        tests.withdraw(
                testKey, workerKey, reason.strip(), currentUser.username(), clock.instant(), LocalDate.now(clock));
        auditTrail.record(
                TestingAction.TEST_WITHDRAWN,
                "worker",
                workerId,
                test.get().audiogram().purpose().word() + " test of "
                        + test.get().audiogram().date() + ", number " + testKey);
        judgements.judge(List.of(workerKey), new JudgingCause.BySuperseding(testKey, Optional.empty()));
        return WithdrawResult.WITHDRAWN;
    }

    /** The user's own half-typed tests, the last typed first. */
    @Transactional(readOnly = true)
    public List<WaitingDraft> waiting() {
        List<StoredDraft> drafts = entityManager
                .createQuery(
                        "from StoredDraft d where d.typedBy = :account and d.changedAt is not null"
                                + " order by d.changedAt desc, d.id desc",
                        StoredDraft.class)
                .setParameter("account", currentUser.username())
                .getResultList();
        Map<Long, StoredWorker> theirs = workers
                .withKeys(drafts.stream().map(StoredDraft::workerKey).toList())
                .stream()
                .filter(worker -> currentUser.scope().includes(worker.details().siteIfGiven()))
                .collect(Collectors.toMap(StoredWorker::key, Function.identity()));
        return drafts.stream()
                .flatMap(draft ->
                        Optional.ofNullable(theirs.get(draft.workerKey()))
                                .map(worker -> waiting(draft, worker))
                                .stream())
                .toList();
    }

    private static WaitingDraft waiting(StoredDraft draft, StoredWorker worker) {
        return new WaitingDraft(
                draft.key(),
                worker.details().workerId(),
                worker.details().givenName(),
                worker.details().familyName(),
                draft.inPlaceOf(),
                draft.typed().thresholds().count(),
                draft.changedAt().orElseThrow());
    }

    private StoredDraft begin(StoredWorker worker, WorkerRecord record, Optional<RecordedTest> former) {
        TypedTest typed = former.map(TestEntryService::asTyped).orElseGet(() -> fresh(record));
        StoredDraft draft = new StoredDraft(worker.key(), currentUser.username(), former.map(RecordedTest::key), typed);
        entityManager.persist(draft);
        return draft;
    }

    /** What a new test begins with: today, and what this user's last test of today was made with. */
    private TypedTest fresh(WorkerRecord record) {
        Optional<RecordedTest> lastTest = tests.lastSignedBy(currentUser.username(), record.asOf());
        Optional<TestFacts> last = lastTest.map(RecordedTest::facts);
        return new TypedTest(
                TypedThresholds.NONE,
                lastTest.flatMap(test -> TypedThresholds.loudestTone(test.audiogram()))
                        .orElse(TypedTest.USUAL_LIMIT),
                Optional.of(record.asOf()),
                Optional.of(PurposeGuess.of(record)),
                "",
                Optional.empty(),
                last.map(TestFacts::tester).orElse(currentUser.get().displayName()),
                last.map(TestFacts::instrument).orElse(""),
                last.map(TestFacts::transducer).orElse(""),
                last.map(TestFacts::room).orElse(""),
                "",
                "");
    }

    private static TypedTest asTyped(RecordedTest former) {
        Audiogram audiogram = former.audiogram();
        TestFacts facts = former.facts();
        return new TypedTest(
                TypedThresholds.of(audiogram, facts.repeatAt1000Hz()),
                TypedThresholds.loudestTone(audiogram).orElse(TypedTest.USUAL_LIMIT),
                Optional.of(audiogram.date()),
                Optional.of(audiogram.purpose()),
                facts.hoursSinceNoise().map(hours -> hours.toPlainString()).orElse(""),
                facts.protectorsWorn(),
                facts.tester(),
                facts.instrument(),
                facts.transducer(),
                facts.room(),
                facts.remark(),
                "");
    }

    private Outlook outlook(StoredWorker worker, StoredDraft draft) {
        TypedReading reading = read(worker, draft);
        boolean isKnown = reading.problems().stream()
                .anyMatch(problem -> problem.kind() == Kind.ON_RECORD || problem.kind() == Kind.SUPERSEDED_MEANWHILE);
        Optional<WorkerRecord> record = reading.audiogram()
                .filter(test -> !isKnown)
                .flatMap(test ->
                        records.withOneMoreTest(worker.details().workerId(), test, reading.facts(), draft.inPlaceOf()));
        return new Outlook(record, reading.problems());
    }

    /** What is typed, held against what is on record. */
    private TypedReading read(StoredWorker worker, StoredDraft draft) {
        TypedTest typed = draft.typed();
        TypedReading reading =
                TypedReading.of(typed, LocalDate.now(clock), worker.details().birthDate());
        List<EntryProblem> problems = new ArrayList<>(reading.problems());
        List<RecordedTest> onRecord = tests.ofWorkers(List.of(worker.key()));
        boolean isTaken = reading.audiogram().stream()
                .anyMatch(test -> onRecord.stream()
                        .filter(known -> !Optional.of(known.key()).equals(draft.inPlaceOf()))
                        .anyMatch(known -> Audiogram.CHRONOLOGICAL.compare(test, known.audiogram()) == 0));
        if (isTaken) {
            problems.add(EntryProblem.of(Kind.ON_RECORD));
        }
        if (draft.inPlaceOf().isPresent()) {
            if (onRecord.stream().noneMatch(known -> Optional.of(known.key()).equals(draft.inPlaceOf()))) {
                problems.add(EntryProblem.of(Kind.SUPERSEDED_MEANWHILE));
            }
            if (typed.reason().isBlank()) {
                problems.add(EntryProblem.of(Kind.REASON_MISSING));
            }
        }
        return new TypedReading(reading.audiogram(), reading.facts(), List.copyOf(problems));
    }

    private SignResult sign(StoredWorker worker, StoredDraft draft) {
        TypedReading reading = read(worker, draft);
        if (!reading.problems().isEmpty()) {
            return new SignResult.Refused(reading.problems());
        }
        Audiogram audiogram = reading.audiogram().orElseThrow();
        var signature = new RecordedTest.Signature(
                currentUser.username(), currentUser.get().displayName(), clock.instant());
        long draftKey = draft.key();
        Optional<Long> former = draft.inPlaceOf();
        String reason = draft.typed().reason().strip();
        entityManager.remove(draft);
        long key = former.map(old -> tests.replace(
                        old, worker.key(), audiogram, reading.facts(), signature, reason, LocalDate.now(clock)))
                .orElseGet(() -> tests.add(worker.key(), audiogram, reading.facts(), signature));
        auditTrail.record(
                former.isPresent() ? TestingAction.TEST_SUPERSEDED : TestingAction.TEST_SIGNED,
                "worker",
                worker.details().workerId(),
                audiogram.purpose().word() + " test of " + audiogram.date() + ", number " + key
                        + former.map(old -> ", in place of number " + old).orElse(""));
        JudgingCause cause = former.<JudgingCause>map(old -> new JudgingCause.BySuperseding(old, Optional.of(key)))
                .orElseGet(() -> new JudgingCause.ByTest(key));
        judgements.judge(List.of(worker.key()), cause);
        events.publishEvent(new TestSigned(key, worker.key(), audiogram.date(), audiogram.purpose(), draftKey));
        WorkerRecord record = records.open(worker.details().workerId()).orElseThrow();
        TestStory story = record.stories().stream()
                .filter(found -> found.test().key() == key)
                .findFirst()
                .orElseThrow();
        return new SignResult.Signed(record, story);
    }

    private Optional<RecordedTest> onRecord(StoredWorker worker, long key) {
        return tests.ofWorkers(List.of(worker.key())).stream()
                .filter(test -> test.key() == key)
                .findFirst();
    }

    private Optional<StoredDraft> draft(StoredWorker worker, Optional<Long> inPlaceOf) {
        return entityManager
                .createQuery(
                        "from StoredDraft d where d.workerId = :worker and d.typedBy = :account and d.inPlaceOf = :test",
                        StoredDraft.class)
                .setParameter("worker", worker.key())
                .setParameter("account", currentUser.username())
                .setParameter("test", inPlaceOf.orElse(StoredDraft.NO_TEST))
                .getResultStream()
                .findFirst();
    }

    private record OwnDraft(StoredDraft draft, StoredWorker worker) {}

    /** The draft of this key, where it is the user's own and about a worker whom the user may see. */
    private Optional<OwnDraft> draft(long key) {
        return Optional.ofNullable(entityManager.find(StoredDraft.class, key))
                .filter(draft -> draft.isOf(currentUser.username()))
                .flatMap(draft -> workers.withKeys(List.of(draft.workerKey())).stream()
                        .filter(worker ->
                                currentUser.scope().includes(worker.details().siteIfGiven()))
                        .map(worker -> new OwnDraft(draft, worker))
                        .findFirst());
    }
}
