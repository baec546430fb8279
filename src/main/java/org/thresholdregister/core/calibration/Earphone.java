package org.thresholdregister.core.calibration;

import java.util.Optional;

/** The earphones for which 29 CFR 1910.95 Appendix E prints a table. */
public enum Earphone {
    /** Table E-1. */
    TDH_39("TDH-39", "E-1"),
    /** Table E-2. */
    TDH_49("TDH-49", "E-2");

    private final String word;
    private final String table;

    Earphone(String word, String table) {
        this.word = word;
        this.table = table;
    }

    public String word() {
        return word;
    }

    /** The table of Appendix E, {@code E-1}. */
    public String table() {
        return table;
    }

    /** The earphone of this name; empty where Appendix E has no table for it. */
    public static Optional<Earphone> find(String word) {
        for (Earphone earphone : values()) {
            if (earphone.word.equalsIgnoreCase(word.strip())) {
                return Optional.of(earphone);
            }
        }
        return Optional.empty();
    }
}
