package org.thresholdregister.platform.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.drawing.AudiogramComparison;
import org.thresholdregister.drawing.AudiogramSvg;

class PdfRendererTest {

    private static final String FOLDER = "org/thresholdregister/platform/pdf/";
    private static final Instant NOON = Instant.parse("2026-03-09T12:00:00Z");
    private static final Audiogram TEST = Vectors.flat(LocalDate.of(2026, 3, 9), TestPurpose.ANNUAL, 25, 35);
    private static final Audiogram BASELINE = Vectors.flat(LocalDate.of(2020, 2, 3), TestPurpose.BASELINE, 10, 10);

    private final PdfRenderer renderer = new PdfRenderer();

    public record Line(int number, String words) {}

    private static PrintedDocument sheet() {
        return new PrintedDocument(
                FOLDER + "sheet",
                Map.of(
                        "heading", "Señora Peña’s <sheet> & more",
                        "lines",
                                IntStream.rangeClosed(1, 60)
                                        .mapToObj(n -> new Line(n, "line " + n))
                                        .toList(),
                        "drawing", AudiogramSvg.forPaper(AudiogramComparison.of(TEST, BASELINE))),
                "A sheet",
                "Fernhollow \"Glassworks\" \\ health record; printed 9 Mar 2026",
                NOON);
    }

    private PrintedPdf print(PrintedDocument document) {
        return PrintedPdf.of(renderer.render(document));
    }

    @Test
    void aSheetIsPdfUaOne() {
        PrintedPdf pdf = print(sheet());
        pdf.savePictures(Path.of("target", "printed"), "sheet");
        assertThat(pdf.faults()).isEmpty();
    }

    @Test
    void textTitleAndLanguageAreReadBack() {
        PrintedPdf pdf = print(sheet());
        assertThat(pdf.text())
                .contains("Señora Peña’s <sheet> & more", "line 60")
                .contains("Fernhollow \"Glassworks\" \\ health record; printed 9 Mar 2026")
                .contains("Page 1 of " + pdf.pages(), "Page " + pdf.pages() + " of " + pdf.pages());
        assertThat(pdf.pages()).isGreaterThan(1);
        assertThat(pdf.title()).isEqualTo("A sheet");
        assertThat(pdf.language()).isEqualTo("en");
    }

    @Test
    void aSpanishDocumentSaysSo() {
        PrintedPdf pdf = print(sheet().in(Locale.of("es")));
        assertThat(pdf.language()).isEqualTo("es");
        assertThat(pdf.text()).contains("Página 1 de " + pdf.pages());
        assertThat(pdf.faults()).isEmpty();
    }

    @Test
    void theAudiogramIsAFigureThatSaysWhatItShows() {
        PrintedPdf pdf = print(sheet());
        assertThat(pdf.tags()).contains("H1", "Table", "TH", "TD", "Figure");
        assertThat(pdf.alternativeTexts())
                .containsExactly(AudiogramSvg.sentence(AudiogramComparison.of(TEST, BASELINE)));
    }

    @Test
    void everyFontIsInTheFile() {
        assertThat(print(sheet()).fonts())
                .contains("LiberationSans", "LiberationSans-Bold", "LiberationSans-Italic")
                .noneMatch(name -> name.contains("NOT EMBEDDED"));
    }

    @Test
    void theSameInputGivesTheSameBytes() {
        byte[] once = renderer.render(sheet());
        assertThat(new PdfRenderer().render(sheet())).isEqualTo(once);
    }

    @Test
    void paperIsLetterUnlessAskedOtherwise() {
        assertThat(print(sheet()).pageSize()).containsExactly(612, 792);
        assertThat(print(sheet().on(PaperSize.A4)).pageSize()).containsExactly(595, 842);
        assertThat(print(sheet().on(PaperSize.LETTER_ACROSS)).pageSize()).containsExactly(792, 612);
    }

    @Test
    void whatRefersToAFileOrAnAddressIsRefused() {
        for (String reference : List.of(
                "<img src=\"file:///etc/hostname\" alt=\"x\"/>",
                "<img src=\"http://127.0.0.1:1/x.png\" alt=\"x\"/>",
                "<img src=\"page.html\" alt=\"x\"/>",
                "<div style=\"background-image: url(file:///etc/hostname)\">x</div>")) {
            var document = new PrintedDocument(
                    FOLDER + "sheet", Map.of("heading", "x", "lines", List.of(), "drawing", reference), "t", "f", NOON);
            assertThatThrownBy(() -> renderer.render(document), reference).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void aDrawingReadsNoFile(@TempDir Path folder) throws IOException {
        Path picture = folder.resolve("picture.png");
        ImageIO.write(new BufferedImage(9, 9, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
        String drawing =
                "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" alt=\"x\""
                        + " width=\"9\" height=\"9\"><image width=\"9\" height=\"9\" xlink:href=\"" + picture.toUri()
                        + "\"/></svg>";
        byte[] pdf = renderer.render(new PrintedDocument(
                FOLDER + "sheet", Map.of("heading", "x", "lines", List.of(), "drawing", drawing), "t", "f", NOON));
        assertThat(PrintedPdf.of(pdf).images()).isZero();
    }

    @Test
    void aTemplateThatIsNotThereIsAnError() {
        assertThatThrownBy(() -> renderer.render(new PrintedDocument(FOLDER + "nothing", Map.of(), "t", "f", NOON)))
                .isInstanceOf(RuntimeException.class);
    }
}
