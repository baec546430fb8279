package org.thresholdregister.review;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.Determination.Resolution;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;

/**
 * How a worker stands, in a sentence that a person could say: {@code Left ear: shift confirmed on 12 May 2026,
 * recordable; written notice is 5 days overdue.}
 *
 * @param found how the ears stand, by the latest test that each was judged on; an ear without a shift is left out where
 *     there is something to say of the other
 * @param owed what is overdue or due within thirty days, else what comes next
 */
public record OpeningSentence(String found, String owed) {

    private static final long SOON_DAYS = 30;

    public static OpeningSentence of(WorkerRecord record) {
        String left = record.details()
                .endDate()
                .filter(end -> end.isBefore(record.asOf()))
                .map(end -> "left employment on " + Words.day(end) + "; ")
                .orElse("");
        return new OpeningSentence(Words.capitalised(left + found(record)), owed(record));
    }

    /** The whole sentence. */
    public String text() {
        return found + "; " + owed + ".";
    }

    private static String found(WorkerRecord record) {
        if (record.tests().isEmpty()) {
            return "no hearing test is on record";
        }
        Map<Ear, Determination> latest = new EnumMap<>(Ear.class);
        record.judgement().determinations().stream()
                .filter(determination -> !(determination instanceof Determination.Retest))
                .forEach(determination -> latest.put(determination.ear(), determination));
        if (latest.isEmpty()) {
            return "no test on record is judged";
        }
        String right = of(Optional.ofNullable(latest.get(Ear.RIGHT)));
        String left = of(Optional.ofNullable(latest.get(Ear.LEFT)));
        if (right.equals(left)) {
            return "both ears: " + right;
        }
        List<String> ears = new ArrayList<>();
        if (!isQuiet(latest.get(Ear.RIGHT)) || isQuiet(latest.get(Ear.LEFT))) {
            ears.add("right ear: " + right);
        }
        if (!isQuiet(latest.get(Ear.LEFT)) || isQuiet(latest.get(Ear.RIGHT))) {
            ears.add("left ear: " + left);
        }
        return String.join("; ", ears);
    }

    private static boolean isQuiet(@Nullable Determination determination) {
        return determination instanceof Judged judged
                && judged.outcome() == Outcome.NO_SHIFT
                && judged.recording().answer() == Recordability.NO;
    }

    private static String of(Optional<Determination> latest) {
        return latest.map(OpeningSentence::inWords).orElse("no test is judged");
    }

    private static String inWords(Determination determination) {
        String day = Words.day(determination.test().date());
        return switch (determination) {
            case Judged judged -> judged(judged, day);
            case Determination.BaselineTest ignored -> "baseline of " + day + ", nothing to compare with it yet";
            case Determination.BeforeBaseline ignored -> "tested on " + day + ", before any baseline";
            case Determination.Retest ignored -> "retest of " + day;
        };
    }

    private static String judged(Judged judged, String day) {
        return switch (judged.outcome()) {
            case CONFIRMED ->
                (judged.resolution() instanceof Resolution.ByRetest
                                ? "shift confirmed on "
                                        + Words.day(judged.settledBy().date())
                                : "shift of " + day + " stands without a retest")
                        + ", " + FindingWords.forTheLog(judged);
            case AWAITING_RETEST -> "shift found on " + day + ", awaiting retest";
            case NOT_CONFIRMED ->
                "shift of " + day + " not confirmed by the retest of "
                        + Words.day(judged.settledBy().date()) + unlessNo(judged);
            case NO_SHIFT -> "no shift on " + day + unlessNo(judged);
            case UNDECIDED -> "undecided on " + day;
            case BASELINE, BEFORE_BASELINE, RETEST ->
                throw new IllegalArgumentException("not judged by itself: " + judged.outcome());
        };
    }

    private static String unlessNo(Judged judged) {
        return judged.recording().answer() == Recordability.NO ? "" : ", " + FindingWords.forTheLog(judged);
    }

    private static String owed(WorkerRecord record) {
        List<FollowUp> followUps = record.judgement().followUps();
        LocalDate today = record.asOf();
        if (followUps.isEmpty()) {
            return CaseWords.owedWithoutDate(record.cases()).orElse("nothing is owed");
        }
        Map<FollowUpKind, List<FollowUp>> pressing = followUps.stream()
                .filter(followUp -> daysLeft(followUp, today) <= SOON_DAYS)
                .sorted(Comparator.comparing(FollowUp::dueDate))
                .collect(Collectors.groupingBy(FollowUp::kind, LinkedHashMap::new, Collectors.toList()));
        if (pressing.isEmpty()) {
            FollowUp next = followUps.stream()
                    .min(Comparator.comparing(FollowUp::dueDate))
                    .orElseThrow();
            return "next is the " + Words.followUp(next.kind()) + " by " + Words.day(next.dueDate());
        }
        return pressing.values().stream()
                .map(ofKind -> owed(ofKind.getFirst(), ofKind.size(), today))
                .collect(Collectors.joining("; "));
    }

    private static String owed(FollowUp first, int count, LocalDate today) {
        long days = daysLeft(first, today);
        if (first.kind() == FollowUpKind.RETEST) {
            return "a retest may take its place until " + Words.day(first.dueDate());
        }
        if (count > 1) {
            return Counted.followUps(first.kind(), count) + " are owed, the first " + Counted.daysLeft(days);
        }
        return Words.followUp(first.kind()) + " is "
                + (days > 0 ? "due in " + Counted.of(Math.toIntExact(days), "day", "days") : Counted.daysLeft(days));
    }

    private static long daysLeft(FollowUp followUp, LocalDate today) {
        return ChronoUnit.DAYS.between(today, followUp.dueDate());
    }
}
