package org.thresholdregister.review;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.platform.audit.AuditTrail;
import org.thresholdregister.rulesets.RulesChanged;

/**
 * Judges anew whom the day concerns: a window for a retest has closed, or someone has left. It runs at the start, just
 * after midnight, and before the first list of a day is read, so that no list shows yesterday's state.
 */
@Component
class DailyJudging {

    private static final Logger log = LoggerFactory.getLogger(DailyJudging.class);
    private static final String ACTOR = "(change of day)";

    private final JudgementStore judgements;
    private final AuditTrail auditTrail;
    private final Clock clock;
    private final TransactionTemplate transaction;
    private volatile @Nullable LocalDate upToDateOn;

    DailyJudging(
            JudgementStore judgements,
            AuditTrail auditTrail,
            Clock clock,
            PlatformTransactionManager transactionManager) {
        this.judgements = judgements;
        this.auditTrail = auditTrail;
        this.clock = clock;
        // A list is read in a transaction that does not write.
        this.transaction = new TransactionTemplate(transactionManager);
        this.transaction.setPropagationBehavior(TransactionDefinition.PROPAGATION_REQUIRES_NEW);
    }

    /** Returns at once where this has been done today. */
    @EventListener(ApplicationReadyEvent.class)
    @Scheduled(cron = "5 0 0 * * *")
    public void bringUpToDate() {
        LocalDate today = LocalDate.now(clock);
        if (!today.equals(upToDateOn)) {
            bringUpTo(today);
        }
    }

    /** What was judged by other rules is judged again before it is next shown. */
    @TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT)
    void outdate(RulesChanged changed) {
        judgements.outdateAll();
    }

    @TransactionalEventListener(phase = TransactionPhase.AFTER_COMMIT)
    void judgeAgain(RulesChanged changed) {
        upToDateOn = null;
    }

    private synchronized void bringUpTo(LocalDate today) {
        if (today.equals(upToDateOn)) {
            return;
        }
        transaction.executeWithoutResult(status -> {
            judge(judgements.ofAnotherEdition(), new JudgingCause.ByOther(), "by another edition of the rules");
            judge(judgements.outOfDate(), new JudgingCause.ByCalendar(), "for the day");
        });
        upToDateOn = today;
    }

    private void judge(List<Long> workerKeys, JudgingCause cause, String why) {
        if (!workerKeys.isEmpty()) {
            judgements.judge(workerKeys, cause);
            auditTrail.recordAs(
                    ACTOR, ReviewAction.JUDGED_ANEW, "register", "", workerKeys.size() + " workers judged anew " + why);
            log.info("{} workers judged anew {}", workerKeys.size(), why);
        }
    }
}
