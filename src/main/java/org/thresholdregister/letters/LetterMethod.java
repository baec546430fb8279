package org.thresholdregister.letters;

/** How a letter was given to its reader. */
public enum LetterMethod {
    HANDED_OVER("handed over"),
    POST("sent by post"),
    /** By e-mail outside the register, which sends none. */
    EMAIL("sent by e-mail, outside the register");

    private final String words;

    LetterMethod(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
