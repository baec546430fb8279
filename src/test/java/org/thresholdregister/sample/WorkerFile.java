package org.thresholdregister.sample;

import static java.time.temporal.ChronoUnit.DAYS;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** One worker's line, tests and decisions, in order. */
record WorkerFile(Row roster, List<Row> tests, List<Row> decisions) {

    static final List<String> EARS = List.of("left", "right");
    static final List<String> FREQUENCIES = List.of("500", "1000", "2000", "3000", "4000", "6000", "8000");

    LocalDate enrolled() {
        return roster.date("enrolled_from");
    }

    LocalDate born() {
        return roster.date("birth_date");
    }

    LocalDate day(int test) {
        return tests.get(test).date("test_date");
    }

    String purpose(int test) {
        return cell(test, "purpose");
    }

    String cell(int test, String column) {
        return tests.get(test).get(column);
    }

    long count(String purpose) {
        return tests.stream().filter(test -> test.has("purpose", purpose)).count();
    }

    List<Row> testsIn(String year) {
        return tests.stream()
                .filter(test -> test.get("test_date").startsWith(year))
                .toList();
    }

    int in(String year) {
        return testsIn(year).size();
    }

    Row only(String year) {
        if (in(year) != 1) {
            throw new IllegalArgumentException(in(year) + " tests in " + year);
        }
        return testsIn(year).getFirst();
    }

    long decisionsOf(String kind) {
        return decisions.stream().filter(decision -> decision.has("kind", kind)).count();
    }

    boolean decided(String kind) {
        return decisionsOf(kind) > 0;
    }

    /** The place of a retest among the tests, counting retests from 0. */
    int retest(int which) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < tests.size(); i++) {
            if (purpose(i).equals("retest")) {
                places.add(i);
            }
        }
        return places.get(which);
    }

    long daysToRetest(int which) {
        return DAYS.between(day(retest(which) - 1), day(retest(which)));
    }

    int levelSum(String ear, int test) {
        return tests.get(test).levelSum(ear);
    }

    /** Whether the mean at 2000, 3000 and 4000 Hz is 10 dB or more above the first test's; nothing for age. */
    boolean shifted(String ear, int test) {
        return levelSum(ear, test) - levelSum(ear, 0) >= 30;
    }

    boolean shiftedEither(Row test) {
        return EARS.stream().anyMatch(ear -> test.levelSum(ear) - levelSum(ear, 0) >= 30);
    }

    boolean shiftedAnyBeforeRetest(int which) {
        return shiftedEither(tests.get(retest(which) - 1));
    }

    Stream<Row> comparedTests() {
        return tests.stream().skip(1);
    }

    int earDifference(String year) {
        return only(year).levelSum("left") - only(year).levelSum("right");
    }
}
