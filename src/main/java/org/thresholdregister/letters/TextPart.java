package org.thresholdregister.letters;

import java.util.Optional;
import org.thresholdregister.core.wording.LetterKind;

/** A text that a site may write itself. */
public enum TextPart {
    LETTERHEAD("letterhead", "Letterhead", Optional.empty()),
    SIGNATURE("signature", "Signature", Optional.empty()),
    RESULT("Result of a test", LetterKind.RESULT),
    SHIFT_NOTICE("Written notice of a shift", LetterKind.SHIFT_NOTICE),
    RETEST_INVITATION("Retest invitation", LetterKind.RETEST_INVITATION),
    REFERRAL("Referral", LetterKind.REFERRAL),
    BASELINE_REVISION("Baseline revision", LetterKind.BASELINE_REVISION),
    NOT_WORK_RELATED("Not work-related", LetterKind.NOT_WORK_RELATED);

    private final String word;
    private final String label;
    private final Optional<LetterKind> kind;

    TextPart(String label, LetterKind kind) {
        this(kind.word(), label, Optional.of(kind));
    }

    TextPart(String word, String label, Optional<LetterKind> kind) {
        this.word = word;
        this.label = label;
        this.kind = kind;
    }

    static TextPart of(LetterKind kind) {
        return valueOf(kind.name());
    }

    /** The word used in files and addresses. */
    public String word() {
        return word;
    }

    /** For people. */
    public String label() {
        return label;
    }

    /** The letter that it is the text of; empty for what stands on all of them. */
    public Optional<LetterKind> kind() {
        return kind;
    }
}
