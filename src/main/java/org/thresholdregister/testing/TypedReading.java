package org.thresholdregister.testing;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.thresholdregister.audiograms.TestFacts;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.HearingLevel;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.audiometry.Threshold.NotTested.Reason;
import org.thresholdregister.testing.EntryProblem.Kind;
import org.thresholdregister.testing.EntryProblem.Place;

/**
 * What a typed test says. A threshold that cannot be read counts as not given here, and stands among the problems.
 *
 * @param audiogram the test as far as it is typed; none while its day or purpose is not
 * @param problems what keeps it from being signed, in the order of the page
 */
record TypedReading(Optional<Audiogram> audiogram, TestFacts facts, List<EntryProblem> problems) {

    private static final Pattern LEVEL = Pattern.compile("-?\\d{1,3}");
    private static final Pattern HOURS = Pattern.compile("\\d{1,4}([.,]\\d{1,2})?");

    static TypedReading of(TypedTest typed, LocalDate today, Optional<LocalDate> birthDate) {
        List<EntryProblem> problems = new ArrayList<>();
        TypedThresholds thresholds = typed.thresholds();
        if (thresholds.count() == 0) {
            problems.add(EntryProblem.of(Kind.NOTHING_TYPED));
        }
        Optional<LocalDate> date = date(typed.date(), today, birthDate, problems);
        if (typed.purpose().isEmpty()) {
            problems.add(EntryProblem.of(Kind.PURPOSE_MISSING));
        }
        var builder = new Audiogram.Builder(date.orElse(today), typed.purpose().orElse(TestPurpose.OTHER));
        for (Ear ear : TypedThresholds.EARS) {
            for (Frequency frequency : Frequency.values()) {
                builder.set(
                        ear,
                        frequency,
                        read(thresholds.at(ear, frequency), new Place(ear, frequency, false), problems));
            }
        }
        PerEar<Threshold> repeat = PerEar.from(
                ear -> read(thresholds.repeatAt1000Hz(ear), new Place(ear, Frequency.HZ_1000, true), problems));
        Optional<BigDecimal> hours = hours(typed.hours(), problems);
        if (typed.tester().isBlank()) {
            problems.add(EntryProblem.of(Kind.TESTER_MISSING));
        }
        TestFacts facts = new TestFacts(
                hours,
                typed.protectorsWorn(),
                typed.tester().strip(),
                typed.instrument().strip(),
                typed.transducer().strip(),
                typed.room().strip(),
                typed.remark().strip(),
                repeat);
        return new TypedReading(
                date.isPresent() && typed.purpose().isPresent() ? Optional.of(builder.build()) : Optional.empty(),
                facts,
                List.copyOf(problems));
    }

    private static Optional<LocalDate> date(
            Optional<LocalDate> given, LocalDate today, Optional<LocalDate> birthDate, List<EntryProblem> problems) {
        if (given.isEmpty()) {
            problems.add(EntryProblem.of(Kind.DATE_MISSING));
            return Optional.empty();
        }
        LocalDate date = given.get();
        if (date.isAfter(today)) {
            problems.add(EntryProblem.of(Kind.DATE_TO_COME));
            return Optional.empty();
        }
        if (birthDate.filter(date::isBefore).isPresent()) {
            problems.add(EntryProblem.of(Kind.DATE_BEFORE_BIRTH));
            return Optional.empty();
        }
        return given;
    }

    private static Threshold read(String text, Place place, List<EntryProblem> problems) {
        Optional<Threshold> threshold = threshold(text);
        if (threshold.isEmpty()) {
            problems.add(new EntryProblem(Kind.NO_THRESHOLD, Optional.of(place)));
        }
        return threshold.orElse(Threshold.notGiven());
    }

    /** What is typed for one threshold; empty where it is none. */
    static Optional<Threshold> threshold(String typed) {
        String text = typed.strip().toUpperCase(Locale.ROOT);
        if (text.startsWith(">")) {
            return level(text.substring(1)).map(Threshold::noResponseAt);
        }
        return switch (text) {
            case "" -> Optional.of(Threshold.notGiven());
            case "NR" -> Optional.of(Threshold.noResponse());
            case "DNT" -> Optional.of(Threshold.notTested(Reason.DID_NOT_TEST));
            case "CNT" -> Optional.of(Threshold.notTested(Reason.COULD_NOT_TEST));
            default -> level(text).map(Threshold::measured);
        };
    }

    private static Optional<Integer> level(String text) {
        return Optional.of(text)
                .filter(LEVEL.asMatchPredicate())
                .map(Integer::valueOf)
                .filter(HearingLevel::isInRange);
    }

    private static Optional<BigDecimal> hours(String text, List<EntryProblem> problems) {
        if (text.isBlank()) {
            return Optional.empty();
        }
        if (!HOURS.matcher(text.strip()).matches()) {
            problems.add(EntryProblem.of(Kind.NO_HOURS));
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(text.strip().replace(',', '.')).stripTrailingZeros());
    }
}
