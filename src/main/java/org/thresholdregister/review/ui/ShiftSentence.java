package org.thresholdregister.review.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.judging.Outcome;
import org.thresholdregister.core.recording.Recordability;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.review.ShiftCounts;
import org.thresholdregister.review.ShiftFilter;

/** The sentence that the shifts of a year open with; each number leads to the list of what it counts. */
final class ShiftSentence {

    private static final List<Outcome> IN_ORDER = List.of(
            Outcome.CONFIRMED, Outcome.NOT_CONFIRMED, Outcome.AWAITING_RETEST, Outcome.NO_SHIFT, Outcome.UNDECIDED);

    private ShiftSentence() {}

    /** @param filter the year, site and department that the counts are of */
    static LeadSentence of(ShiftFilter filter, ShiftCounts counts) {
        var sentence =
                new LeadSentence("In " + filter.year() + Place.phrase(filter.site(), filter.department()) + ", ");
        if (counts.total() == 0) {
            return sentence.text("no shift was found.");
        }
        sentence.link(
                        Counted.of(counts.total(), "shift", "shifts"),
                        ShiftAddress.of(filter, Optional.empty(), Optional.empty()))
                .text((counts.total() == 1 ? " was" : " were") + " found, ear by ear: ");
        List<Outcome> outcomes = new ArrayList<>();
        for (Outcome outcome : IN_ORDER) {
            if (counts.of(outcome) > 0) {
                outcomes.add(outcome);
            }
        }
        for (int i = 0; i < outcomes.size(); i++) {
            Outcome outcome = outcomes.get(i);
            int number = counts.of(outcome);
            sentence.link(Integer.toString(number), ShiftAddress.of(filter, Optional.of(outcome), Optional.empty()))
                    .text(" " + predicate(outcome, number) + (i < outcomes.size() - 1 ? ", " : "; "));
        }
        int recordable = counts.of(Recordability.YES);
        return sentence.link(
                        Integer.toString(recordable),
                        ShiftAddress.of(filter, Optional.empty(), Optional.of(Recordability.YES)))
                .text(" " + Counted.isOrAre(recordable) + " recordable.");
    }

    private static String predicate(Outcome outcome, int number) {
        return switch (outcome) {
            case CONFIRMED -> "confirmed";
            case NOT_CONFIRMED -> "not confirmed by a retest";
            case AWAITING_RETEST -> number == 1 ? "awaits a retest" : "await a retest";
            case NO_SHIFT, UNDECIDED ->
                Words.outcome(outcome) + " from the baseline, but one from the recording reference";
            case BASELINE, BEFORE_BASELINE, RETEST ->
                throw new IllegalArgumentException("no shift to review: " + outcome);
        };
    }
}
