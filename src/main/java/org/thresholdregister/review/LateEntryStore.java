package org.thresholdregister.review;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.judging.WorkerJudgement;
import org.thresholdregister.review.HistoryStore.StoredHistory;
import org.thresholdregister.review.RegisterRules.OfToday;
import org.thresholdregister.roster.StoredWorker;

/**
 * Works out what new tests would change about what was determined before. It stores nothing and checks no role: the service
 * that calls it does, and screens never call it.
 */
@Component
@Transactional(propagation = Propagation.MANDATORY)
public class LateEntryStore {

    private record Judged(Audiogram test, Ear ear) {}

    private final HistoryStore histories;
    private final RegisterRules rules;

    LateEntryStore(HistoryStore histories, RegisterRules rules) {
        this.histories = histories;
        this.rules = rules;
    }

    /**
     * The determinations on record that would come out otherwise, worker by worker in the order given. Of a worker
     * whose new tests are all later than those on record, only those that would be put before a person, since a notice
     * was given or a case recorded on them.
     */
    public List<DeterminationChange> changes(List<LateEntry> entries) {
        Map<Long, LateEntry> byWorker = new LinkedHashMap<>();
        entries.forEach(entry -> byWorker.put(entry.worker().key(), entry));
        List<StoredWorker> workers = entries.stream().map(LateEntry::worker).toList();
        OfToday today = rules.today();
        List<DeterminationChange> changes = new ArrayList<>();
        for (StoredHistory stored : histories.of(workers)) {
            LateEntry entry = byWorker.get(stored.worker().key());
            if (entry != null) {
                changes.addAll(changes(stored, entry, today));
            }
        }
        return changes;
    }

    private List<DeterminationChange> changes(StoredHistory stored, LateEntry entry, OfToday today) {
        Audiogram earliest = Collections.min(entry.tests(), Audiogram.CHRONOLOGICAL);
        WorkerHistory now = stored.history();
        boolean late = now.audiograms().stream().anyMatch(test -> Audiogram.CHRONOLOGICAL.compare(earliest, test) < 0);
        Map<Judged, Determination> after = byTest(today.judge(
                stored,
                new WorkerHistory(
                        entry.facts(),
                        Stream.concat(now.audiograms().stream(), entry.tests().stream())
                                .toList(),
                        Stream.concat(now.decisions().stream(), entry.decisions().stream())
                                .toList())));
        List<DeterminationChange> changes = new ArrayList<>();
        for (Determination before : today.judge(stored).determinations()) {
            change(before, Optional.ofNullable(after.get(new Judged(before.test(), before.ear()))), stored)
                    .filter(change -> late || change.sent().isOvertakenBy(change.before(), change.after()))
                    .ifPresent(changes::add);
        }
        return changes;
    }

    private static Optional<DeterminationChange> change(
            Determination before, Optional<Determination> after, StoredHistory stored) {
        EarFinding found = EarFinding.of(before);
        Optional<EarFinding> then = after.map(EarFinding::of);
        boolean isStandIn = before.outcome() == Outcome.RETEST
                && then.map(finding -> finding.outcome() == Outcome.RETEST).orElse(false);
        if (isStandIn || then.equals(Optional.of(found))) {
            return Optional.empty();
        }
        return Optional.of(new DeterminationChange(
                stored.worker().details().workerId(),
                before.test().date(),
                before.test().purpose(),
                before.ear(),
                found,
                then,
                SentAndRecorded.of(
                        before.test().date(),
                        before.ear(),
                        before.ruleSet(),
                        stored.history().audiograms(),
                        stored.history().decisions())));
    }

    private static Map<Judged, Determination> byTest(WorkerJudgement judgement) {
        return judgement.determinations().stream()
                .collect(Collectors.toMap(
                        determination -> new Judged(determination.test(), determination.ear()),
                        determination -> determination));
    }
}
