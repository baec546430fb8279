package org.thresholdregister.letters;

import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.platform.query.ListQuery;
import org.thresholdregister.platform.security.SiteScope;

/**
 * Derives which letters are due to whom and not printed. Tests and decisions count for {@value #DAYS_BACK} days, so that
 * a register that takes in its past does not owe letters for all of it; what a rule set makes due counts until it is
 * done.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class WaitingLetters {

    static final int DAYS_BACK = 60;

    private static final String OF_WORKER = ", w.workerId, w.familyName, w.givenName, w.site, w.language";

    private final EntityManager entityManager;

    WaitingLetters(EntityManager entityManager) {
        this.entityManager = entityManager;
    }

    /** What has a last day first, by that day; then the rest, the oldest test first. */
    List<WaitingLetter> find(SiteScope scope, LocalDate today) {
        List<WaitingLetter> waiting = new ArrayList<>();
        waiting.addAll(followUps(scope, FollowUpKind.NOTICE, LetterKind.SHIFT_NOTICE));
        waiting.addAll(followUps(scope, FollowUpKind.RETEST, LetterKind.RETEST_INVITATION));
        waiting.addAll(results(scope, today));
        waiting.addAll(decisions(scope, today, DecisionKind.BASELINE, LetterKind.BASELINE_REVISION));
        waiting.addAll(decisions(scope, today, DecisionKind.NOT_WORK_RELATED, LetterKind.NOT_WORK_RELATED));
        waiting.addAll(decisions(scope, today, DecisionKind.REFERRED, LetterKind.REFERRAL));
        waiting.sort(
                Comparator.comparing((WaitingLetter letter) -> letter.dueDate().orElse(LocalDate.MAX))
                        .thenComparing(letter -> letter.occasion().testDate())
                        .thenComparing(letter -> letter.occasion().workerId())
                        .thenComparing(letter -> letter.occasion().kind()));
        return waiting;
    }

    private List<WaitingLetter> results(SiteScope scope, LocalDate today) {
        return ListQuery.ofOwned(entityManager, "StoredAudiogram a", "Worker w on w.id = a.workerId", "w.site", scope)
                .where("a.testDate >= ?", today.minusDays(DAYS_BACK))
                .where("a.purpose <> ?", TestPurpose.OTHER)
                .where("not exists (select 1 from StoredSupersession s where s.testKey = a.id)")
                .where(
                        "not exists (select 1 from StoredLetter l where l.testId = a.id and l.kind = ?)",
                        LetterKind.RESULT)
                .where(
                        "not exists (select 1 from StoredDecision d where d.workerId = a.workerId"
                                + " and d.testDate = a.testDate and d.kind = ? and d.ears = ?)",
                        DecisionKind.INVALID_TEST,
                        Ears.BOTH)
                .all(
                        "a.id, a.testDate" + OF_WORKER,
                        "",
                        tuple -> new WaitingLetter(
                                new LetterOccasion(
                                        tuple.get(2, String.class),
                                        LetterKind.RESULT,
                                        tuple.get(0, Long.class),
                                        tuple.get(1, LocalDate.class),
                                        Ears.BOTH),
                                tuple.get(3, String.class),
                                tuple.get(4, String.class),
                                tuple.get(5, String.class),
                                Optional.empty(),
                                Language.of(tuple.get(6, String.class))));
    }

    private List<WaitingLetter> followUps(SiteScope scope, FollowUpKind owed, LetterKind kind) {
        return ofOneTest(scope, "StoredFollowUp", kind)
                .where("x.kind = ?", owed)
                .all(
                        "x.testDate, x.ears, x.dueDate, " + TEST_OF_THE_DAY + OF_WORKER,
                        "",
                        row(kind, tuple -> Optional.of(tuple.get(2, LocalDate.class))));
    }

    private List<WaitingLetter> decisions(SiteScope scope, LocalDate today, DecisionKind decided, LetterKind kind) {
        return ofOneTest(scope, "StoredDecision", kind)
                .where("x.kind = ?", decided)
                .where("x.decidedOn >= ?", today.minusDays(DAYS_BACK))
                .all(
                        "distinct x.testDate, x.ears, 0, " + TEST_OF_THE_DAY + OF_WORKER,
                        "",
                        row(kind, tuple -> Optional.empty()));
    }

    private static final String TEST_OF_THE_DAY =
            "(select max(a.id) from StoredAudiogram a where a.workerId = x.workerId and a.testDate = x.testDate"
                    + " and not exists (select 1 from StoredSupersession s where s.testKey = a.id))";

    private ListQuery ofOneTest(SiteScope scope, String entity, LetterKind kind) {
        return ListQuery.ofOwned(entityManager, entity + " x", "Worker w on w.id = x.workerId", "w.site", scope)
                .where("x.testDate is not null")
                .where(
                        "not exists (select 1 from StoredLetter l where l.workerId = x.workerId and l.kind = ?"
                                + " and l.testDate = x.testDate and (l.ears = x.ears or l.ears = ?))",
                        kind,
                        Ears.BOTH);
    }

    private static Function<Tuple, WaitingLetter> row(LetterKind kind, Function<Tuple, Optional<LocalDate>> dueDate) {
        return tuple -> new WaitingLetter(
                new LetterOccasion(
                        tuple.get(4, String.class),
                        kind,
                        tuple.get(3, Long.class),
                        tuple.get(0, LocalDate.class),
                        tuple.get(1, Ears.class)),
                tuple.get(5, String.class),
                tuple.get(6, String.class),
                tuple.get(7, String.class),
                dueDate.apply(tuple),
                Language.of(tuple.get(8, String.class)));
    }
}
