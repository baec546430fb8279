package org.thresholdregister.core.judging;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.recording.Recordability;

/** When time alone may change a judgement, with the record as it is. */
public final class NextChange {

    private NextChange() {}

    /**
     * The first day after {@code asOf} on which judging the same history may answer otherwise; empty where it never
     * will. What is overdue on a day is not part of a judgement.
     *
     * @param judgement of this history as of that day
     */
    public static Optional<LocalDate> after(LocalDate asOf, WorkerHistory history, WorkerJudgement judgement) {
        Stream<LocalDate> windowsClosed = judgement.determinations().stream()
                .filter(NextChange::awaitsRetest)
                .flatMap(determination -> determination.ruleSet().retest().stream()
                        .map(retest ->
                                retest.lastDay(determination.test().date()).plusDays(1)));
        Stream<LocalDate> left = history.worker().endDate().map(end -> end.plusDays(1)).stream();
        Stream<LocalDate> testsSeen = history.audiograms().stream().map(Audiogram::date);
        Stream<LocalDate> decisionsSeen = history.decisions().stream().map(Decision::decidedOn);
        return Stream.of(windowsClosed, left, testsSeen, decisionsSeen)
                .flatMap(days -> days)
                .filter(day -> day.isAfter(asOf))
                .min(LocalDate::compareTo);
    }

    private static boolean awaitsRetest(Determination determination) {
        return determination instanceof Judged judged
                && (judged.outcome() == Outcome.AWAITING_RETEST
                        || judged.recording().answer() == Recordability.AWAITING_RETEST);
    }
}
