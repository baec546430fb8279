package org.thresholdregister.platform.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FSFontUseCase;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.springframework.stereotype.Component;
import org.thymeleaf.TemplateEngine;
import org.thymeleaf.context.Context;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Makes a tagged PDF (PDF/UA-1) of a template and its values. A template is well-formed XHTML; its headings, tables and
 * lists become the tags, an inline SVG with an {@code alt} attribute becomes a figure with alternative text. It can name
 * no file and no address: whatever it refers to is refused, and rendering fails.
 *
 * <p>Use, from a service that has checked the role:
 *
 * <pre>{@code
 * // src/main/resources/org/thresholdregister/testdays/run-sheet.html
 * // <h1 th:text="${heading}">Run sheet</h1>
 * // <table>
 * //   <thead><tr><th scope="col">Time</th><th scope="col">Worker</th></tr></thead>
 * //   <tbody>
 * //     <tr th:each="row : ${rows}"><td th:text="${row.time()}">7:00</td><td th:text="${row.worker()}">Name</td></tr>
 * //   </tbody>
 * // </table>
 *
 * byte[] pdf = renderer.render(new PrintedDocument(
 *         "org/thresholdregister/testdays/run-sheet",
 *         Map.of("heading", "Run sheet, 9 Mar 2026", "rows", rows),
 *         "Run sheet of 9 Mar 2026",
 *         "Fernhollow Glassworks, printed 8 Mar 2026 by Ada Nurse",
 *         clock.instant()));
 * }</pre>
 *
 * <p>{@code sheet.css} beside this class gives every document its type, its tables and lists, and these classes:
 * {@code quiet} (small and grey), {@code number} (a cell of figures), {@code sign} (a line to write on, with what belongs
 * there beneath), {@code box} (a square to tick), {@code facts} (a table of a name and its value without lines),
 * {@code caution} (a framed note), {@code together} (not broken over two pages) and {@code next-page}. A table that
 * runs over a page repeats its head.
 */
@Component
public class PdfRenderer {

    private static final String FOLDER = "org/thresholdregister/platform/pdf/";
    private static final String PAGE = FOLDER + "page";
    private static final String FAMILY = "Liberation Sans";

    private static final String FOOT_STYLE = "font-family: \"Liberation Sans\"; font-size: 8pt; color: #333333;"
            + " vertical-align: top; padding-top: 3mm;";

    private final TemplateEngine templates = new TemplateEngine();
    private final List<Face> faces = List.of(
            new Face("LiberationSans-Regular.ttf", 400, FontStyle.NORMAL),
            new Face("LiberationSans-Bold.ttf", 700, FontStyle.NORMAL),
            new Face("LiberationSans-Italic.ttf", 400, FontStyle.ITALIC));

    private record Face(byte[] bytes, int weight, FontStyle style) {

        Face(String file, int weight, FontStyle style) {
            this(resource(FOLDER + "fonts/" + file), weight, style);
        }
    }

    public PdfRenderer() {
        XRLog.setLoggingEnabled(false);
        var resolver = new ClassLoaderTemplateResolver(PdfRenderer.class.getClassLoader());
        resolver.setSuffix(".html");
        resolver.setTemplateMode(TemplateMode.HTML);
        resolver.setCharacterEncoding(StandardCharsets.UTF_8.name());
        templates.setTemplateResolver(resolver);
    }

    /**
     * The document as bytes of a PDF file.
     *
     * @throws IllegalArgumentException where the template is not well-formed, or refers to anything outside it
     */
    public byte[] render(PrintedDocument document) {
        var refused = new Refusals();
        var builder = new PdfRendererBuilder()
                .usePdfUaAccessibility(true)
                .withProducer("Threshold Register")
                .withHtmlContent(html(document), null)
                .useUriResolver((base, uri) -> refused.note(uri))
                .useExternalResourceAccessControl(
                        (uri, type) -> refused.refuse(uri), ExternalResourceControlPriority.RUN_BEFORE_RESOLVING_URI)
                .useExternalResourceAccessControl(
                        (uri, type) -> refused.refuse(uri), ExternalResourceControlPriority.RUN_AFTER_RESOLVING_URI)
                .useSVGDrawer(new BatikSVGDrawer())
                .addDOMMutator(PdfRenderer::letDrawingsUseOurFont);
        faces.forEach(face -> builder.useFont(
                () -> new ByteArrayInputStream(face.bytes()),
                FAMILY,
                face.weight(),
                face.style(),
                true,
                EnumSet.allOf(FSFontUseCase.class)));
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            try (PDDocument pdf = renderer.createPDFKeepOpen()) {
                refused.check();
                return bytes(pdf, document.createdAt());
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("the document could not be put together", failure);
        }
    }

    /** A drawing that asks for any sans-serif would take whichever the machine has. */
    private static void letDrawingsUseOurFont(Document document) {
        NodeList drawings = document.getElementsByTagName("svg");
        for (int i = 0; i < drawings.getLength(); i++) {
            ((Element) drawings.item(i)).setAttribute("font-family", FAMILY);
        }
    }

    private String html(PrintedDocument document) {
        boolean spanish = document.language().getLanguage().equals("es");
        var context = new Context(Locale.ROOT, document.values());
        context.setVariable("documentLanguage", document.language().toLanguageTag());
        context.setVariable("documentTitle", document.title());
        context.setVariable("documentBody", document.template());
        context.setVariable(
                "documentStyle",
                Stream.concat(Stream.of(FOLDER + "sheet.css"), document.styles().stream())
                                .map(name -> new String(resource(name), StandardCharsets.UTF_8))
                                .collect(Collectors.joining("\n"))
                        + page(document, spanish ? "Página" : "Page", spanish ? "de" : "of"));
        return templates.process(PAGE, context);
    }

    /** The boxes at a page's margin cannot be spread over several rules: the last one counts alone. */
    private static String page(PrintedDocument document, String page, String of) {
        return """

                @page {
                  size: %s;
                  margin: 18mm 18mm 22mm 20mm;
                  @bottom-left { %s width: 80%%; text-align: left; content: "%s"; }
                  @bottom-right { %s width: 20%%; text-align: right; content: "%s " counter(page) " %s " counter(pages); }
                }
                """.formatted(document.paper().css(), FOOT_STYLE, cssText(document.foot()), FOOT_STYLE, page, of);
    }

    /** Inside a CSS string, where letters, figures and spaces stand for themselves and all else is written by number. */
    private static String cssText(String text) {
        return text.codePoints()
                .mapToObj(point -> Character.isLetterOrDigit(point) || point == ' '
                        ? Character.toString(point)
                        : "\\" + Integer.toHexString(point) + " ")
                .collect(Collectors.joining());
    }

    /** The machine's clock and its chance numbers stay out of the file. */
    private static byte[] bytes(PDDocument pdf, Instant createdAt) throws IOException {
        var time = GregorianCalendar.from(createdAt.atZone(ZoneOffset.UTC));
        pdf.getDocumentInformation().setCreationDate(time);
        pdf.getDocumentInformation().setModificationDate(null);
        pdf.setDocumentId(createdAt.toEpochMilli());
        var out = new ByteArrayOutputStream();
        pdf.save(out);
        return out.toByteArray();
    }

    private static byte[] resource(String name) {
        try (InputStream in = PdfRenderer.class.getClassLoader().getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("nothing on the class path is called " + name);
            }
            return in.readAllBytes();
        } catch (IOException failure) {
            throw new UncheckedIOException("could not read " + name, failure);
        }
    }
}
