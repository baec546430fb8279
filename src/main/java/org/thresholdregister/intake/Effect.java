package org.thresholdregister.intake;

/** What a problem did to the row that has it. */
public enum Effect {
    ROW_LEFT_OUT("row left out"),
    CELL_LEFT_BLANK("cell left blank"),
    /** Nothing was lost, but somebody should know. */
    NOTE("note");

    private final String words;

    Effect(String words) {
        this.words = words;
    }

    /** The words used in files and on screens. */
    public String words() {
        return words;
    }
}
