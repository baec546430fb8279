package org.thresholdregister.letters;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.core.wording.LetterWords;
import org.thresholdregister.letters.LetterComposer.Circumstances;
import org.thresholdregister.letters.LetterComposer.Texts;
import org.thresholdregister.platform.pdf.PdfPapers;
import org.thresholdregister.platform.pdf.PdfRenderer;
import org.thresholdregister.platform.pdf.PrintedPdf;
import org.thresholdregister.review.WorkerRecord;

/** Every letter in both languages, read back as PDF. Today is 9 March 2026, the test was made three days before. */
class LetterPdfTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 9);
    private static final PdfRenderer RENDERER = new PdfRenderer();

    private static byte[] letter(LetterKind kind, Language language, List<ClinicalHistory.Chapter> history) {
        WorkerRecord record = ExampleRecord.of("Fernhollow Glassworks", TODAY, kind);
        var circumstances = new Circumstances(
                TODAY.atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC),
                ZoneOffset.UTC,
                "Ada Nurse",
                Optional.empty(),
                history);
        return RENDERER.render(new LetterComposer(record, ExampleRecord.occasion(record, kind), language, circumstances)
                .compose(new Texts(
                        LetterTexts.standard(language, TextPart.LETTERHEAD),
                        LetterTexts.standard(language, TextPart.of(kind)),
                        LetterTexts.standard(language, TextPart.SIGNATURE))));
    }

    private static PrintedPdf read(LetterKind kind, Language language) {
        return PrintedPdf.of(letter(kind, language, List.of()));
    }

    static Stream<Arguments> letters() {
        return Stream.of(LetterKind.values())
                .flatMap(kind -> Stream.of(Language.values()).map(language -> Arguments.of(kind, language)));
    }

    @ParameterizedTest
    @MethodSource("letters")
    void everyLetterIsPdfUaOneInItsLanguageWithTheCaution(LetterKind kind, Language language) {
        PrintedPdf pdf = read(kind, language);
        pdf.savePictures(Path.of("target", "printed"), kind.word() + "-" + language.code());
        LetterWords words = LetterWords.in(language);

        assertThat(pdf.faults()).isEmpty();
        assertThat(pdf.language()).isEqualTo(language.code());
        assertThat(pdf.title()).isEqualTo(words.title(kind));
        assertThat(pdf.tags()).contains("H1", "P");
        assertThat(pdf.text())
                .contains(words.title(kind), words.caution(), "Robin Sample", "Fernhollow Glassworks", "Ada Nurse")
                .contains(words.healthRecord() + ", Fernhollow Glassworks, ")
                .doesNotContain("{", "}");
        assertThat(pdf.fonts()).noneMatch(font -> font.contains("NOT EMBEDDED"));
    }

    @Test
    void aResultSaysWhatWasFoundDrawsItAndTellsItInWords() {
        PrintedPdf english = read(LetterKind.RESULT, Language.ENGLISH);
        assertThat(english.text())
                .contains("Right ear. This ear hears less well than in the baseline test of March 6, 2024."
                        + " This change is called a standard threshold shift."
                        + " The average change at 2000, 3000 and 4000 Hz is 15.00 dB.")
                .contains("Left ear. We found no large change since the baseline test of March 6, 2024."
                        + " The average change at 2000, 3000 and 4000 Hz is 1.67 dB.")
                .contains("You may take a second test, by April 5, 2026.")
                .contains("You will get a written notice about the change.")
                .contains("Your next test is due by March 6, 2027.")
                .contains("4000 35 15 15 15");
        assertThat(english.tags()).contains("Table", "TH", "TD", "Figure");
        assertThat(english.alternativeTexts())
                .singleElement()
                .asString()
                .startsWith("Audiogram of 6 Mar 2026, annual test.")
                .contains("4000 Hz 35 dB HL, baseline 15 dB HL");

        PrintedPdf spanish = read(LetterKind.RESULT, Language.SPANISH);
        assertThat(spanish.text())
                .contains("Oído derecho. Este oído oye menos que en la prueba de referencia del 6 de marzo de 2024."
                        + " Este cambio se llama cambio estándar del umbral auditivo.")
                .contains("hasta el 5 de abril de 2026");
        assertThat(spanish.alternativeTexts())
                .singleElement()
                .asString()
                .startsWith("Audiograma del 6 mar 2026, prueba anual.")
                .contains("Oído izquierdo, comparado con la referencia del 6 mar 2024")
                .doesNotContain("baseline", "ear");
    }

    @Test
    void aNoticeNamesTheRuleAndItsTime() {
        assertThat(read(LetterKind.SHIFT_NOTICE, Language.ENGLISH).text())
                .contains("The rule 29 CFR 1910.95(g)(8)(i) says that we must tell you of a standard threshold shift in"
                        + " writing, within 21 days.");
        assertThat(read(LetterKind.SHIFT_NOTICE, Language.SPANISH).text())
                .contains("La norma 29 CFR 1910.95(g)(8)(i) dice que debemos avisarle por escrito de un cambio estándar"
                        + " del umbral auditivo, dentro de 21 días.");
    }

    @Test
    void aRetestInvitationHasTheLastDayTheQuietHoursAndRoomForThePlace() {
        assertThat(read(LetterKind.RETEST_INVITATION, Language.ENGLISH).text())
                .contains("Please come by April 5, 2026.", "Day and time:", "Place:")
                .contains("Stay away from loud noise for 14 hours before the test");
        assertThat(read(LetterKind.RETEST_INVITATION, Language.SPANISH).text())
                .contains("a más tardar el 5 de abril de 2026", "Día y hora:", "en las 14 horas antes de la prueba");
    }

    @Test
    void aReferralHoldsBothAudiogramsTheHistoryAndTheListOfEnclosures() {
        PrintedPdf pdf = PrintedPdf.of(letter(
                LetterKind.REFERRAL,
                Language.ENGLISH,
                List.of(new ClinicalHistory.Chapter("Ear examination", List.of("Wax in the right ear")))));
        assertThat(pdf.text())
                .contains("April 12, 1985", "Press operator, Hot End", "91.5 dBA")
                .contains("Ear examination", "Wax in the right ear")
                .contains("Right ear. This ear hears less well than in the baseline test")
                .as("it speaks to a professional of somebody else")
                .doesNotContain("You ", "you hear", "your ")
                .contains("(A) The requirements for hearing conservation, 29 CFR 1910.95(c) to (n)")
                .contains("(B) The baseline audiogram of March 6, 2024 and the most recent audiogram of March 6, 2026")
                .contains("(C) Background sound levels", "(D) Records of the audiometer’s calibrations");
        assertThat(pdf.alternativeTexts()).hasSize(1);
        assertThat(read(LetterKind.REFERRAL, Language.SPANISH).text())
                .contains("De esto no hay nada en este registro.");
    }

    @Test
    void aDecisionIsToldWithWhoTookItAndWhen() {
        assertThat(read(LetterKind.BASELINE_REVISION, Language.ENGLISH).text())
                .contains("This was decided on March 9, 2026 by Dr. Example, physician.")
                .contains("Your hearing has changed and the change has stayed.");
        assertThat(read(LetterKind.NOT_WORK_RELATED, Language.SPANISH).text())
                .contains("La causa la estudió Dr. Example, physician.", "(oído derecho)");
    }

    @Test
    void workersAreToldNothingOfTheClinicalHistory() {
        var history = List.of(new ClinicalHistory.Chapter("Ear examination", List.of("Wax in the right ear")));
        for (LetterKind kind : LetterKind.values()) {
            if (kind.isForTheWorker()) {
                assertThat(PrintedPdf.of(letter(kind, Language.ENGLISH, history))
                                .text())
                        .doesNotContain("Wax");
            }
        }
    }

    @Test
    void aReprintSaysSoOnEveryPageAndInItsTitleAndStaysPdfUaOne() {
        byte[] original = letter(LetterKind.RESULT, Language.ENGLISH, List.of());
        byte[] before = original.clone();
        String words = LetterWords.in(Language.ENGLISH).reprint(TODAY, TODAY.plusDays(30));
        PrintedPdf copy = PrintedPdf.of(PdfPapers.marked(original, words));

        assertThat(original).isEqualTo(before);
        assertThat(copy.text().split("Reprint of April 8, 2026", -1)).hasSize(copy.pages() + 1);
        assertThat(copy.title()).startsWith("Reprint of April 8, 2026.");
        assertThat(copy.faults()).isEmpty();
        copy.savePictures(Path.of("target", "printed"), "reprint");
    }

    @Test
    void aBatchIsOneFileAndStaysPdfUaOne() {
        PrintedPdf batch = PrintedPdf.of(PdfPapers.together(List.of(
                letter(LetterKind.RESULT, Language.ENGLISH, List.of()),
                letter(LetterKind.SHIFT_NOTICE, Language.SPANISH, List.of()))));
        assertThat(batch.text()).contains("The result of your hearing test", "Aviso por escrito sobre su audición");
        assertThat(batch.faults()).isEmpty();
        assertThat(batch.alternativeTexts()).hasSize(1);
    }
}
