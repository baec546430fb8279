package org.thresholdregister.clinical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.support.TransactionTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.audiograms.TestSigned;
import org.thresholdregister.clinical.ClinicalResult.Kept;
import org.thresholdregister.clinical.ClinicalResult.Reason;
import org.thresholdregister.clinical.ClinicalResult.Refused;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.clinical.CanalFinding;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.clinical.EarLook;
import org.thresholdregister.core.clinical.HealthHistory;
import org.thresholdregister.core.clinical.HealthQuestion;
import org.thresholdregister.core.clinical.Reply;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.documents.NewDocument;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026. */
@RegisterTest
class ClinicalServiceTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 9);

    private static final ClinicalFacts SHOOTS_AND_HAS_A_COLD = new ClinicalFacts(
            new HealthHistory(
                    Map.of(
                            HealthQuestion.SHOOTING, new Reply(true, "deer = each autumn"),
                            HealthQuestion.SOLVENTS, new Reply(false, ""),
                            HealthQuestion.COLD, new Reply(true, "")),
                    Optional.of(Ear.RIGHT)),
            new PerEar<>(
                    new EarLook(Set.of(CanalFinding.WAX_PARTIAL, CanalFinding.RED), "sore"),
                    new EarLook(Set.of(CanalFinding.CLEAR), "")),
            false,
            "It rings\nat night");

    @Autowired
    private ClinicalService clinical;

    @Autowired
    private ClinicalStore store;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private TransactionTemplate transaction;

    @Autowired
    private ApplicationEventPublisher events;

    @BeforeEach
    void twoSites() {
        SignIn.as(Role.NURSE);
        files.store("""
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                M-1,1990-05-01,F,Núñez,Ada,Mill,2020-01-01
                Y-1,1990-01-01,F,Quill,Cato,Yard,2020-01-01
                """, "", "");
        SignIn.as(Role.NURSE, "Mill");
    }

    private ClinicalRecord record() {
        return clinical.of("M-1").orElseThrow();
    }

    private static ClinicalFacts looks(CanalFinding... findings) {
        return new ClinicalFacts(
                HealthHistory.NOT_ASKED, new PerEar<>(new EarLook(Set.of(findings), ""), EarLook.NOT_LOOKED), true, "");
    }

    private long keyOf(String workerId) {
        return jdbc.queryForObject("select id from worker where worker_id = ?", Long.class, workerId);
    }

    @Test
    void whatWasEnteredComesBackAsItWas() {
        assertThat(clinical.enter("M-1", TODAY, SHOOTS_AND_HAS_A_COLD, "")).isEqualTo(new Kept());
        assertThat(record().entries()).extracting(ClinicalEntry::facts).containsExactly(SHOOTS_AND_HAS_A_COLD);
        assertThat(jdbc.queryForMap("select action, subject_id, detail from audit_event order by id desc limit 1")
                        .values())
                .containsExactly("CLINICAL_ENTRY_MADE", "M-1", "as of 2026-03-09");
    }

    @Test
    void theNextTestBeginsWithTheAnswersThatLastAndNotWithTheColdOfToday() {
        clinical.enter("M-1", LocalDate.of(2025, 3, 9), SHOOTS_AND_HAS_A_COLD, "");
        ClinicalFacts next = record().toBeginWith(TODAY);
        assertThat(next.history().replies()).containsOnlyKeys(HealthQuestion.SHOOTING, HealthQuestion.SOLVENTS);
        assertThat(next.history().shoulder()).contains(Ear.RIGHT);
        assertThat(next.ears()).isEqualTo(ClinicalFacts.NOTHING.ears());
        assertThat(next.said()).isEmpty();
    }

    @Test
    void anEntryOfTheSameDayTakesItsPlaceOnlyWithAReasonAndTheFirstStaysReadable() {
        clinical.enter("M-1", TODAY, SHOOTS_AND_HAS_A_COLD, "");
        assertThat(clinical.enter("M-1", TODAY, looks(CanalFinding.WAX_BLOCKED), " "))
                .isEqualTo(new Refused(Reason.REASON_MISSING));
        assertThat(clinical.enter("M-1", TODAY, looks(CanalFinding.WAX_BLOCKED), "Looked again"))
                .isEqualTo(new Kept());
        assertThat(record().entries())
                .extracting(ClinicalEntry::inForce, ClinicalEntry::reason)
                .containsExactly(tuple(true, "Looked again"), tuple(false, ""));
    }

    @Test
    void whatContradictsItselfOrSaysNothingIsNotKept() {
        assertThat(clinical.enter("M-1", TODAY, looks(CanalFinding.CLEAR, CanalFinding.RED), ""))
                .isEqualTo(new Refused(Reason.CLEAR_AND_MORE));
        assertThat(clinical.enter("M-1", TODAY, looks(CanalFinding.OTHER), ""))
                .isEqualTo(new Refused(Reason.OTHER_WITHOUT_NOTE));
        assertThat(clinical.enter("M-1", TODAY, ClinicalFacts.NOTHING, ""))
                .isEqualTo(new Refused(Reason.NOTHING_ENTERED));
        assertThat(clinical.enter("M-1", TODAY.plusDays(1), looks(CanalFinding.RED), ""))
                .isEqualTo(new Refused(Reason.IN_THE_FUTURE));
        assertThat(record().entries()).isEmpty();
    }

    @Test
    void whatIsTypedBesideATestCountsOnceTheTestIsSigned() {
        assertThat(clinical.keepDraft("M-1", 7, SHOOTS_AND_HAS_A_COLD)).isEqualTo(new Kept());
        assertThat(clinical.draft("M-1", 7)).contains(SHOOTS_AND_HAS_A_COLD);
        assertThat(record().entries()).isEmpty();
        LocalDate tested = LocalDate.of(2026, 3, 6);
        transaction.executeWithoutResult(
                status -> events.publishEvent(new TestSigned(1, keyOf("M-1"), tested, TestPurpose.ANNUAL, 7)));
        assertThat(record().entries())
                .extracting(ClinicalEntry::day, ClinicalEntry::facts)
                .containsExactly(tuple(tested, SHOOTS_AND_HAS_A_COLD));
        assertThat(clinical.draft("M-1", 7)).isEmpty();
    }

    @Test
    void aDraftOfAnotherWorkerIsNeitherReadNorReplaced() {
        clinical.keepDraft("M-1", 7, SHOOTS_AND_HAS_A_COLD);
        SignIn.as(Role.NURSE);
        assertThat(clinical.draft("Y-1", 7)).isEmpty();
        assertThat(clinical.keepDraft("Y-1", 7, looks(CanalFinding.RED))).isEqualTo(new Refused(Reason.UNKNOWN_WORKER));
        transaction.executeWithoutResult(
                status -> events.publishEvent(new TestSigned(1, keyOf("Y-1"), TODAY, TestPurpose.ANNUAL, 7)));
        assertThat(clinical.of("Y-1").orElseThrow().entries()).isEmpty();
    }

    @Test
    void aNurseOfAnotherSiteFindsAndEntersNothing() {
        clinical.enter("M-1", TODAY, SHOOTS_AND_HAS_A_COLD, "");
        SignIn.as(Role.NURSE, "Yard");
        assertThat(clinical.of("M-1")).isEmpty();
        assertThat(clinical.worker("M-1")).isEmpty();
        assertThat(clinical.draft("M-1", 7)).isEmpty();
        var unknown = new Refused(Reason.UNKNOWN_WORKER);
        assertThat(clinical.enter("M-1", TODAY, SHOOTS_AND_HAS_A_COLD, "again")).isEqualTo(unknown);
        assertThat(clinical.keepDraft("M-1", 7, SHOOTS_AND_HAS_A_COLD)).isEqualTo(unknown);
        assertThat(clinical.refuse("M-1", TODAY, "No time", Optional.empty())).isEqualTo(unknown);
        assertThat(clinical.takeBackRefusal("M-1", 1, "slip")).isEqualTo(unknown);
        assertThat(clinical.signedSheet("M-1", 1)).isEmpty();
    }

    @Test
    void aRefusalIsKeptWithItsSheetAndClosesNoDuty() {
        assertThat(clinical.refuse("M-1", TODAY, " ", Optional.empty())).isEqualTo(new Refused(Reason.REASON_MISSING));
        byte[] sheet = "%PDF-1.7 signed".getBytes(StandardCharsets.US_ASCII);
        int owed = jdbc.queryForObject("select count(*) from follow_up", Integer.class);
        assertThat(clinical.refuse("M-1", TODAY, "No time today", NewDocument.of("sheet.pdf", sheet)))
                .isEqualTo(new Kept());
        assertThat(owed).isPositive();
        assertThat(jdbc.queryForObject("select count(*) from follow_up", Integer.class))
                .isEqualTo(owed);
        Refusal refusal = record().refusals().getFirst();
        assertThat(refusal.reason()).isEqualTo("No time today");
        assertThat(clinical.signedSheet("M-1", refusal.key())).contains(sheet);
        assertThat(clinical.takeBackRefusal("M-1", refusal.key(), "It was another worker"))
                .isEqualTo(new Kept());
        assertThat(clinical.takeBackRefusal("M-1", refusal.key(), "again"))
                .isEqualTo(new Refused(Reason.NO_SUCH_REFUSAL));
        assertThat(record().refusals())
                .extracting(Refusal::takenBack)
                .containsExactly(Optional.of("It was another worker"));
    }

    @Test
    void theFormToSignIsAPdfThatNamesTheWorkerAndNothingOfTheRecord() throws IOException {
        clinical.enter("M-1", TODAY, SHOOTS_AND_HAS_A_COLD, "");
        try (PDDocument pdf = Loader.loadPDF(clinical.refusalForm("M-1").orElseThrow())) {
            assertThat(new PDFTextStripper().getText(pdf))
                    .contains("I do not want the hearing test")
                    .contains("For Ada Núñez, number M-1.")
                    .contains("Signature of the worker")
                    .contains("Health record. Mill.")
                    .doesNotContain("deer");
            assertThat(pdf.getDocumentCatalog().getLanguage()).isEqualTo("en");
        }
        assertThat(clinical.refusalForm("Y-1")).as("of another site").isEmpty();
    }

    @Test
    void theLatestOfEachPartIsThereForALetter() {
        clinical.enter("M-1", LocalDate.of(2025, 3, 9), SHOOTS_AND_HAS_A_COLD, "");
        clinical.enter("M-1", TODAY, looks(CanalFinding.WAX_BLOCKED), "");
        ClinicalStore.Latest latest = transaction.execute(status -> store.latest(keyOf("M-1")));
        assertThat(latest.history().orElseThrow().day()).isEqualTo(LocalDate.of(2025, 3, 9));
        assertThat(latest.ears().orElseThrow().day()).isEqualTo(TODAY);
        assertThat(latest.said().orElseThrow().what()).isEqualTo("It rings\nat night");
    }

    @Test
    void theAuditTrailTellsThatSomethingWasEnteredAndNeverWhat() {
        clinical.enter("M-1", TODAY, SHOOTS_AND_HAS_A_COLD, "");
        clinical.refuse("M-1", TODAY, "Afraid of the booth", Optional.empty());
        assertThat(jdbc.queryForList("select detail from audit_event", String.class))
                .noneMatch(detail -> detail.contains("deer")
                        || detail.contains("rings")
                        || detail.contains("Afraid")
                        || detail.contains("wax"));
    }
}
