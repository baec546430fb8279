package org.thresholdregister.clinical.ui;

import org.thresholdregister.clinical.ClinicalResult;

/** Why nothing was kept, in words. */
final class ClinicalReasons {

    private ClinicalReasons() {}

    static String inWords(ClinicalResult.Reason why) {
        return switch (why) {
            case UNKNOWN_WORKER -> "This record is not open to you any more. Nothing was kept.";
            case NOTHING_ENTERED -> "Nothing has been entered.";
            case IN_THE_FUTURE -> "This day has not come yet.";
            case TEXT_TOO_LONG -> "One of the texts is too long. Nothing was kept.";
            case CLEAR_AND_MORE -> "An ear is said to be clear and more. Nothing was kept.";
            case OTHER_WITHOUT_NOTE -> "Say in the note what else there is. Nothing was kept.";
            case REASON_MISSING -> "Give the reason: it stays with the entry.";
            case NO_SUCH_REFUSAL -> "This refusal has been taken back already. Nothing was changed.";
        };
    }
}
