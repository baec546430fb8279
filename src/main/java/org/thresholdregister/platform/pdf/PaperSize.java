package org.thresholdregister.platform.pdf;

/** The paper that a document is printed on. */
public enum PaperSize {
    /** 8.5 by 11 inches, as plants in the United States have it. */
    LETTER("letter portrait"),
    /** 11 by 8.5 inches, for wide lists. */
    LETTER_ACROSS("letter landscape"),
    /** 210 by 297 mm. */
    A4("A4 portrait"),
    /** 297 by 210 mm, for wide lists. */
    A4_ACROSS("A4 landscape");

    private final String css;

    PaperSize(String css) {
        this.css = css;
    }

    String css() {
        return css;
    }
}
