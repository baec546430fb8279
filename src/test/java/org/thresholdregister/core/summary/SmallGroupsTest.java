package org.thresholdregister.core.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.regulation.Answer;

class SmallGroupsTest {

    private static final int YEAR = 2026;
    private static final int ROUNDS = 4000;

    /** Large enough that no small integer is a multiple of it, small enough that products fit a long. */
    private static final long PRIME = 1_000_003;

    @Test
    void groupsOfFiveAreShown() {
        List<SummaryRow> rows = rows(plant("Works", 5, 6, 40), plant("Quarry", 5));

        assertThat(SmallGroups.hide(rows)).isEqualTo(rows);
    }

    @Test
    void theNextSmallestHidesBesideTheOnlySmallDepartment() {
        assertThat(hiddenOf(plant("Works", 4, 9, 7, 40)))
                .containsExactlyInAnyOrder(group("Works", 0), group("Works", 2));
    }

    @Test
    void twoSmallDepartmentsHideOneAnotherWhereTheyAreFiveTogether() {
        assertThat(hiddenOf(plant("Works", 2, 3, 7, 40)))
                .containsExactlyInAnyOrder(group("Works", 0), group("Works", 1));
    }

    @Test
    void smallDepartmentsOfFewerThanFiveTogetherTakeTheNextSmallestWithThem() {
        assertThat(hiddenOf(plant("Works", 1, 2, 7, 40)))
                .containsExactlyInAnyOrder(group("Works", 0), group("Works", 1), group("Works", 2));
    }

    @Test
    void aSmallSiteHidesTheNextSmallestSiteAndWhatWouldAddUpToIt() {
        assertThat(hiddenOf(plant("Depot", 3), plant("Works", 30, 40), plant("Quarry", 9, 8)))
                .containsExactlyInAnyOrder(group("Depot", 0), site("Depot"), site("Quarry"), group("Quarry", 1));
    }

    @Test
    void theOnlySiteAndTheTotalAreTheSameGroup() {
        assertThat(hiddenOf(plant("Works", 4)))
                .containsExactlyInAnyOrder(group("Works", 0), site("Works"), Group.EVERYBODY);
        assertThat(hiddenOf(plant("Works", 4, 9))).containsExactlyInAnyOrder(group("Works", 0), group("Works", 1));
    }

    @Test
    void workersOfNoSiteAreAGroupToo() {
        assertThat(hiddenOf(plant(Group.NONE, 2), plant("Works", 30, 40)))
                .containsExactlyInAnyOrder(group(Group.NONE, 0), site(Group.NONE), site("Works"), group("Works", 0));
    }

    @Test
    void everyCountOfAHiddenGroupIsHiddenAndNoOther() {
        List<SummaryRow> rows = rows(plant("Works", 4, 9, 7, 40));
        List<SummaryRow> released = SmallGroups.hide(rows);

        assertThat(released).hasSameSizeAs(rows);
        for (int i = 0; i < rows.size(); i++) {
            SummaryRow row = rows.get(i);
            Count expected =
                    Set.of(group("Works", 0), group("Works", 2)).contains(row.group()) ? Count.hidden() : row.count();
            assertThat(released.get(i)).isEqualTo(new SummaryRow(YEAR, row.group(), row.measure(), expected));
        }
    }

    @Test
    void yearsAreHiddenOneByOne() {
        List<SummaryRow> rows = new ArrayList<>(rows(2025, plant("Works", 5, 9)));
        rows.addAll(rows(2026, plant("Works", 4, 9)));

        assertThat(SmallGroups.hide(rows))
                .filteredOn(row -> row.count() instanceof Count.Hidden)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.year()).isEqualTo(2026));
    }

    @Test
    void rowsThatAreHiddenAlreadyAreRefused() {
        List<SummaryRow> released = SmallGroups.hide(rows(plant("Works", 4, 9)));

        assertThatThrownBy(() -> SmallGroups.hide(released)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The sums of groups that the shown rows give are the linear combinations of their indicators over departments. */
    @Test
    void noHiddenCountCanBeSubtractedFromWhatIsShown() {
        Random random = new Random(19_105);
        int withHidden = 0;
        for (int round = 0; round < ROUNDS; round++) {
            List<SummaryRow> released = SmallGroups.hide(rows(somePlants(random)));
            List<Group> departments = departments(released);
            List<long[]> shown = shown(released).stream()
                    .map(group -> indicator(group, departments))
                    .toList();
            int known = rank(shown);
            for (Group hidden : hidden(released)) {
                withHidden++;
                List<long[]> withIt = new ArrayList<>(shown);
                withIt.add(indicator(hidden, departments));
                assertThat(rank(withIt)).as("%s from %s", hidden, released).isGreaterThan(known);
            }
        }
        assertThat(withHidden).isGreaterThan(ROUNDS);
    }

    /** A total less all the shown groups inside it is itself a group that one can know of. */
    @Test
    void whatIsLeftOfATotalIsNoSmallGroup() {
        Random random = new Random(1_904);
        for (int round = 0; round < ROUNDS; round++) {
            List<SummaryRow> rows = rows(somePlants(random));
            List<SummaryRow> released = SmallGroups.hide(rows);
            Map<Group, Integer> left = new LinkedHashMap<>();
            for (Group department : departments(rows)) {
                nearestShown(department, shown(released))
                        .ifPresent(shown -> left.merge(shown, tested(rows, department), Integer::sum));
            }
            assertThat(left.values())
                    .as("%s", released)
                    .allSatisfy(workers -> assertThat(workers).isGreaterThanOrEqualTo(SmallGroups.SMALLEST_SHOWN));
        }
    }

    @Test
    void nothingIsHiddenWhereEveryGroupIsLargeEnough() {
        Random random = new Random(10);
        for (int round = 0; round < ROUNDS; round++) {
            List<SummaryRow> rows = rows(somePlants(random));
            boolean anySmall = rows.stream()
                    .filter(row -> row.measure() == Measure.WORKERS_TESTED)
                    .anyMatch(row -> number(row.count()) < SmallGroups.SMALLEST_SHOWN);

            assertThat(hidden(SmallGroups.hide(rows)).isEmpty()).isEqualTo(!anySmall);
        }
    }

    @Test
    void everySmallGroupIsHidden() {
        Random random = new Random(95);
        for (int round = 0; round < ROUNDS; round++) {
            assertThat(SmallGroups.hide(rows(somePlants(random))))
                    .filteredOn(row -> row.measure() == Measure.WORKERS_TESTED)
                    .filteredOn(row -> row.count() instanceof Count.Number)
                    .allSatisfy(
                            row -> assertThat(number(row.count())).isGreaterThanOrEqualTo(SmallGroups.SMALLEST_SHOWN));
        }
    }

    /** A site, and how many workers were tested in each of its departments. */
    private record Plant(String name, int... departments) {}

    private static Plant plant(String name, int... departments) {
        return new Plant(name, departments);
    }

    private static Plant[] somePlants(Random random) {
        int bound = 2 + random.nextInt(12);
        return IntStream.range(0, 1 + random.nextInt(4))
                .mapToObj(site -> plant(
                        "site " + site,
                        random.ints(1 + random.nextInt(5), 1, bound).toArray()))
                .toArray(Plant[]::new);
    }

    private static Group site(String name) {
        return new Group(name, Group.ALL);
    }

    private static Group group(String site, int department) {
        return new Group(site, "department " + department);
    }

    private static List<SummaryRow> rows(Plant... plants) {
        return rows(YEAR, plants);
    }

    private static List<SummaryRow> rows(int year, Plant... plants) {
        YearSummary summary = new YearSummary();
        int worker = 0;
        for (Plant plant : plants) {
            for (int department = 0; department < plant.departments().length; department++) {
                for (int i = 0; i < plant.departments()[department]; i++) {
                    boolean shifted = worker++ % 3 == 0;
                    summary.add(
                            group(plant.name(), department),
                            List.of(new CountedTest(
                                    LocalDate.of(year, 5, 4),
                                    TestPurpose.ANNUAL,
                                    shifted ? Outcome.CONFIRMED : Outcome.NO_SHIFT,
                                    Optional.of(shifted ? Answer.YES : Answer.NO),
                                    Optional.of(shifted ? Recordability.YES : Recordability.NO))));
                }
            }
        }
        return summary.rows();
    }

    private static Set<Group> hiddenOf(Plant... plants) {
        return hidden(SmallGroups.hide(rows(plants)));
    }

    private static Set<Group> hidden(List<SummaryRow> released) {
        return released.stream()
                .filter(row -> row.count() instanceof Count.Hidden)
                .map(SummaryRow::group)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static Set<Group> shown(List<SummaryRow> released) {
        return released.stream()
                .filter(row -> row.count() instanceof Count.Number)
                .map(SummaryRow::group)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static List<Group> departments(List<SummaryRow> rows) {
        return rows.stream()
                .map(SummaryRow::group)
                .filter(group -> !group.isTotal())
                .distinct()
                .toList();
    }

    private static int tested(List<SummaryRow> rows, Group group) {
        return rows.stream()
                .filter(row -> row.group().equals(group) && row.measure() == Measure.WORKERS_TESTED)
                .mapToInt(row -> number(row.count()))
                .sum();
    }

    private static int number(Count count) {
        return ((Count.Number) count).value();
    }

    private static Optional<Group> nearestShown(Group department, Set<Group> shown) {
        return List.of(department, department.wholeSite(), Group.EVERYBODY).stream()
                .filter(shown::contains)
                .findFirst();
    }

    private static long[] indicator(Group group, List<Group> departments) {
        return departments.stream()
                .mapToLong(department -> List.of(department, department.wholeSite(), Group.EVERYBODY)
                                .contains(group)
                        ? 1
                        : 0)
                .toArray();
    }

    /** By elimination over the integers modulo a prime, which for nested sets of departments is the rank itself. */
    private static int rank(List<long[]> vectors) {
        List<long[]> rows = vectors.stream().map(long[]::clone).collect(Collectors.toCollection(ArrayList::new));
        int rank = 0;
        int columns = rows.isEmpty() ? 0 : rows.getFirst().length;
        for (int column = 0; column < columns; column++) {
            int pivot = rank;
            while (pivot < rows.size() && rows.get(pivot)[column] == 0) {
                pivot++;
            }
            if (pivot == rows.size()) {
                continue;
            }
            long[] lead = rows.get(pivot);
            rows.set(pivot, rows.get(rank));
            rows.set(rank, lead);
            for (int row = rank + 1; row < rows.size(); row++) {
                eliminate(rows.get(row), lead, column);
            }
            rank++;
        }
        return rank;
    }

    private static void eliminate(long[] row, long[] lead, int column) {
        long factor = row[column];
        for (int i = column; i < row.length; i++) {
            row[i] = Math.floorMod(row[i] * lead[column] - lead[i] * factor, PRIME);
        }
    }
}
