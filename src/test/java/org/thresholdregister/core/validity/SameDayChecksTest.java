package org.thresholdregister.core.validity;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.validity.SameDayTests.OthersTest;
import org.thresholdregister.core.validity.ValidityFlag.LooksLikeAnotherWorkers;
import org.thresholdregister.core.validity.ValidityFlag.RoomNoise;

class SameDayChecksTest {

    private static final String DAY = "2022-03-01";

    private static OthersTest other(String workerId, String usual, String onTheDay) {
        return new OthersTest(
                workerId,
                Tests.audiogram(DAY, TestPurpose.ANNUAL, onTheDay, onTheDay),
                List.of(
                        Tests.audiogram("2020-05-04", TestPurpose.BASELINE, usual, usual),
                        Tests.audiogram("2021-05-03", TestPurpose.ANNUAL, usual, usual)));
    }

    private static Tests worker(int usual, int onTheDay) {
        return new Tests()
                .baseline(flat(usual), flat(usual))
                .annual("2021-03-01", flat(usual), flat(usual))
                .annual(DAY, flat(onTheDay), flat(onTheDay));
    }

    private static String flat(int level) {
        return (level + " ").repeat(7).strip();
    }

    /** This worker's usual level is 10, the other's 10 and the distance; each test is the other's. */
    @ParameterizedTest
    @CsvSource({"10, true", "9, false", "40, true", "-10, true"})
    void testsThatWereExchangedAreFoundFromTenDecibelsOn(int distance, boolean flagged) {
        List<LooksLikeAnotherWorkers> flags = worker(10, 10 + distance)
                .testedWith(day -> List.of(other("V2", flat(10 + distance), flat(10))))
                .flags(LooksLikeAnotherWorkers.class);

        assertThat(flags)
                .isEqualTo(
                        flagged
                                ? List.of(new LooksLikeAnotherWorkers(
                                        "V2", new Fit(14 * Math.abs(distance), 14), new Fit(0, 14), true))
                                : List.of());
        assertThat(flags).extracting(ValidityFlag::kind).allMatch(kind -> kind == FlagKind.EXCHANGED_WITH_ANOTHER);
    }

    /** The other's own test is where it belongs, so that only the likeness speaks: by ten dB, and half as far. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            from own, from theirs, flagged
            20,       10,          true
            20,       11,          false
            30,       15,          true
            30,       16,          false
            10,       0,           true
            9,        0,           false
            """)
    void aTestThatIsOnlyLikeAnothersMustBeMuchLikeIt(int fromOwn, int fromTheirs, boolean flagged) {
        String theirs = flat(10 + fromOwn + fromTheirs);
        List<LooksLikeAnotherWorkers> flags = worker(10, 10 + fromOwn)
                .testedWith(day -> List.of(other("V2", theirs, theirs)))
                .flags(LooksLikeAnotherWorkers.class);

        assertThat(flags)
                .isEqualTo(
                        flagged
                                ? List.of(new LooksLikeAnotherWorkers(
                                        "V2", new Fit(14 * fromOwn, 14), new Fit(14 * fromTheirs, 14), false))
                                : List.of());
        assertThat(flags).extracting(ValidityFlag::kind).allMatch(kind -> kind == FlagKind.LIKE_ANOTHER);
    }

    @Test
    void anExchangeGoesBeforeALikenessAndTheClosestBeforeOthers() {
        List<OthersTest> others = List.of(
                other("V2", flat(40), flat(40)), other("V3", flat(45), flat(10)), other("V4", flat(44), flat(10)));

        assertThat(worker(10, 40).testedWith(day -> others).flags(LooksLikeAnotherWorkers.class))
                .extracting(LooksLikeAnotherWorkers::otherWorkerId)
                .containsExactly("V4");
    }

    @Test
    void othersAreOnlyLookedUpForATestThatIsUnlikeTheWorkersOwn() {
        List<LocalDate> asked = new ArrayList<>();
        worker(10, 15)
                .testedWith(day -> {
                    asked.add(day);
                    return List.of();
                })
                .flagsOfAll();
        assertThat(asked).isEmpty();
    }

    @Test
    void othersWithoutOtherTestsSayNothing() {
        var first = new OthersTest("V2", Tests.audiogram(DAY, TestPurpose.BASELINE, flat(40), flat(40)), List.of());
        assertThat(worker(10, 40).testedWith(day -> List.of(first)).kinds())
                .doesNotContain(FlagKind.EXCHANGED_WITH_ANOTHER, FlagKind.LIKE_ANOTHER);
    }

    /** Of so many others, so many are raised by so much at 500 Hz. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            others, raised, by, flagged
            2,      2,      10, true
            2,      1,      10, false
            5,      2,      10, true
            6,      2,      10, false
            6,      3,      10, true
            2,      2,      9,  false
            """)
    void manyRaisedAt500HertzPointToTheRoom(int others, int raised, int by, boolean flagged) {
        String usual = "10 5 10 15 20 15 10";
        List<OthersTest> day = new ArrayList<>();
        for (int i = 0; i < others; i++) {
            day.add(other("V" + (i + 2), usual, i < raised ? (10 + by) + " 5 10 15 20 15 10" : usual));
        }
        Tests worker = new Tests()
                .baseline(usual, usual)
                .annual("2021-03-01", usual, usual)
                .annual(DAY, "20 5 10 15 20 15 10", "20 5 10 15 20 15 10")
                .testedWith(on -> day);

        assertThat(worker.flags(RoomNoise.class))
                .isEqualTo(flagged ? List.of(new RoomNoise(raised + 1, others + 1)) : List.of());
    }

    @Test
    void oneRaisedEarIsNoRoomNoise() {
        String usual = "10 5 10 15 20 15 10";
        List<OthersTest> day =
                List.of(other("V2", usual, "20 5 10 15 20 15 10"), other("V3", usual, "20 5 10 15 20 15 10"));
        assertThat(new Tests()
                        .baseline(usual, usual)
                        .annual(DAY, "20 5 10 15 20 15 10", usual)
                        .testedWith(on -> day)
                        .kinds())
                .isEmpty();
    }
}
