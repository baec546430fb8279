package org.thresholdregister.letters.ui;

import org.thresholdregister.core.wording.Language;
import org.thresholdregister.core.wording.LetterKind;
import org.thresholdregister.letters.PrintedLetter;
import org.thresholdregister.platform.ui.Dates;

/** Letters in the words of the pages. */
final class LetterLabels {

    private LetterLabels() {}

    static String kind(LetterKind kind) {
        return switch (kind) {
            case RESULT -> "Result of a test";
            case SHIFT_NOTICE -> "Written notice";
            case RETEST_INVITATION -> "Retest invitation";
            case REFERRAL -> "Referral";
            case BASELINE_REVISION -> "Baseline revision";
            case NOT_WORK_RELATED -> "Not work-related";
        };
    }

    static String language(Language language) {
        return switch (language) {
            case ENGLISH -> "English";
            case SPANISH -> "Spanish";
        };
    }

    static String name(String givenName, String familyName, String workerId) {
        String name = (givenName + " " + familyName).strip();
        return name.isEmpty() ? workerId : name;
    }

    static String state(PrintedLetter letter) {
        return letter.givenOn()
                .map(day ->
                        letter.method().map(method -> method.words()).orElse("given") + " on " + Dates.onScreen(day))
                .orElse("printed, not given yet");
    }
}
