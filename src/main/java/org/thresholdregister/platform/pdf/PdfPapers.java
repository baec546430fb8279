package org.thresholdregister.platform.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.multipdf.PDFMergerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** What is done with documents that were made by {@link PdfRenderer}; the bytes given stay as they are. */
public final class PdfPapers {

    private static final String FONT = "/org/thresholdregister/platform/pdf/fonts/LiberationSans-Bold.ttf";
    private static final float SIZE_POINTS = 9;

    private PdfPapers() {}

    /** A copy that carries these words at the head of every page, and before its title, where a screen reader begins. */
    public static byte[] marked(byte[] document, String words) {
        try (PDDocument pdf = Loader.loadPDF(document);
                InputStream fontFile = PdfPapers.class.getResourceAsStream(FONT)) {
            if (fontFile == null) {
                throw new IllegalStateException("the font is missing from the program");
            }
            var font = PDType0Font.load(pdf, fontFile, true);
            for (PDPage page : pdf.getPages()) {
                float top = page.getMediaBox().getHeight() - 30;
                try (var content = new PDPageContentStream(pdf, page, AppendMode.APPEND, true, true)) {
                    content.beginMarkedContent(COSName.ARTIFACT);
                    content.beginText();
                    content.setFont(font, SIZE_POINTS);
                    content.newLineAtOffset(57, top);
                    content.showText(words);
                    content.endText();
                    content.endMarkedContent();
                }
            }
            String title = words + " " + pdf.getDocumentInformation().getTitle();
            pdf.getDocumentInformation().setTitle(title);
            return saved(pdf);
        } catch (IOException failure) {
            throw new UncheckedIOException("the copy could not be marked", failure);
        }
    }

    /** All of them in one, in order, each part in its own language. */
    public static byte[] together(List<byte[]> documents) {
        if (documents.size() == 1) {
            return documents.getFirst();
        }
        try {
            var out = new ByteArrayOutputStream();
            var merger = new PDFMergerUtility();
            merger.setDestinationStream(out);
            for (byte[] document : documents) {
                merger.addSource(new RandomAccessReadBuffer(new ByteArrayInputStream(inItsLanguage(document))));
            }
            merger.mergeDocuments(null);
            return out.toByteArray();
        } catch (IOException failure) {
            throw new UncheckedIOException("the documents could not be put together", failure);
        }
    }

    /** The language of a document is written on its parts, since a file of several has only one of its own. */
    private static byte[] inItsLanguage(byte[] document) throws IOException {
        try (PDDocument pdf = Loader.loadPDF(document)) {
            String language = pdf.getDocumentCatalog().getLanguage();
            var root = pdf.getDocumentCatalog().getStructureTreeRoot();
            for (Object kid : root.getKids()) {
                if (kid instanceof PDStructureElement part) {
                    COSDictionary dictionary = part.getCOSObject();
                    dictionary.setString(COSName.LANG, language);
                }
            }
            return saved(pdf);
        }
    }

    private static byte[] saved(PDDocument pdf) throws IOException {
        var out = new ByteArrayOutputStream();
        pdf.save(out);
        return out.toByteArray();
    }
}
