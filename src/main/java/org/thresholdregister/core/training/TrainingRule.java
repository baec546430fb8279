package org.thresholdregister.core.training;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.Deadline;
import org.thresholdregister.core.rules.Holidays;
import org.thresholdregister.core.rules.RuleSet;

/**
 * How often a rule set asks for training.
 *
 * @param first from the first day at the action level; empty where the rule names no time, so that it is due on that day
 * @param again from the last training
 * @param offeredYearly whether it is to be offered each calendar year besides, 280 to 450 days apart; offers are not kept
 * @param certified whether the date and the kind of training are certified
 */
public record TrainingRule(
        Optional<Deadline> first,
        Deadline again,
        boolean offeredYearly,
        boolean certified,
        Citation basis,
        Provenance provenance) {

    /** 29 CFR 1910.95(k)(1) and (2): annually; no time is named for the first. */
    private static final TrainingRule OSHA = new TrainingRule(
            Optional.empty(),
            new Deadline.Months(12),
            false,
            false,
            new Citation("29 CFR 1910.95(k)(2)"),
            Provenance.LOOKED_UP);

    /** Within 30 days of enrolment, then every 12 months, certified. */
    private static final TrainingRule MSHA = new TrainingRule(
            Optional.of(new Deadline.CalendarDays(30)),
            new Deadline.Months(12),
            false,
            true,
            new Citation("30 CFR 62.180"),
            Provenance.LOOKED_UP);

    /** Offered each calendar year, and required at least every 1095 days; within six months of the first tour. */
    private static final TrainingRule FRA = new TrainingRule(
            Optional.of(new Deadline.Months(6)),
            new Deadline.CalendarDays(1095),
            true,
            false,
            new Citation("49 CFR 227.119"),
            Provenance.LOOKED_UP);

    /** Empty for rule sets of which this program knows no such duty. */
    public static Optional<TrainingRule> of(RuleSet rules) {
        return switch (rules.word()) {
            case "osha" -> Optional.of(OSHA);
            case "msha" -> Optional.of(MSHA);
            case "fra" -> Optional.of(FRA);
            default -> Optional.empty();
        };
    }

    /**
     * The last day for a worker's next training. What one training leaves out another may cover: the time runs from the
     * day by which every topic had last been covered.
     *
     * @param enrolledFrom first day at or above the action level
     */
    public LocalDate due(LocalDate enrolledFrom, Collection<Training> trainings, Holidays holidays) {
        LocalDate firstBy =
                first.map(deadline -> deadline.after(enrolledFrom, holidays)).orElse(enrolledFrom);
        return coveredOn(trainings)
                .map(last -> again.after(last, holidays))
                .filter(next -> next.isAfter(firstBy))
                .orElse(firstBy);
    }

    /** The earliest of the days on which each topic was last covered; empty while one never was. */
    public static Optional<LocalDate> coveredOn(Collection<Training> trainings) {
        var lastByTopic = Arrays.stream(TrainingTopic.values())
                .map(topic -> trainings.stream()
                        .filter(training -> training.topics().contains(topic))
                        .map(Training::day)
                        .max(Comparator.naturalOrder()))
                .toList();
        return lastByTopic.stream().allMatch(Optional::isPresent)
                ? lastByTopic.stream().flatMap(Optional::stream).min(Comparator.naturalOrder())
                : Optional.empty();
    }
}
