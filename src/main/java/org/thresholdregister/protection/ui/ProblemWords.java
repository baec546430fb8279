package org.thresholdregister.protection.ui;

import org.thresholdregister.protection.NewFitTest;
import org.thresholdregister.protection.NewSession;
import org.thresholdregister.protection.ProtectionProblem;

/** Why something could not be taken down, for the one who typed it. */
final class ProblemWords {

    private ProblemWords() {}

    static String of(ProtectionProblem problem) {
        return switch (problem) {
            case UNKNOWN_WORKER -> "There is no such worker at this site, or the record is not open to you.";
            case UNKNOWN_PROTECTOR -> "Choose a protector from the catalogue of this site.";
            case UNKNOWN_ENTRY -> "This entry is not open any more. Load the page again. Nothing was changed.";
            case SITE_NOT_OPEN -> "Choose one of your own sites.";
            case NAME_MISSING -> "Give it the name that it has at the store.";
            case NAME_TAKEN -> "A protector of this name is given out at this site already. Retire it first.";
            case NO_PAIR -> "Choose a plug and a muff of this site.";
            case RETIRED -> "This protector is given out no more.";
            case IN_THE_FUTURE -> "This day has not come yet.";
            case BEFORE_IT_BEGAN -> "This is before the day on which it was given out.";
            case REASON_MISSING -> "Say why: the reason stays with the entry.";
            case TEXT_TOO_LONG -> "A text is too long. Nothing was changed.";
            case TOPICS_MISSING -> "Tick what the training covered.";
            case TRAINER_MISSING -> "Say who trained.";
            case MINUTES_OUT_OF_RANGE -> "Give the minutes, from 1 to " + NewSession.MOST_MINUTES + ".";
            case FIT_TEST_OUT_OF_RANGE ->
                "A fit test gives 0 to " + NewFitTest.HIGHEST_PAR + " dB, at a percentile of 1 to 99.";
            case CASE_REFUSES ->
                "The case of this shift does not take a refitting of that day: see the worker's page. Nothing was"
                        + " changed.";
        };
    }
}
