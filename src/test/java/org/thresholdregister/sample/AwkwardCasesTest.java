package org.thresholdregister.sample;

import static java.time.temporal.ChronoUnit.DAYS;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Reads the cases that the sample's README promises, and looks for each in the files of the workers it names. */
class AwkwardCasesTest {

    private static final LocalDate LAST_DAY = LocalDate.of(2026, 11, 20);
    private static final Pattern CASE = Pattern.compile("\\| ([a-z0-9 ]+) \\| (FG-\\d{4}(?:, FG-\\d{4})*) \\| .+ \\|");

    @TestFactory
    Stream<DynamicTest> everyCaseThatTheReadmeNamesIsThere() throws IOException {
        Map<String, Predicate<WorkerFile>> checks = checks();
        Map<String, List<String>> promised = promisedCases();
        assertThat(promised.keySet()).containsExactlyElementsOf(checks.keySet());
        return checks.entrySet().stream()
                .map(check -> DynamicTest.dynamicTest(
                        check.getKey(),
                        () -> assertThat(promised.getOrDefault(check.getKey(), List.of()))
                                .isNotEmpty()
                                .allMatch(id -> check.getValue().test(SampleFiles.worker(id)))));
    }

    private static Map<String, List<String>> promisedCases() throws IOException {
        Map<String, List<String>> promised = new LinkedHashMap<>();
        for (String line : Files.readAllLines(SampleFiles.DIRECTORY.resolve("README.md"))) {
            Matcher matcher = CASE.matcher(line);
            if (matcher.matches()) {
                promised.put(matcher.group(1), List.of(matcher.group(2).split(", ")));
            }
        }
        return promised;
    }

    private static Map<String, Predicate<WorkerFile>> checks() {
        Map<String, Predicate<WorkerFile>> checks = new LinkedHashMap<>();
        checks.put(
                "late baseline",
                worker -> worker.day(0).isAfter(worker.enrolled().plusMonths(6)));
        checks.put(
                "enrolled lately",
                worker -> worker.tests().isEmpty() && worker.enrolled().isAfter(LAST_DAY.minusMonths(2)));
        checks.put(
                "baseline overdue",
                worker -> worker.tests().isEmpty() && worker.enrolled().isBefore(LAST_DAY.minusMonths(6)));
        checks.put("no baseline declared", worker -> worker.count("baseline") == 0 && worker.count("annual") == 10);
        checks.put(
                "test before baseline",
                worker ->
                        worker.purpose(0).equals("annual") && worker.purpose(1).equals("baseline"));
        checks.put(
                "missed years",
                worker -> worker.in("2018") == 1
                        && worker.in("2019") + worker.in("2020") + worker.in("2021") == 0
                        && worker.in("2022") == 1);
        checks.put(
                "long overdue",
                worker -> worker.day(worker.tests().size() - 1).isBefore(LAST_DAY.minusMonths(18))
                        && worker.roster().isBlank("end_date"));
        checks.put("retest confirms", worker -> {
            int retest = worker.retest(0);
            return worker.shifted("left", retest - 1) && worker.shifted("left", retest) && worker.daysToRetest(0) <= 30;
        });
        checks.put("retest clears", worker -> {
            int retest = worker.retest(0);
            return worker.shifted("left", retest - 1)
                    && !worker.shifted("left", retest)
                    && worker.daysToRetest(0) <= 30;
        });
        checks.put("retest on the same day", worker -> worker.shiftedAnyBeforeRetest(0) && worker.daysToRetest(0) == 0);
        checks.put("retest on day 30", worker -> worker.shiftedAnyBeforeRetest(0) && worker.daysToRetest(0) == 30);
        checks.put("retest on day 31", worker -> worker.shiftedAnyBeforeRetest(0) && worker.daysToRetest(0) == 31);
        checks.put("two retests", worker -> {
            int first = worker.retest(0);
            int second = worker.retest(1);
            return second == first + 1
                    && DAYS.between(worker.day(first - 1), worker.day(second)) <= 30
                    && worker.shifted("left", first)
                    && !worker.shifted("left", second);
        });
        checks.put("retest of one ear", worker -> {
            int retest = worker.retest(0);
            return worker.shifted("left", retest - 1)
                    && worker.shifted("right", retest - 1)
                    && worker.cell(retest, "right_4000").equals("CNT")
                    && !worker.shifted("left", retest);
        });
        checks.put("retest finds the other ear", worker -> {
            int retest = worker.retest(0);
            return worker.shifted("left", retest - 1)
                    && !worker.shifted("right", retest - 1)
                    && !worker.shifted("left", retest)
                    && worker.shifted("right", retest);
        });
        checks.put("retest after a late retest", worker -> {
            int late = worker.retest(0);
            return worker.daysToRetest(0) == 41
                    && worker.shifted("left", late)
                    && DAYS.between(worker.day(late), worker.day(worker.retest(1))) <= 30
                    && !worker.shifted("left", worker.retest(1));
        });
        checks.put(
                "retest without a shift", worker -> !worker.shiftedAnyBeforeRetest(0) && worker.daysToRetest(0) <= 30);
        checks.put("retest in the next year", worker -> {
            int retest = worker.retest(0);
            return worker.day(retest).getYear() == worker.day(retest - 1).getYear() + 1
                    && worker.daysToRetest(0) <= 30
                    && worker.shifted("right", retest - 1)
                    && worker.shifted("right", retest);
        });
        checks.put("no retest", worker -> {
            int last = worker.tests().size() - 1;
            return worker.count("retest") == 0 && worker.shifted("left", last - 1) && !worker.shifted("left", last);
        });
        checks.put("retest open", worker -> {
            int last = worker.tests().size() - 1;
            return worker.purpose(last).equals("annual")
                    && worker.shifted("left", last)
                    && !worker.day(last).isBefore(LAST_DAY.minusDays(21));
        });
        checks.put(
                "no response",
                worker -> !worker.only("2020").has("left_4000", ">95")
                        && worker.only("2022").has("left_4000", ">95")
                        && worker.only("2026").has("right_4000", ">95"));
        checks.put(
                "no response at baseline",
                worker -> worker.cell(0, "left_4000").equals(">95")
                        && worker.purpose(0).equals("baseline"));
        checks.put("no response without a level", worker -> worker.only("2022").has("right_4000", "NR"));
        checks.put("did not test", worker -> worker.only("2021").has("left_3000", "DNT"));
        checks.put(
                "could not test",
                worker -> WorkerFile.FREQUENCIES.stream()
                        .allMatch(frequency -> worker.only("2024").has("right_" + frequency, "CNT")));
        checks.put("blank threshold", worker -> worker.only("2019").isBlank("left_2000"));
        checks.put(
                "swapped ears",
                worker -> worker.earDifference("2019") >= 60
                        && worker.earDifference("2020") <= -60
                        && worker.earDifference("2021") >= 60);
        checks.put(
                "invalid test",
                worker -> worker.decided("invalid-test")
                        && worker.testsIn("2023").stream()
                                .anyMatch(test ->
                                        test.get("test_date").startsWith("2023-11") && test.has("instrument", "A-1"))
                        && worker.in("2024") == 1);
        checks.put("left with a shift", worker -> {
            int last = worker.tests().size() - 1;
            return worker.purpose(last).equals("exit")
                    && worker.shifted("left", last)
                    && !worker.roster().isBlank("end_date");
        });
        checks.put("leaves soon", worker -> {
            LocalDate end = worker.roster().date("end_date");
            return end.isAfter(LAST_DAY)
                    && worker.day(worker.tests().size() - 1).plusYears(1).isAfter(end);
        });
        checks.put(
                "rehired",
                worker -> worker.in("2017") == 1
                        && worker.in("2018")
                                        + worker.in("2019")
                                        + worker.in("2020")
                                        + worker.in("2021")
                                        + worker.in("2022")
                                == 0
                        && worker.in("2023") == 1);
        checks.put("two baselines", worker -> worker.count("baseline") == 2);
        checks.put(
                "better than the baseline",
                worker -> worker.levelSum("left", 0) - 15
                        >= worker.tests().stream()
                                .skip(1)
                                .mapToInt(test -> test.levelSum("left"))
                                .max()
                                .orElseThrow());
        checks.put("other test", worker -> worker.count("other") == 1);
        checks.put("over 60", worker -> worker.born().plusYears(60).isBefore(worker.day(0)));
        checks.put("under 20", worker -> worker.born().plusYears(19).isAfter(worker.day(0)));
        checks.put(
                "no birth date",
                worker -> worker.roster().isBlank("birth_date")
                        && worker.comparedTests().noneMatch(worker::shiftedEither));
        checks.put(
                "no birth date and a shift",
                worker -> worker.roster().isBlank("birth_date")
                        && worker.comparedTests().anyMatch(worker::shiftedEither));
        checks.put(
                "no sex",
                worker ->
                        worker.roster().isBlank("sex") && worker.comparedTests().anyMatch(worker::shiftedEither));
        checks.put(
                "no site",
                worker -> Stream.of("site", "department", "job_title", "noise_group", "twa_dba")
                        .allMatch(column -> worker.roster().isBlank(column)));
        checks.put(
                "same name",
                worker -> SampleFiles.ROSTER.stream()
                                .filter(other -> other.get("family_name")
                                                .equals(worker.roster().get("family_name"))
                                        && other.get("given_name")
                                                .equals(worker.roster().get("given_name")))
                                .count()
                        == 2);
        checks.put("lined out", worker -> {
            int retest = worker.retest(0);
            return worker.shifted("left", retest)
                    && !worker.shifted("left", retest + 1)
                    && worker.decided("recorded")
                    && worker.decided("lined-out");
        });
        checks.put(
                "not work related",
                worker -> worker.shifted("right", worker.retest(0))
                        && !worker.shifted("left", worker.retest(0))
                        && worker.count("annual") == 9
                        && worker.decisionsOf("not-work-related") == 3);
        checks.put(
                "two cases in one ear",
                worker -> worker.levelSum("left", worker.retest(0)) - worker.levelSum("left", 0) >= 30
                        && worker.levelSum("left", worker.retest(1)) - worker.levelSum("left", worker.retest(0)) >= 30);
        checks.put("case not entered", worker -> {
            int retest = worker.tests().size() - 1;
            return worker.shifted("right", retest)
                    && worker.levelSum("right", retest) >= 75
                    && worker.day(retest).plusDays(7).isBefore(LAST_DAY)
                    && !worker.decided("recorded");
        });
        checks.put("case just found", worker -> {
            int retest = worker.tests().size() - 1;
            return worker.shifted("left", retest)
                    && worker.levelSum("left", retest) >= 75
                    && worker.day(retest).equals(LAST_DAY)
                    && !worker.decided("recorded");
        });
        checks.put(
                "small group",
                worker -> SampleFiles.ROSTER.stream()
                                        .filter(other -> other.has("site", "Quarry Road")
                                                && other.has("department", "Maintenance"))
                                        .count()
                                == 4
                        && worker.roster().has("noise_group", "MT-2"));
        return checks;
    }
}
