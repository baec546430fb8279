package org.thresholdregister.instruments.ui;

import org.thresholdregister.instruments.EntryResult.Objection;

/** What stands against an entry, and how to mend it. */
final class EquipmentFormWords {

    private EquipmentFormWords() {}

    static String of(Objection objection) {
        return switch (objection) {
            case REASON_MISSING -> "Say why it is corrected.";
            case TEXT_MISSING -> "A name is missing; say who or what it is.";
            case TEXT_TOO_LONG -> "A text is too long; names have at most 100 characters, other texts 200.";
            case NAME_TAKEN -> "This name is on record already; choose another one.";
            case IN_THE_FUTURE -> "The day is still to come; enter it when it has happened.";
            case ENDS_BEFORE_IT_BEGINS -> "The last day lies before the first; change one of them.";
            case NOT_ON_RECORD -> "That is none of your sites; write the site as the roster spells it.";
            case NOT_THE_SAME_THING -> "What is to be corrected is not on record.";
        };
    }
}
