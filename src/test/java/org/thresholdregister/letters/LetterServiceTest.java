package org.thresholdregister.letters;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.access.AccessDeniedException;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.clinical.ClinicalService;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.clinical.CanalFinding;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.clinical.EarLook;
import org.thresholdregister.core.clinical.HealthHistory;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.pdf.PrintedPdf;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026; L-1, who reads Spanish, showed a shift in the right ear on 1 March; L-2 works elsewhere. */
@RegisterTest
class LetterServiceTest {

    private static final LocalDate TODAY = MovableClock.FIRST_DAY;

    @Autowired
    private LetterService letters;

    @Autowired
    private LetterTextService texts;

    @Autowired
    private ClinicalService clinical;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @BeforeEach
    void twoWorkers() {
        SignIn.as(Role.NURSE);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from,language
                L-1,1990-05-01,F,Núñez,Ada,Mill,2020-01-01,es
                L-2,1990-05-01,M,Orrin,Bela,Yard,2020-01-01,en
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("L-1", "2025-03-02", "baseline", 10, 10)
                        + TestImports.test("L-1", "2026-03-01", "annual", 10, 30)
                        + TestImports.test("L-2", "2026-03-02", "baseline", 10, 10),
                "");
    }

    private LetterOccasion waiting(LetterKind kind, String workerId) {
        return letters.waiting().stream()
                .map(WaitingLetter::occasion)
                .filter(occasion ->
                        occasion.kind() == kind && occasion.workerId().equals(workerId))
                .findFirst()
                .orElseThrow();
    }

    private List<String> allWaiting() {
        return letters.waiting().stream()
                .map(letter -> letter.occasion().workerId() + " "
                        + letter.occasion().kind().word())
                .toList();
    }

    @Test
    void whatIsDueIsDerivedWithWhatHasALastDayFirst() {
        assertThat(allWaiting())
                .containsExactly("L-1 shift-notice", "L-1 retest-invitation", "L-1 result", "L-2 result");
        assertThat(letters.waiting().getFirst().dueDate()).contains(LocalDate.of(2026, 3, 22));
        assertThat(letters.waiting().getFirst().occasion().ears()).isEqualTo(Ears.RIGHT);
    }

    @Test
    void aPrintedLetterWaitsNoMoreAndIsKeptInTheWorkersLanguage() {
        PrintRun run = letters.print(List.of(LetterRequest.of(waiting(LetterKind.RESULT, "L-1"))));

        assertThat(run.letters()).isEqualTo(1);
        PrintedPdf pdf = PrintedPdf.of(run.pdf());
        assertThat(pdf.language()).isEqualTo("es");
        assertThat(pdf.text()).contains("Ada Núñez", "cambio estándar del umbral auditivo");
        assertThat(allWaiting()).doesNotContain("L-1 result");
        assertThat(jdbc.queryForObject("select content from document", byte[].class))
                .isEqualTo(run.pdf());
        assertThat(letters.ofWorker("L-1")).singleElement().satisfies(letter -> {
            assertThat(letter.printedOn()).isEqualTo(TODAY);
            assertThat(letter.language()).isEqualTo(Language.SPANISH);
            assertThat(letter.givenOn()).isEmpty();
        });
        assertThat(jdbc.queryForList("select detail from audit_event where action = 'LETTER_PRINTED'", String.class))
                .singleElement()
                .asString()
                .contains("result, test of 2026-03-01")
                .doesNotContain("Núñez");
    }

    @Test
    void aNoticeMarkedAsGivenClosesItsFollowUpWithTheLetterAsEvidence() {
        letters.print(List.of(LetterRequest.of(waiting(LetterKind.SHIFT_NOTICE, "L-1"))));
        long key = letters.ofWorker("L-1").getFirst().key();

        GivenResult result = letters.markGiven(List.of(key), TODAY, LetterMethod.HANDED_OVER);

        assertThat(result).isEqualTo(new GivenResult(1, List.of()));
        assertThat(jdbc.queryForList("select kind || ' ' || ears || ' ' || reason from decision", String.class))
                .containsExactly("notice-given right Letter " + key + ", handed over");
        assertThat(jdbc.queryForList("select kind from follow_up where kind = 'notice'", String.class))
                .isEmpty();
        assertThat(letters.markGiven(List.of(key), TODAY, LetterMethod.POST).notes())
                .singleElement()
                .asString()
                .contains("was marked as given before");
    }

    @Test
    void aLetterIsGivenNeitherBeforeItIsPrintedNorInTheFuture() {
        letters.print(List.of(LetterRequest.of(waiting(LetterKind.RESULT, "L-1"))));
        List<Long> keys = List.of(letters.ofWorker("L-1").getFirst().key());

        assertThat(letters.markGiven(keys, TODAY.minusDays(1), LetterMethod.POST)
                        .letters())
                .isZero();
        assertThat(letters.markGiven(keys, TODAY.plusDays(1), LetterMethod.POST).letters())
                .isZero();
        assertThat(letters.ofWorker("L-1").getFirst().givenOn()).isEmpty();
    }

    @Test
    void aReprintSaysSoAndLeavesWhatIsKeptAlone() {
        byte[] original = letters.print(List.of(LetterRequest.of(waiting(LetterKind.RESULT, "L-2"))))
                .pdf();
        byte[] copy = letters.reprint(List.of(letters.ofWorker("L-2").getFirst().key()));

        assertThat(PrintedPdf.of(copy).text()).contains("Reprint of March 9, 2026.");
        assertThat(jdbc.queryForObject("select content from document", byte[].class))
                .isEqualTo(original);
    }

    @Test
    void anOfficerReadsNoReferralAndPrintsNothing() {
        LetterOccasion result = waiting(LetterKind.RESULT, "L-1");
        var referral = new LetterOccasion("L-1", LetterKind.REFERRAL, result.testKey(), result.testDate(), Ears.BOTH);
        letters.print(List.of(LetterRequest.of(referral), LetterRequest.of(result)));
        List<Long> keys =
                letters.ofWorker("L-1").stream().map(PrintedLetter::key).toList();
        assertThat(keys).hasSize(2);

        SignIn.as(Role.SAFETY_OFFICER);
        assertThat(letters.ofWorker("L-1"))
                .singleElement()
                .satisfies(letter -> assertThat(letter.occasion().kind()).isEqualTo(LetterKind.RESULT));
        assertThat(letters.printed(LetterFilter.EVERYTHING)).hasSize(1);
        assertThat(PrintedPdf.of(letters.reprint(keys)).text()).doesNotContain("Remisión");
        assertThatThrownBy(() -> letters.print(List.of(LetterRequest.of(result))))
                .isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void theReferralTellsWhatIsKnownOfTheEarsAndNoOtherLetterDoes() {
        var ears = new PerEar<>(
                new EarLook(EnumSet.of(CanalFinding.CLEAR), ""), new EarLook(EnumSet.of(CanalFinding.WAX_BLOCKED), ""));
        clinical.enter(
                "L-1", TODAY, new ClinicalFacts(HealthHistory.NOT_ASKED, ears, false, "It hums since Sunday"), "");
        LetterOccasion result = waiting(LetterKind.RESULT, "L-1");
        var referral = new LetterOccasion("L-1", LetterKind.REFERRAL, result.testKey(), result.testDate(), Ears.BOTH);

        assertThat(PrintedPdf.of(letters.print(List.of(LetterRequest.of(referral)))
                                .pdf())
                        .text())
                .contains("wax", "It hums since Sunday");
        assertThat(PrintedPdf.of(
                                letters.print(List.of(LetterRequest.of(result))).pdf())
                        .text())
                .doesNotContain("wax")
                .doesNotContain("It hums since Sunday");
    }

    @Test
    void aNurseOfAnotherSiteSeesAndPrintsNothingOfIt() {
        LetterOccasion occasion = waiting(LetterKind.RESULT, "L-1");
        letters.print(List.of(LetterRequest.of(occasion)));
        long key = letters.ofWorker("L-1").getFirst().key();

        SignIn.as(Role.NURSE, "Yard");
        assertThat(allWaiting()).containsExactly("L-2 result");
        assertThat(letters.printed(LetterFilter.EVERYTHING)).isEmpty();
        assertThat(letters.ofWorker("L-1")).isEmpty();
        assertThat(letters.reprint(List.of(key))).isEmpty();
        assertThat(letters.print(List.of(LetterRequest.of(occasion))).leftOut()).isEqualTo(1);
        assertThat(letters.markGiven(List.of(key), TODAY, LetterMethod.POST).letters())
                .isZero();
        assertThatThrownBy(() -> texts.text("Mill", Language.ENGLISH, TextPart.RESULT))
                .isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void theListOfPrintedLettersIsNarrowedDown() {
        letters.print(List.of(
                LetterRequest.of(waiting(LetterKind.RESULT, "L-1")),
                LetterRequest.of(waiting(LetterKind.RESULT, "L-2"))));
        letters.markGiven(List.of(letters.ofWorker("L-2").getFirst().key()), TODAY, LetterMethod.POST);

        assertThat(letters.printed(new LetterFilter("nunez", Optional.empty(), Optional.empty())))
                .hasSize(1);
        assertThat(letters.printed(new LetterFilter("", Optional.of(LetterKind.REFERRAL), Optional.empty())))
                .isEmpty();
        assertThat(letters.printed(new LetterFilter("", Optional.empty(), Optional.of(true))))
                .singleElement()
                .satisfies(letter -> assertThat(letter.occasion().workerId()).isEqualTo("L-2"));
    }

    @Test
    void aTextIsCheckedWhenItIsSavedAndHoldsFromThenOn() {
        assertThat(texts.save("Yard", Language.ENGLISH, TextPart.RESULT, "Hello {worker.nam}, {findings} here"))
                .anyMatch(problem -> problem.startsWith("There is no placeholder {worker.nam}."))
                .anyMatch(problem -> problem.startsWith("{findings} needs a paragraph of its own"))
                .anyMatch(problem -> problem.contains("{audiogram} (the audiogram drawn)"));
        assertThat(texts.save("Yard", Language.ENGLISH, TextPart.LETTERHEAD, "The yard {retest.by}"))
                .containsExactly("{retest.by} cannot be filled in here. Take one from the list beside the text.");
        assertThat(texts.save("Yard", Language.ENGLISH, TextPart.LETTERHEAD, "The yard’s { nurse"))
                .singleElement()
                .asString()
                .startsWith("A brace stands by itself");
        assertThat(jdbc.queryForList("select * from letter_text")).isEmpty();

        assertThat(texts.save("Yard", Language.ENGLISH, TextPart.LETTERHEAD, "The yard’s nurse"))
                .isEmpty();
        assertThat(PrintedPdf.of(texts.preview("Yard", Language.ENGLISH, TextPart.SIGNATURE, "Signed by us"))
                        .text())
                .contains("The yard’s nurse", "Signed by us", "Robin Sample");
        assertThat(PrintedPdf.of(letters.print(List.of(LetterRequest.of(waiting(LetterKind.RESULT, "L-2"))))
                                .pdf())
                        .text())
                .contains("The yard’s nurse");

        texts.backToStandard("Yard", Language.ENGLISH, TextPart.LETTERHEAD);
        assertThat(texts.text("Yard", Language.ENGLISH, TextPart.LETTERHEAD).content())
                .startsWith("{site}");
        assertThat(texts.text("Yard", Language.ENGLISH, TextPart.LETTERHEAD).versions())
                .extracting(TextVersion::content)
                .containsExactly("", "The yard’s nurse");
    }

    @Test
    void everyStandardTextMayBeSaved() {
        for (TextPart part : TextPart.values()) {
            for (Language language : Language.values()) {
                assertThat(new LetterText(part, LetterTexts.standard(language, part)).problems())
                        .as(part + " " + language)
                        .isEmpty();
            }
        }
    }
}
