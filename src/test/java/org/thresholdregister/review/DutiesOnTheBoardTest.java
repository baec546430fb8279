package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.duty.DutySource;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;

/** Duties of an invented feature among what is owed to workers. Today is 9 March 2026. */
@RegisterTest
@Import(DutiesOnTheBoardTest.Beans.class)
class DutiesOnTheBoardTest {

    private static final String CALIBRATION = "yearly acoustic calibration";

    @TestConfiguration(proxyBeanMethods = false)
    static class Beans {
        /** Three audiometers, one of which is at the yard. */
        @Bean
        DutySource invented() {
            return (scope, today, until) -> List.of(
                            duty("A-1", "Mill", "2026-03-01"),
                            duty("A-2", "Mill", "2026-03-22"),
                            duty("A-3", "Yard", "2026-05-30"))
                    .stream()
                    .filter(duty -> scope.includes(duty.site()) && !duty.due().isAfter(until))
                    .toList();
        }

        private static OpenDuty duty(String instrument, String site, String due) {
            return new OpenDuty(
                    CALIBRATION,
                    new OpenDuty.Subject.OfThing(instrument),
                    site,
                    LocalDate.parse(due),
                    new Citation("29 CFR 1910.95(h)(5)(ii)"),
                    "instruments");
        }
    }

    @Autowired
    private BoardService board;

    @Autowired
    private TestImports files;

    @BeforeEach
    void twoSites() {
        SignIn.as(Role.NURSE);
        files.store(ServiceFixture.ROSTER, ServiceFixture.AUDIOGRAMS, "");
    }

    private List<BoardRow> all(Order<BoardColumn> order) {
        return board.find(BoardFilter.EVERYTHING, order, 0, 100);
    }

    /** The audiometers among the rows; other features may have duties of their own there. */
    private static List<String> things(List<BoardRow> rows) {
        return rows.stream()
                .filter(BoardRow.OfDuty.class::isInstance)
                .map(row -> ((BoardRow.OfDuty) row).duty())
                .filter(duty -> duty.kind().equals(CALIBRATION))
                .map(duty -> ((OpenDuty.Subject.OfThing) duty.subject()).name())
                .toList();
    }

    @Test
    void dutiesStandAmongTheTasksByTheirDay() {
        List<BoardRow> rows = all(Order.ascending(BoardColumn.DUE_DATE));
        assertThat(things(rows)).containsExactly("A-1", "A-2", "A-3");
        assertThat(rows.stream().flatMap(row -> row.due().stream()).toList())
                .isSortedAccordingTo(Comparator.naturalOrder());
        assertThat(rows).hasSize(board.count(BoardFilter.EVERYTHING));
        assertThat(rows.getLast().due()).as("what has no date comes last").isEmpty();
    }

    /** However the list is cut into pages, each row stands on one, and in the same order. */
    @Test
    void pagesOfAnyLengthGiveTheWholeList() {
        for (BoardColumn column : BoardColumn.values()) {
            for (boolean descending : new boolean[] {false, true}) {
                var order = new Order<>(column, descending);
                List<BoardRow> whole = all(order);
                assertThat(whole).hasSize(board.count(BoardFilter.EVERYTHING)).doesNotHaveDuplicates();
                for (int length = 1; length <= whole.size(); length++) {
                    List<BoardRow> pages = new ArrayList<>();
                    for (int from = 0; from < whole.size(); from += length) {
                        pages.addAll(board.find(BoardFilter.EVERYTHING, order, from, length));
                    }
                    assertThat(pages).as(order + " by " + length).isEqualTo(whole);
                }
            }
        }
    }

    @Test
    void byAnythingButTheDayTheyStandLast() {
        List<BoardRow> rows = all(Order.ascending(BoardColumn.NAME));
        assertThat(rows.subList(0, 9)).hasOnlyElementsOfType(BoardRow.OfTask.class);
        assertThat(things(rows.subList(9, rows.size()))).containsExactly("A-1", "A-2", "A-3");
    }

    @Test
    void theyAreCountedAndFiltered() {
        BoardCounts counts = board.counts();
        assertThat(counts.of(CALIBRATION, DueState.OVERDUE)).isEqualTo(1);
        assertThat(counts.of(CALIBRATION, DueState.WITHIN_30_DAYS)).isEqualTo(1);
        assertThat(counts.of(CALIBRATION, DueState.LATER)).isEqualTo(1);
        assertThat(counts.kinds()).contains(CALIBRATION);
        assertThat(things(found(BoardFilter.EVERYTHING.withSite("Yard")))).containsExactly("A-3");
        assertThat(things(found(BoardFilter.EVERYTHING.withState(DueState.OVERDUE))))
                .containsExactly("A-1");
        assertThat(things(found(BoardFilter.EVERYTHING.withKind(TaskKind.NOTICE))))
                .isEmpty();
        BoardFilter calibrations = new BoardFilter(
                Optional.of(CALIBRATION),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "a-2");
        assertThat(found(calibrations)).hasSize(1);
        assertThat(things(found(calibrations))).containsExactly("A-2");
    }

    private List<BoardRow> found(BoardFilter filter) {
        return board.find(filter, Order.ascending(BoardColumn.DUE_DATE), 0, 100);
    }

    @Test
    void nobodySeesTheDutiesOfAnotherSite() {
        SignIn.as(Role.SAFETY_OFFICER, "Mill");
        assertThat(things(all(Order.ascending(BoardColumn.DUE_DATE)))).containsExactly("A-1", "A-2");
    }
}
