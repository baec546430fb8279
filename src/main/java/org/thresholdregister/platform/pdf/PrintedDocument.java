package org.thresholdregister.platform.pdf;

import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * What is to be printed: a template and its values, and what every page carries.
 *
 * @param template name of a Thymeleaf template on the class path without {@code .html}, such as
 *     {@code org/thresholdregister/letters/result}; it gives what stands in the {@code body}, in whole elements, and
 *     nothing but what {@code values} hold can appear in it
 * @param values what the template names; records and other types of ours have to be public, so that it can read them
 * @param title of the document, read out by screen readers; it is not printed by itself
 * @param language of the document; the foot says "Page 1 of 2" in Spanish where this is Spanish, else in English
 * @param foot what stands at the foot of every page beside the page number: site, date, who printed it, and that it is
 *     a health record where it is one
 * @param styles names of more style sheets on the class path with their ending, used after {@code sheet.css}
 * @param createdAt the moment that the file names as its creation; part of what makes its bytes
 */
public record PrintedDocument(
        String template,
        Map<String, Object> values,
        String title,
        Locale language,
        PaperSize paper,
        String foot,
        List<String> styles,
        Instant createdAt) {

    public PrintedDocument {
        values = Map.copyOf(values);
        styles = List.copyOf(styles);
    }

    /** In English on US letter paper, in the plain style of {@code sheet.css}. */
    public PrintedDocument(String template, Map<String, Object> values, String title, String foot, Instant createdAt) {
        this(template, values, title, Locale.ENGLISH, PaperSize.LETTER, foot, List.of(), createdAt);
    }

    public PrintedDocument on(PaperSize other) {
        return new PrintedDocument(template, values, title, language, other, foot, styles, createdAt);
    }

    public PrintedDocument in(Locale other) {
        return new PrintedDocument(template, values, title, other, paper, foot, styles, createdAt);
    }

    public PrintedDocument styledBy(String... styleSheets) {
        return new PrintedDocument(template, values, title, language, paper, foot, List.of(styleSheets), createdAt);
    }
}
