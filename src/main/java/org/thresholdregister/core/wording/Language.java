package org.thresholdregister.core.wording;

import java.util.Locale;

/** A language that letters are written in. */
public enum Language {
    ENGLISH("en"),
    SPANISH("es");

    private final String code;

    Language(String code) {
        this.code = code;
    }

    /** ISO 639-1, as the roster and a PDF have it. */
    public String code() {
        return code;
    }

    public Locale locale() {
        return Locale.of(code);
    }

    /** The language that a roster names: Spanish for {@code es}, whatever its case or region, English for anything else. */
    public static Language of(String rosterLanguage) {
        String lower = rosterLanguage.strip().toLowerCase(Locale.ROOT);
        return lower.equals("es") || lower.startsWith("es-") || lower.startsWith("es_") ? SPANISH : ENGLISH;
    }
}
