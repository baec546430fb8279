package org.thresholdregister.review;

import java.time.Clock;
import java.time.LocalDate;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.RulesInForce;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.rulesets.RulesBySite;
import org.thresholdregister.rulesets.SiteRulesStore;

/** How the register judges: by what each site answers to, as of today. */
@Component
@Transactional(propagation = Propagation.MANDATORY)
class RegisterRules {

    /** Baseline revisions are proposed, and a professional decides. */
    static final BaselineRevision REVISION = BaselineRevision.PROPOSE;

    private final SiteRulesStore sites;
    private final Clock clock;

    RegisterRules(SiteRulesStore sites, Clock clock) {
        this.sites = sites;
        this.clock = clock;
    }

    /** What holds today; read once and used for many workers. */
    OfToday today() {
        return new OfToday(sites.all(), LocalDate.now(clock));
    }

    /** What the sites answer to on a day. */
    record OfToday(RulesBySite sites, LocalDate day) {

        RulesInForce of(StoredHistory stored) {
            return sites.of(stored.worker().details().site());
        }

        WorkerJudgement judge(StoredHistory stored) {
            return of(stored).judge(stored.history(), day, REVISION);
        }

        /** The worker's record with its judgement. */
        JudgedWorker judged(StoredHistory stored) {
            return new JudgedWorker(stored, judge(stored), options(stored));
        }

        /** The same worker with another history. */
        WorkerJudgement judge(StoredHistory stored, WorkerHistory history) {
            return of(stored).judge(history, day, REVISION);
        }

        /** How a test of today is judged. */
        JudgingOptions options(StoredHistory stored) {
            return of(stored).optionsOn(day, day, REVISION);
        }
    }
}
