package org.thresholdregister.sample;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.judging.Judge;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.WorkerHistory;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.core.validity.SameDayTests;
import org.thresholdregister.core.validity.SameDayTests.OthersTest;
import org.thresholdregister.core.validity.TestConditions;
import org.thresholdregister.core.validity.TestFlags;
import org.thresholdregister.core.validity.TestValidity;
import org.thresholdregister.core.validity.Transducer;
import org.thresholdregister.core.validity.ValidityFlag.LooksLikeAnotherWorkers;

/**
 * How often the flags that are this register's own measure are right, on 6,000 invented workers who age, lose hearing to
 * noise, worsen for good in either ear and have bad days. Levels, spread and chance are those of the sample plant, which
 * follows ISO 7029:2000 and ISO 1999:2013; a real plant will differ. The rates stand in DEVELOPERS.md.
 */
class ValidityRatesTest {

    private static final int WORKERS = 6_000;
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 24);
    /** Workers with fewer tests give a comparison little to go by. */
    private static final int FEWEST_TESTS = 4;

    private static final TestConditions CONDITIONS = new TestConditions(
            Optional.of(BigDecimal.valueOf(16)),
            Optional.of(false),
            Transducer.SUPRA_AURAL,
            PerEar.from(ear -> Threshold.notGiven()));

    private record Person(String site, WorkerHistory history) {
        String id() {
            return history.worker().workerId();
        }

        List<Audiogram> tests() {
            return history.audiograms();
        }

        List<Audiogram> testsWithout(Audiogram test) {
            return tests().stream().filter(other -> !other.equals(test)).toList();
        }
    }

    /** Tests that something was done to, and how many of them were found. */
    private record Found(int of, int found) {
        static Found one(boolean isFound) {
            return new Found(1, isFound ? 1 : 0);
        }

        Found plus(Found other) {
            return new Found(of + other.of, found + other.found);
        }

        double share() {
            return (double) found / of;
        }
    }

    private record SiteDay(String site, LocalDate day) {}

    private static final Map<String, Person> PEOPLE = new LinkedHashMap<>();
    private static final Map<SiteDay, List<OthersTest>> DAYS = new LinkedHashMap<>();

    @BeforeAll
    static void employ() {
        Workforce workforce = new Workforce(WORKERS, true);
        for (int number = 1; number <= WORKERS; number++) {
            Worker worker = workforce.worker(number);
            List<Audiogram> tests =
                    worker.testsInOrder().stream().map(HearingTest::audiogram).toList();
            Person person = new Person(
                    worker.rosterCells().get(7), new WorkerHistory(worker.facts(), tests, worker.decisionsInOrder()));
            PEOPLE.put(person.id(), person);
            for (Audiogram test : tests) {
                DAYS.computeIfAbsent(new SiteDay(person.site(), test.date()), day -> new ArrayList<>())
                        .add(new OthersTest(person.id(), test, person.testsWithout(test)));
            }
        }
    }

    private static List<TestFlags> flags(WorkerHistory history, SameDayTests others) {
        return new TestValidity(
                        history,
                        Judge.judge(history, JudgingOptions.asOf(TODAY)),
                        test -> CONDITIONS,
                        RuleSets.OSHA.quiet(),
                        others)
                .ofAllTests();
    }

    private static boolean has(FlagKind kind, Audiogram test, List<TestFlags> flags) {
        return flags.stream()
                .filter(of -> of.test().equals(test))
                .flatMap(of -> of.flags().stream())
                .anyMatch(flag -> flag.kind() == kind);
    }

    /** Nothing was done to these tests; each flag of an exchange is a false alarm. */
    @Test
    void falseAlarmsAreRare() {
        Map<FlagKind, Integer> tests = new HashMap<>();
        int number = 0;
        for (Person person : PEOPLE.values()) {
            SameDayTests others = day -> DAYS.get(new SiteDay(person.site(), day)).stream()
                    .filter(other -> !other.workerId().equals(person.id()))
                    .toList();
            for (TestFlags flags : flags(person.history(), others)) {
                number++;
                flags.flags().stream()
                        .map(flag -> flag.kind())
                        .distinct()
                        .forEach(kind -> tests.merge(kind, 1, Integer::sum));
            }
        }
        assertThat(number).isGreaterThan(40_000);
        assertThat(share(tests, FlagKind.EARS_SWAPPED, number)).isLessThan(0.0002);
        assertThat(share(tests, FlagKind.EXCHANGED_WITH_ANOTHER, number)).isLessThan(0.0002);
        assertThat(share(tests, FlagKind.LIKE_ANOTHER, number)).isLessThan(0.002);
        assertThat(share(tests, FlagKind.ROOM_NOISE, number)).isLessThan(0.0002);
    }

    private static double share(Map<FlagKind, Integer> tests, FlagKind kind, int of) {
        return (double) tests.getOrDefault(kind, 0) / of;
    }

    /** One test of each worker has its ears exchanged. By the mean difference between the ears on that test. */
    @Test
    void exchangedEarsAreFoundWhereTheEarsDiffer() {
        Map<Integer, Found> byDifference = new TreeMap<>();
        Random random = new Random(1);
        for (Person person : PEOPLE.values()) {
            List<Audiogram> tests = new ArrayList<>(person.tests());
            if (tests.size() < FEWEST_TESTS) {
                continue;
            }
            int chosen = random.nextInt(tests.size());
            Audiogram exchanged = earsExchanged(tests.get(chosen));
            tests.set(chosen, exchanged);
            WorkerHistory history = new WorkerHistory(
                    person.history().worker(), tests, person.history().decisions());
            boolean found = has(FlagKind.EARS_SWAPPED, exchanged, flags(history, SameDayTests.NONE));
            byDifference.merge(
                    step(meanDifference(exchanged, earsExchanged(exchanged))), Found.one(found), Found::plus);
        }
        assertThat(byDifference.get(0).share()).isLessThan(0.01);
        assertThat(byDifference.get(4).share()).isBetween(0.1, 0.4);
        assertThat(byDifference.get(8).share()).isGreaterThan(0.7);
        assertThat(byDifference.get(12).share()).isGreaterThan(0.95);
        assertThat(byDifference.get(16).share()).isGreaterThan(0.95);
    }

    /** On each day at each site two people's tests are filed under each other's numbers. */
    @Test
    void testsFiledUnderEachOthersNumbersAreFoundWhereTheyDiffer() {
        Map<Integer, Found> byDifference = new TreeMap<>();
        int wrongPerson = 0;
        Random random = new Random(2);
        for (List<OthersTest> day : DAYS.values()) {
            List<OthersTest> shuffled = new ArrayList<>(day);
            Collections.shuffle(shuffled, random);
            List<OthersTest> pair = shuffled.stream()
                    .filter(test -> test.otherTests().size() >= FEWEST_TESTS - 1)
                    .limit(2)
                    .toList();
            if (pair.size() < 2
                    || pair.getFirst().workerId().equals(pair.getLast().workerId())) {
                continue;
            }
            Optional<LooksLikeAnotherWorkers> flag = flagOfExchanged(pair.getFirst(), pair.getLast(), day);
            wrongPerson += flag.isPresent()
                            && !flag.get().otherWorkerId().equals(pair.getLast().workerId())
                    ? 1
                    : 0;
            byDifference.merge(
                    step(meanDifference(pair.getFirst().test(), pair.getLast().test())),
                    Found.one(flag.isPresent()),
                    Found::plus);
        }
        assertThat(byDifference.get(4).share()).isLessThan(0.05);
        assertThat(byDifference.get(8).share()).isBetween(0.15, 0.3);
        assertThat(byDifference.get(12).share()).isGreaterThan(0.75);
        assertThat(byDifference.get(16).share()).isGreaterThan(0.9);
        assertThat(byDifference.get(20).share()).isGreaterThan(0.95);
        assertThat(wrongPerson).isLessThan(5);
    }

    private static Optional<LooksLikeAnotherWorkers> flagOfExchanged(
            OthersTest one, OthersTest other, List<OthersTest> day) {
        Person person = PEOPLE.get(one.workerId());
        Audiogram wrong = withLevelsOf(other.test(), one.test());
        List<OthersTest> others = day.stream()
                .filter(test -> !test.workerId().equals(one.workerId()))
                .map(test -> test.equals(other)
                        ? new OthersTest(other.workerId(), withLevelsOf(one.test(), other.test()), other.otherTests())
                        : test)
                .toList();
        List<Audiogram> tests =
                Stream.concat(one.otherTests().stream(), Stream.of(wrong)).toList();
        WorkerHistory history = new WorkerHistory(
                person.history().worker(), tests, person.history().decisions());
        return flags(history, asked -> others).stream()
                .filter(flags -> flags.test().equals(wrong))
                .flatMap(flags -> flags.flags().stream())
                .filter(flag -> flag.kind() == FlagKind.EXCHANGED_WITH_ANOTHER)
                .map(LooksLikeAnotherWorkers.class::cast)
                .findFirst();
    }

    private static Audiogram withLevelsOf(Audiogram levels, Audiogram test) {
        Audiogram made = test;
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                made = made.with(ear, frequency, levels.threshold(ear, frequency));
            }
        }
        return made;
    }

    private static Audiogram earsExchanged(Audiogram test) {
        Audiogram exchanged = test;
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                exchanged = exchanged.with(ear, frequency, test.threshold(ear.other(), frequency));
            }
        }
        return exchanged;
    }

    /** In steps of 4 dB. */
    private static int step(double decibels) {
        return (int) (decibels / 4) * 4;
    }

    private static double meanDifference(Audiogram one, Audiogram other) {
        List<Integer> differences = new ArrayList<>();
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                one.threshold(ear, frequency)
                        .range()
                        .minus(other.threshold(ear, frequency).range())
                        .exact()
                        .ifPresent(difference -> differences.add(Math.abs(difference)));
            }
        }
        return differences.stream().mapToInt(Integer::intValue).average().orElse(0);
    }
}
