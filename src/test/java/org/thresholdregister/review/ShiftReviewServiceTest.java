package org.thresholdregister.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static org.thresholdregister.intake.TestImports.test;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.security.Role;

@RegisterTest
class ShiftReviewServiceTest {

    private static final Order<ShiftColumn> BY_DAY = Order.ascending(ShiftColumn.TEST_DATE);

    @Autowired
    private ShiftReviewService shifts;

    @Autowired
    private TestImports files;

    /**
     * R-1's right ear: 5 dB HL, then a lasting shift to 20 dB HL that is no case, since the level is under 25 dB HL, and
     * becomes the baseline; then 25 dB HL, which is 5 dB from the new baseline and 20 dB from the first one.
     */
    @BeforeEach
    void aRevisedBaselineHidesAShift() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                ServiceFixture.ROSTER + "R-1,1990-01-01,F,Tarn,Edda,,Yard,Cranes,2020-01-01\n",
                ServiceFixture.AUDIOGRAMS
                        + test("R-1", "2020-06-01", "baseline", 5, 5)
                        + test("R-1", "2022-06-01", "annual", 5, 20)
                        + test("R-1", "2025-06-02", "annual", 5, 25),
                """
                worker_id,ear,test_date,kind,date,by,reason
                R-1,right,2022-06-01,baseline,2022-08-01,Dr Vale,lasting
                """);
    }

    /** 29 CFR 1904.10(b)(2)(i): measured from the original baseline, or that of the last recorded case. */
    @Test
    void aCaseThatARevisedBaselineHidesIsListedAndCounted() {
        ShiftFilter year = ShiftFilter.ofYear(2025);

        assertThat(shifts.find(year, BY_DAY, 0, 10))
                .extracting(ShiftRow::workerId, ShiftRow::outcome, ShiftRow::recordable)
                .containsExactly(
                        tuple("Y-1", Outcome.CONFIRMED, Recordability.YES),
                        tuple("R-1", Outcome.NO_SHIFT, Recordability.YES));
        ShiftCounts counts = shifts.counts(year);
        assertThat(counts.total()).isEqualTo(2);
        assertThat(counts.of(Outcome.NO_SHIFT)).isEqualTo(1);
        assertThat(counts.of(Recordability.YES)).isEqualTo(2);
    }

    @Test
    void countsAgreeWithTheLists() {
        for (int year : List.of(2022, 2025, 2026)) {
            ShiftCounts counts = shifts.counts(ShiftFilter.ofYear(year));
            assertThat(counts.total()).isPositive().isEqualTo(shifts.count(ShiftFilter.ofYear(year)));
            for (Outcome outcome : Outcome.values()) {
                assertThat(counts.of(outcome))
                        .isEqualTo(shifts.count(new ShiftFilter(
                                year, Optional.empty(), Optional.empty(), Optional.of(outcome), Optional.empty(), "")));
            }
        }
    }

    @Test
    void whatWasDoneAboutAShiftStandsBesideItsDates() {
        assertThat(actsOfYard()).isEqualTo(ShiftActs.NONE);
        files.store("", "", """
                worker_id,ear,test_date,kind,date,by,reason
                Y-1,left,2025-06-01,notice-given,2025-06-10,the nurse,
                Y-1,left,2025-06-01,recorded,2025-06-20,the officer,
                """);
        assertThat(actsOfYard())
                .isEqualTo(new ShiftActs(
                        Optional.of(LocalDate.of(2025, 6, 10)),
                        Optional.of(LocalDate.of(2025, 6, 20)),
                        Optional.empty()));
        files.store("", "", """
                worker_id,ear,test_date,kind,date,by,reason
                Y-1,left,2025-06-01,lined-out,2025-09-20,the officer,passing
                """);
        assertThat(actsOfYard().recordedOn()).isEmpty();
        assertThat(actsOfYard().linedOutOn()).hasValue(LocalDate.of(2025, 9, 20));
    }

    private ShiftActs actsOfYard() {
        return shifts.find(ShiftFilter.ofYear(2025), BY_DAY, 0, 10).stream()
                .filter(row -> row.workerId().equals("Y-1"))
                .map(ShiftRow::acts)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aShiftThatItsOwnTestSettledHasNoLaterRetest() {
        assertThat(shifts.find(ShiftFilter.ofYear(2025), BY_DAY, 0, 10))
                .extracting(ShiftRow::laterRetest)
                .containsOnly(Optional.empty());
    }
}
