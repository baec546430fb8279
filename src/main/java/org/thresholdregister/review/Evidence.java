package org.thresholdregister.review;

import java.util.Optional;
import org.thresholdregister.platform.documents.NewDocument;

/**
 * How something was done, and what shows it.
 *
 * @param note where and how in words; may be empty
 */
public record Evidence(Means means, String note, Optional<Attached> attached) {

    /** By what something was done. */
    public enum Means {
        /** A letter was handed over in person. */
        HANDED_OVER("handed-over"),
        /** A letter was sent by post. */
        POSTED("posted"),
        /** A letter was sent electronically. */
        ELECTRONIC("electronic"),
        /** A letter was explained in person, and signed for. */
        SIGNED_FOR("signed-for"),
        /** As the note or the file says. */
        NOTED("noted");

        private final String word;

        Means(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** A file that shows it. */
    public sealed interface Attached {
        /** One that is stored together with the decision. */
        record New(NewDocument document) implements Attached {}

        /** One that is kept already, such as a letter as it was sent. */
        record Kept(long documentKey) implements Attached {}
    }

    /** Whether it shows anything: what is only noted has a note or a file. */
    public boolean showsSomething() {
        return means != Means.NOTED || !note.isBlank() || attached.isPresent();
    }
}
