package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.decision.TestDecisions;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.rules.TestSchedule;

/** Gathers what is owed to a worker: one follow-up for each kind and test, with the earliest date of its ears. */
final class FollowUps {

    static final Comparator<FollowUp> BY_DATE_AND_KIND = Comparator.comparing(FollowUp::dueDate)
            .thenComparing(FollowUp::kind)
            .thenComparing(followUp -> followUp.testDate().orElse(LocalDate.MIN));

    private record Occasion(FollowUpKind kind, Audiogram test) {}

    private record Due(LocalDate date, Ears ears) {
        static Due earlierOf(Due one, LocalDate otherDate, Ear otherEar) {
            return new Due(one.date.isBefore(otherDate) ? one.date : otherDate, one.ears.and(otherEar));
        }
    }

    private final Map<Occasion, Due> dues = new LinkedHashMap<>();

    private FollowUps() {}

    static List<FollowUp> of(
            WorkerFacts worker,
            JudgingOptions options,
            List<Audiogram> tests,
            List<Determination> determinations,
            DecisionLookup decisions) {
        FollowUps followUps = new FollowUps();
        for (Determination determination : determinations) {
            if (determination instanceof Judged judged) {
                followUps.addFor(judged, decisions.on(() -> daysOf(judged, determinations), judged.ear()));
            }
        }
        List<FollowUp> all = new ArrayList<>();
        followUps.dues.forEach((occasion, due) ->
                all.add(new FollowUp(occasion.kind, due.date, Optional.of(occasion.test.date()), due.ears)));
        nextTest(worker, tests, options)
                .filter(next -> isStillOwed(next, worker, options.asOf()))
                .ifPresent(all::add);
        all.sort(BY_DATE_AND_KIND);
        return List.copyOf(all);
    }

    private void addFor(Judged judged, TestDecisions decided) {
        judged.dueDates().retestBy().ifPresent(date -> add(FollowUpKind.RETEST, judged, date));
        if (!decided.has(DecisionKind.NOTICE_GIVEN)) {
            judged.dueDates().notifyBy().ifPresent(date -> add(FollowUpKind.NOTICE, judged, date));
        }
        if (decided.entry().isEmpty()) {
            judged.dueDates().recordBy().ifPresent(date -> add(FollowUpKind.RECORD, judged, date));
        }
    }

    private void add(FollowUpKind kind, Judged judged, LocalDate date) {
        dues.compute(new Occasion(kind, judged.test()), (occasion, due) -> merged(due, date, judged.ear()));
    }

    private static Due merged(@Nullable Due due, LocalDate date, Ear ear) {
        return due == null ? new Due(date, Ears.of(ear)) : Due.earlierOf(due, date, ear);
    }

    /** A decision may name the test, any retest of it, or the test that settled the question of the log. */
    private static Set<LocalDate> daysOf(Judged judged, List<Determination> determinations) {
        Set<LocalDate> days = new HashSet<>();
        days.add(judged.test().date());
        judged.recording()
                .comparison()
                .ifPresent(comparison -> days.add(comparison.decidingTest().date()));
        for (Determination other : determinations) {
            if (other instanceof Determination.Retest retest
                    && retest.resolves().equals(judged.test())) {
                days.add(retest.test().date());
            }
        }
        return days;
    }

    private static Optional<FollowUp> nextTest(WorkerFacts worker, List<Audiogram> tests, JudgingOptions options) {
        TestSchedule schedule = options.ruleSet().tests();
        if (tests.isEmpty()) {
            return worker.enrolledFrom()
                    .map(from -> new FollowUp(
                            FollowUpKind.BASELINE_TEST,
                            schedule.baselineBy(from, options.holidays()),
                            Optional.empty(),
                            Ears.BOTH));
        }
        LocalDate last = tests.getLast().date();
        return Optional.of(new FollowUp(
                FollowUpKind.ANNUAL_TEST,
                schedule.nextBy(tests.getFirst().date(), last, options.holidays()),
                Optional.of(last),
                Ears.BOTH));
    }

    /** A test is owed neither to someone who has left nor to someone who will have left when it falls due. */
    private static boolean isStillOwed(FollowUp next, WorkerFacts worker, LocalDate asOf) {
        return worker.endDate()
                .map(end -> !asOf.isAfter(end) && !next.dueDate().isAfter(end))
                .orElse(true);
    }
}
