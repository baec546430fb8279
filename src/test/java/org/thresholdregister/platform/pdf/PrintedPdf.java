package org.thresholdregister.platform.pdf;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

/** A PDF read back: its text, what a screen reader finds in it, its pictures, and what PDF/UA-1 has against it. */
public final class PrintedPdf {

    private final byte[] bytes;

    private PrintedPdf(byte[] bytes) {
        this.bytes = bytes;
    }

    public static PrintedPdf of(byte[] bytes) {
        return new PrintedPdf(bytes);
    }

    private interface Question<T> {
        T ask(PDDocument pdf) throws IOException;
    }

    private <T> T ask(Question<T> question) {
        try (PDDocument pdf = Loader.loadPDF(bytes)) {
            return question.ask(pdf);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** All text in reading order, each run of white space as one space. */
    public String text() {
        return ask(pdf -> new PDFTextStripper().getText(pdf))
                .replaceAll("\\s+", " ")
                .strip();
    }

    public int pages() {
        return ask(PDDocument::getNumberOfPages);
    }

    public String language() {
        return ask(pdf -> pdf.getDocumentCatalog().getLanguage());
    }

    public String title() {
        return ask(pdf -> pdf.getDocumentInformation().getTitle());
    }

    /** Width and height of the first page in points, 72 to the inch. */
    public List<Integer> pageSize() {
        return ask(pdf -> {
            var box = pdf.getPage(0).getMediaBox();
            return List.of(Math.round(box.getWidth()), Math.round(box.getHeight()));
        });
    }

    /** The kinds of tag in it, in order, such as {@code H1}, {@code Table}, {@code Figure}. */
    public List<String> tags() {
        return ask(pdf -> {
            List<String> found = new ArrayList<>();
            walk(pdf.getDocumentCatalog().getStructureTreeRoot(), found, new ArrayList<>());
            return found;
        });
    }

    public List<String> alternativeTexts() {
        return ask(pdf -> {
            List<String> found = new ArrayList<>();
            walk(pdf.getDocumentCatalog().getStructureTreeRoot(), new ArrayList<>(), found);
            return found;
        });
    }

    private static void walk(PDStructureNode node, List<String> tags, List<String> alternatives) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                tags.add(element.getStructureType());
                if (element.getAlternateDescription() != null) {
                    alternatives.add(element.getAlternateDescription());
                }
                walk(element, tags, alternatives);
            }
        }
    }

    /** Names of the fonts on the pages and in their drawings, those that are not embedded marked. */
    public List<String> fonts() {
        return ask(pdf -> {
            List<String> found = new ArrayList<>();
            for (var page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    found.add(font.getName().replaceFirst("^[A-Z]{6}\\+", "")
                            + (font.isEmbedded() ? "" : " NOT EMBEDDED"));
                }
            }
            return found.stream().distinct().sorted().toList();
        });
    }

    /** How many bitmaps the file holds. */
    public int images() {
        return ask(pdf -> (int) pdf.getDocument().getObjectsByType(COSName.XOBJECT).stream()
                .filter(object -> object.getObject() instanceof COSStream stream
                        && COSName.IMAGE.equals(stream.getCOSName(COSName.SUBTYPE)))
                .count());
    }

    /** What PDF/UA-1 (ISO 14289-1) has against it, by veraPDF; empty where it conforms. */
    public List<String> faults() {
        VeraGreenfieldFoundryProvider.initialise();
        try (PDFAParser parser =
                        Foundries.defaultInstance().createParser(new ByteArrayInputStream(bytes), PDFAFlavour.PDFUA_1);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            var result = validator.validate(parser);
            if (result.getTotalAssertions() == 0) {
                return List.of("nothing was checked");
            }
            return result.getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId().getClause() + " " + assertion.getMessage())
                    .distinct()
                    .toList();
        } catch (VeraPDFException | IOException failure) {
            throw new IllegalStateException(failure);
        }
    }

    /** Draws each page as a picture into a folder, to be looked at. */
    public void savePictures(Path folder, String name) {
        ask(pdf -> {
            Files.createDirectories(folder);
            var renderer = new PDFRenderer(pdf);
            for (int page = 0; page < pdf.getNumberOfPages(); page++) {
                BufferedImage picture = renderer.renderImageWithDPI(page, 80, ImageType.RGB);
                ImageIO.write(
                        picture,
                        "png",
                        folder.resolve(name + "-" + (page + 1) + ".png").toFile());
            }
            return name;
        });
    }
}
