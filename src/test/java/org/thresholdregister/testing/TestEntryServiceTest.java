package org.thresholdregister.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.testing.TypedTests.test;
import static org.thresholdregister.testing.TypedTests.thresholds;
import static org.thresholdregister.testing.TypedTests.withReason;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.event.ApplicationEvents;
import org.springframework.test.context.event.RecordApplicationEvents;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.audiograms.RecordedTest;
import org.thresholdregister.audiograms.SupersededTest;
import org.thresholdregister.audiograms.TestSigned;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.decision.DecisionKind;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.intake.ProblemKind;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.reports.SummaryService;
import org.thresholdregister.review.AlterationService;
import org.thresholdregister.review.BoardFilter;
import org.thresholdregister.review.BoardService;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.ShiftFilter;
import org.thresholdregister.review.ShiftReviewService;
import org.thresholdregister.review.TestStory;
import org.thresholdregister.review.WorkerRecordService;
import org.thresholdregister.testing.EntryProblem.Kind;

/** Today is 9 March 2026. M-1 has a baseline of 2 March 2025; M-2 has no test; Y-1 is of another site. */
@RegisterTest
@RecordApplicationEvents
class TestEntryServiceTest {

    private static final String ROSTER = """
            worker_id,birth_date,sex,family_name,given_name,site,enrolled_from,end_date
            M-1,1990-05-01,F,Quill,Ada,Mill,2020-01-01,
            M-2,1990-01-01,F,Rusk,Dara,Mill,2026-01-01,
            M-3,1980-01-01,M,Vane,Ilo,Mill,2020-01-01,2026-03-20
            Y-1,1985-01-01,M,Tarn,Cato,Yard,2020-01-01,
            """;

    @Autowired
    private TestEntryService entry;

    @Autowired
    private WorkerRecordService records;

    @Autowired
    private BoardService board;

    @Autowired
    private ShiftReviewService shifts;

    @Autowired
    private SummaryService summaries;

    @Autowired
    private DecisionService decisions;

    @Autowired
    private AlterationService alterations;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private ApplicationEvents events;

    @BeforeEach
    void threeWorkers() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(
                ROSTER,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("M-1", "2025-03-02", "baseline", 10, 10)
                        + TestImports.test("M-3", "2025-01-02", "baseline", 10, 10)
                        + TestImports.test("Y-1", "2025-03-02", "baseline", 10, 10),
                "");
        SignIn.as("ada", Role.NURSE, SiteScope.only(Set.of("Mill")));
    }

    private TestDraft draft(String workerId) {
        return entry.open(workerId, Optional.empty()).orElseThrow().draft();
    }

    private SignResult.Signed signed(String workerId, TypedTest typed) {
        return signed(draft(workerId).key(), typed);
    }

    private SignResult.Signed signed(long draftKey, TypedTest typed) {
        SignResult result = entry.sign(draftKey, typed);
        assertThat(result).isInstanceOf(SignResult.Signed.class);
        return (SignResult.Signed) result;
    }

    private List<Kind> refused(long draftKey, TypedTest typed) {
        SignResult result = entry.sign(draftKey, typed);
        assertThat(result).isInstanceOf(SignResult.Refused.class);
        return ((SignResult.Refused) result)
                .problems().stream().map(EntryProblem::kind).toList();
    }

    private List<RecordedTest> tests(String workerId) {
        return records.open(workerId).orElseThrow().tests();
    }

    @Test
    void aDraftBeginsWithTodayAndWhatIsDue() {
        TestDraft ofNobodyTested = draft("M-2");
        assertThat(ofNobodyTested.typed().purpose()).contains(TestPurpose.BASELINE);
        entry.discard(ofNobodyTested.key());
        assertThat(draft("M-1").typed().purpose()).contains(TestPurpose.ANNUAL);
        assertThat(draft("M-3").typed().purpose()).contains(TestPurpose.EXIT);
        assertThat(draft("M-1").typed().date()).contains(MovableClock.FIRST_DAY);

        signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "40", "10"));
        TypedTest next = draft("M-1").typed();
        assertThat(next.purpose()).as("a shift may be retested").contains(TestPurpose.RETEST);
        assertThat(List.of(next.tester(), next.instrument(), next.transducer(), next.room()))
                .as("as this user's last test of the day")
                .containsExactly("P. Marrowdale", "A-1", "supra-aural P-9", "Booth 2");
        assertThat(next.hours()).isEmpty();
        assertThat(next.limit()).isEqualTo("95");
        signed("M-3", test("2026-03-09", TestPurpose.EXIT, "10", ">100"));
        assertThat(draft("M-2").typed().limit())
                .as("the instrument's, as that test shows")
                .isEqualTo("100");
    }

    @Test
    void whatIsTypedIsThereAgainRightOrWrong() {
        TypedTest typed = test("2026-03-09", TestPurpose.ANNUAL, "4x", ">95");
        entry.type(draft("M-1").key(), typed);

        assertThat(draft("M-1").typed()).isEqualTo(typed);
        assertThat(entry.waiting()).singleElement().satisfies(waiting -> {
            assertThat(waiting.workerId()).isEqualTo("M-1");
            assertThat(waiting.thresholds()).isEqualTo(14);
        });
        assertThat(jdbc.queryForObject("select thresholds from test_draft", String.class))
                .contains("4x");
    }

    @Test
    void aPageThatWasOnlyOpenedIsNoHalfTypedTest() {
        draft("M-1");
        assertThat(entry.waiting()).isEmpty();
    }

    /** All that lists and counts are made from, before and after. */
    private List<Object> everythingCounted() {
        return List.of(
                board.counts(),
                board.count(BoardFilter.EVERYTHING),
                shifts.counts(ShiftFilter.ofYear(2026)),
                summaries.report(2026).toString(),
                jdbc.queryForList("select audiogram_id, ear, outcome from determination order by 1, 2"),
                jdbc.queryForObject("select count(*) from audiogram", Integer.class),
                tests("M-1"));
    }

    @Test
    void aDraftCountsNowhereUntilItIsSigned() {
        List<Object> before = everythingCounted();
        Outlook outlook = entry.type(draft("M-1").key(), test("2026-03-09", TestPurpose.ANNUAL, "40", "10"))
                .orElseThrow();

        assertThat(outlook.problems()).isEmpty();
        TestStory story = outlook.story().orElseThrow();
        assertThat(story.of(Ear.RIGHT).orElseThrow().outcome()).isEqualTo(Outcome.AWAITING_RETEST);
        assertThat(outlook.record().orElseThrow().judgement().followUps())
                .anyMatch(owed -> owed.kind() == FollowUpKind.RETEST
                        && owed.dueDate().toString().equals("2026-04-08"));
        assertThat(everythingCounted()).isEqualTo(before);

        signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "40", "10"));
        assertThat(everythingCounted()).isNotEqualTo(before);
        assertThat(shifts.count(ShiftFilter.ofYear(2026))).isEqualTo(1);
    }

    @Test
    void aSignedTestIsOnRecordWithItsSignatureAndJudgedAndTheDraftIsGone() {
        long draft = draft("M-1").key();
        SignResult.Signed signed = signed(draft, test("2026-03-09", TestPurpose.ANNUAL, "40", ">95"));

        RecordedTest test = signed.story().test();
        assertThat(tests("M-1")).last().isEqualTo(test);
        assertThat(test.signature()).hasValueSatisfying(signature -> {
            assertThat(signature.by()).isEqualTo("ada");
            assertThat(signature.name()).isEqualTo("Test");
        });
        assertThat(test.facts().hoursSinceNoise().orElseThrow()).isEqualByComparingTo("14.5");
        assertThat(test.facts().room()).isEqualTo("Booth 2");
        assertThat(jdbc.queryForMap("select right_4000, left_4000, import_batch_id, signed_by, taken_out from audiogram"
                        + " where test_date = date '2026-03-09'"))
                .isEqualTo(mapOf(
                        "right_4000",
                        "40",
                        "left_4000",
                        ">95",
                        "import_batch_id",
                        null,
                        "signed_by",
                        "ada",
                        "taken_out",
                        0L));
        assertThat(entry.look(draft)).isEmpty();
        assertThat(jdbc.queryForObject("select count(*) from test_draft", Integer.class))
                .isZero();
        assertThat(events.stream(TestSigned.class))
                .singleElement()
                .isEqualTo(new TestSigned(
                        test.key(), test.workerKey(), test.audiogram().date(), TestPurpose.ANNUAL, draft));
        assertThat(jdbc.queryForList("select detail from audit_event where action = 'TEST_SIGNED'", String.class))
                .containsExactly("annual test of 2026-03-09, number " + test.key());
        assertThat(entry.sign(draft, test("2026-03-09", TestPurpose.ANNUAL, "40", ">95")))
                .isInstanceOf(SignResult.Gone.class);
    }

    private static Map<String, Object> mapOf(Object... pairs) {
        Map<String, Object> map = new HashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }

    @Test
    void whatIsWrongIsRefusedAndKept() {
        long draft = draft("M-1").key();
        assertThat(refused(draft, TypedTests.EMPTY))
                .containsExactly(Kind.NOTHING_TYPED, Kind.DATE_MISSING, Kind.PURPOSE_MISSING, Kind.TESTER_MISSING);
        for (String wrong : List.of("121", "-11", "12.5", "x", ">", ">125", "1e1", "--5", "+5")) {
            assertThat(refused(draft, test("2026-03-09", TestPurpose.ANNUAL, wrong, "10")))
                    .as(wrong)
                    .hasSize(7)
                    .containsOnly(Kind.NO_THRESHOLD);
            assertThat(draft("M-1").typed().thresholds()).isEqualTo(thresholds(wrong, "10"));
        }
        assertThat(refused(draft, test("2026-03-10", TestPurpose.ANNUAL, "10", "10")))
                .containsExactly(Kind.DATE_TO_COME);
        assertThat(refused(draft, test("1990-04-30", TestPurpose.ANNUAL, "10", "10")))
                .containsExactly(Kind.DATE_BEFORE_BIRTH);
        assertThat(refused(draft, test("2025-03-02", TestPurpose.BASELINE, "10", "10")))
                .containsExactly(Kind.ON_RECORD);
        assertThat(jdbc.queryForObject("select count(*) from audiogram where signed_by is not null", Integer.class))
                .isZero();
        for (String right : List.of("120", "-10", "0", "nr", "CNT", "dnt", ">95", "")) {
            assertThat(TypedReading.threshold(right)).as(right).isPresent();
        }
    }

    @Test
    void aDraftIsTheUsersOwnAndOfTheSitesThatTheyMaySee() {
        long draft = draft("M-1").key();
        entry.type(draft, test("2026-03-09", TestPurpose.ANNUAL, "40", "10"));
        assertThat(entry.open("Y-1", Optional.empty())).isEmpty();

        SignIn.as("bo", Role.NURSE, SiteScope.all());
        assertThat(entry.waiting()).isEmpty();
        assertThat(entry.look(draft)).isEmpty();
        assertThat(entry.type(draft, TypedTests.EMPTY)).isEmpty();
        assertThat(entry.sign(draft, TypedTests.EMPTY)).isInstanceOf(SignResult.Gone.class);
        entry.discard(draft);

        SignIn.as("ada", Role.NURSE, SiteScope.only(Set.of("Yard")));
        assertThat(entry.waiting()).isEmpty();
        assertThat(entry.look(draft)).isEmpty();

        SignIn.as("ada", Role.NURSE, SiteScope.all());
        assertThat(entry.waiting()).hasSize(1);
        entry.discard(draft);
        assertThat(entry.waiting()).isEmpty();
    }

    private SignResult.Signed corrected(RecordedTest former, TypedTest typed) {
        long draft = entry.open("M-1", Optional.of(former.key()))
                .orElseThrow()
                .draft()
                .key();
        return signed(draft, typed);
    }

    @Test
    void aCorrectedTestTakesTheOldOnesPlaceAndBothStayReadable() {
        RecordedTest former = signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "40", "10"))
                .story()
                .test();
        TestEntry correction = entry.open("M-1", Optional.of(former.key())).orElseThrow();
        TypedTest typed = correction.draft().typed();
        assertThat(typed.thresholds()).as("begins as the old one stands").isEqualTo(thresholds("40", "10"));
        assertThat(refused(correction.draft().key(), typed)).containsExactly(Kind.REASON_MISSING);

        TypedTest right = withReason(test("2026-03-09", TestPurpose.ANNUAL, "10", "10"), "Misread the printout");
        Outlook outlook = entry.type(correction.draft().key(), right).orElseThrow();
        assertThat(outlook.story().orElseThrow().of(Ear.RIGHT).orElseThrow().outcome())
                .isEqualTo(Outcome.NO_SHIFT);
        RecordedTest successor = signed(correction.draft().key(), right).story().test();

        assertThat(tests("M-1")).hasSize(2).last().isEqualTo(successor);
        SupersededTest kept = records.superseded("M-1").getFirst();
        assertThat(kept.test()).isEqualTo(former);
        assertThat(kept.successor()).contains(successor.key());
        assertThat(kept.reason()).isEqualTo("Misread the printout");
        assertThat(kept.by()).isEqualTo("ada");
        assertThat(shifts.count(ShiftFilter.ofYear(2026))).isZero();
        assertThat(jdbc.queryForList(
                        "select distinct cause from determination_history where audiogram_id = " + former.key(),
                        String.class))
                .containsExactly("SUPERSEDING");
        assertThat(entry.open("M-1", Optional.of(former.key())))
                .as("it counts no more")
                .isEmpty();
    }

    @Test
    void aCorrectionMayMoveTheDayAndMeetsNoOtherTestThere() {
        RecordedTest former = signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "40", "10"))
                .story()
                .test();
        long draft = entry.open("M-1", Optional.of(former.key()))
                .orElseThrow()
                .draft()
                .key();
        assertThat(refused(draft, withReason(test("2025-03-02", TestPurpose.BASELINE, "10", "10"), "day")))
                .containsExactly(Kind.ON_RECORD);
        signed(draft, withReason(test("2026-03-04", TestPurpose.ANNUAL, "40", "10"), "day"));
        assertThat(tests("M-1"))
                .last()
                .satisfies(test -> assertThat(test.audiogram().date()).hasToString("2026-03-04"));
    }

    @Test
    void twoCorrectionsOfOneTestAreNotBothSigned() {
        RecordedTest former = signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "40", "10"))
                .story()
                .test();
        TypedTest typed = withReason(test("2026-03-09", TestPurpose.ANNUAL, "15", "10"), "Misread");
        long draft = entry.open("M-1", Optional.of(former.key()))
                .orElseThrow()
                .draft()
                .key();
        SignIn.as("bo", Role.NURSE, SiteScope.all());
        corrected(former, typed);

        SignIn.as("ada", Role.NURSE, SiteScope.all());
        assertThat(refused(draft, typed)).contains(Kind.SUPERSEDED_MEANWHILE);
    }

    private void noticeGiven(RecordedTest test) {
        decisions.enter(
                "M-1",
                new Decision(
                        Ears.RIGHT,
                        test.audiogram().date(),
                        DecisionKind.NOTICE_GIVEN,
                        MovableClock.FIRST_DAY,
                        "",
                        ""));
    }

    @Test
    void aCorrectionOfATestThatANoticeRestsOnIsPutBeforeAPerson() {
        RecordedTest former = signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "40", "10"))
                .story()
                .test();
        noticeGiven(former);
        RecordedTest same = corrected(
                        former, withReason(test("2026-03-09", TestPurpose.ANNUAL, "40", "15"), "Left ear misread"))
                .story()
                .test();
        assertThat(alterations.ofWorker("M-1"))
                .as("what the notice says of the right ear still holds")
                .isEmpty();

        corrected(same, withReason(test("2026-03-09", TestPurpose.ANNUAL, "10", "15"), "Right ear misread"));
        assertThat(alterations.ofWorker("M-1")).singleElement().satisfies(change -> {
            assertThat(change.ear()).isEqualTo(Ear.RIGHT);
            assertThat(change.after().orElseThrow().outcome()).isEqualTo(Outcome.NO_SHIFT);
        });
    }

    @Test
    void aCorrectionOfATestThatIsOnTheLogIsPutBeforeAPerson() {
        RecordedTest former = signed("M-1", test("2025-09-01", TestPurpose.ANNUAL, "40", "10"))
                .story()
                .test();
        SignIn.as(Role.SAFETY_OFFICER);
        decisions.enter(
                "M-1",
                new Decision(
                        Ears.RIGHT, former.audiogram().date(), DecisionKind.RECORDED, MovableClock.FIRST_DAY, "", ""));
        SignIn.as("ada", Role.NURSE, SiteScope.all());
        corrected(former, withReason(test("2025-09-02", TestPurpose.ANNUAL, "40", "10"), "It was the day after"));
        assertThat(alterations.ofWorker("M-1"))
                .as("the entry names a day on which no test counts")
                .singleElement()
                .satisfies(change -> {
                    assertThat(change.sent().recordedOn()).contains(MovableClock.FIRST_DAY);
                    assertThat(change.after()).isEmpty();
                });
    }

    @Test
    void aTestThatWasTheWrongPersonsIsTakenOutAndKept() {
        RecordedTest wrong = signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "40", "10"))
                .story()
                .test();
        noticeGiven(wrong);
        assertThat(entry.withdraw("M-1", wrong.key(), " ")).isEqualTo(WithdrawResult.REASON_MISSING);
        assertThat(entry.withdraw("M-2", wrong.key(), "x")).isEqualTo(WithdrawResult.NOT_ON_RECORD);
        assertThat(entry.withdraw("M-1", wrong.key(), "This was Dara Rusk's test"))
                .isEqualTo(WithdrawResult.WITHDRAWN);

        assertThat(tests("M-1")).hasSize(1);
        SupersededTest kept = records.superseded("M-1").getFirst();
        assertThat(kept.test()).isEqualTo(wrong);
        assertThat(kept.successor()).isEmpty();
        assertThat(alterations.ofWorker("M-1"))
                .singleElement()
                .satisfies(change -> assertThat(change.after()).isEmpty());
        assertThat(entry.withdraw("M-1", wrong.key(), "again")).isEqualTo(WithdrawResult.NOT_ON_RECORD);

        signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "10", "10"));
        assertThat(tests("M-1")).as("the day is free for the right test").hasSize(2);
    }

    @Test
    void aSafetyOfficerReadsWhatWasSupersededWithoutRemarks() {
        RecordedTest test = signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "40", "10"))
                .story()
                .test();
        entry.withdraw("M-1", test.key(), "Wrong person");
        SignIn.as(Role.SAFETY_OFFICER, "Yard");
        assertThat(records.superseded("M-1")).isEmpty();
        SignIn.as(Role.SAFETY_OFFICER, "Mill");
        assertThat(records.superseded("M-1")).hasSize(1);
    }

    @Test
    void anImportBringsNoTestBackThatWasTakenOut() {
        RecordedTest baseline = tests("M-1").getFirst();
        entry.withdraw("M-1", baseline.key(), "Wrong person");
        String file = TestImports.AUDIOGRAM_COLUMNS + TestImports.test("M-1", "2025-03-02", "baseline", 10, 10);
        assertThat(files.preview("", file, "").problems()).singleElement().satisfies(problem -> {
            assertThat(problem.kind()).isEqualTo(ProblemKind.SUPERSEDED_ON_RECORD);
        });
        String other = TestImports.AUDIOGRAM_COLUMNS + TestImports.test("M-1", "2025-03-02", "baseline", 15, 10);
        assertThat(files.preview("", other, "").problems())
                .as("another test of that day")
                .isEmpty();
    }

    @Test
    void anImportDoesNotOverwriteASignedTest() {
        signed("M-1", test("2026-03-09", TestPurpose.ANNUAL, "40", "10"));
        String file = TestImports.AUDIOGRAM_COLUMNS + TestImports.test("M-1", "2026-03-09", "annual", 10, 10);
        assertThat(files.preview("", file, "").problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.kind()).isEqualTo(ProblemKind.DIFFERS_FROM_TEST_ON_RECORD));
    }
}
