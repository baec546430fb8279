package org.thresholdregister.review.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.review.DueCounts;
import org.thresholdregister.review.FollowUpFilter;
import org.thresholdregister.review.FollowUpState;

/** The sentences that pages of follow-ups open with. */
final class FollowUpWords {

    private FollowUpWords() {}

    static String state(FollowUpState state) {
        return switch (state) {
            case OVERDUE -> "overdue";
            case WITHIN_7_DAYS -> "due in 7 days";
            case WITHIN_30_DAYS -> "due in 8 to 30 days";
            case LATER -> "due later";
        };
    }

    private static String predicate(FollowUpState state) {
        return switch (state) {
            case OVERDUE -> "overdue";
            case WITHIN_7_DAYS -> "due in the next 7 days";
            case WITHIN_30_DAYS -> "due in 8 to 30 days";
            case LATER -> "due in more than 30 days";
        };
    }

    /** What is overdue and what is due in the next seven days, each number a link. */
    static LeadSentence ofToday(DueCounts counts) {
        var sentence = new LeadSentence();
        add(sentence, counts, FollowUpState.OVERDUE);
        sentence.text(" ");
        add(sentence, counts, FollowUpState.WITHIN_7_DAYS);
        return sentence;
    }

    private static void add(LeadSentence sentence, DueCounts counts, FollowUpState state) {
        List<FollowUpKind> kinds = new ArrayList<>();
        for (FollowUpKind kind : FollowUpKind.values()) {
            if (counts.of(kind, state) > 0) {
                kinds.add(kind);
            }
        }
        if (kinds.isEmpty()) {
            sentence.text("Nothing is " + predicate(state) + ".");
            return;
        }
        for (int i = 0; i < kinds.size(); i++) {
            FollowUpKind kind = kinds.get(i);
            sentence.link(
                            Counted.followUps(kind, counts.of(kind, state)),
                            FollowUpAddress.of(Optional.of(kind), Optional.of(state)))
                    .text(Counted.joint(i, kinds));
        }
        sentence.text(" " + Counted.isOrAre(counts.of(state)) + " " + predicate(state) + ".");
    }

    /** How many are owed and how pressing they are, each number a link. */
    static LeadSentence ofAll(DueCounts counts) {
        int all = counts.total();
        var sentence =
                new LeadSentence(Counted.of(all, "follow-up", "follow-ups") + " " + Counted.isOrAre(all) + " owed: ");
        List<FollowUpState> states = List.of(FollowUpState.OVERDUE, FollowUpState.WITHIN_7_DAYS);
        for (int i = 0; i < states.size(); i++) {
            FollowUpState state = states.get(i);
            int number = counts.of(state);
            sentence.link(Integer.toString(number), FollowUpAddress.of(Optional.empty(), Optional.of(state)))
                    .text(" " + Counted.isOrAre(number) + " " + predicate(state) + Counted.joint(i, states));
        }
        return sentence.text(".");
    }

    /** How many the filter lets through, of how many in all. */
    static LeadSentence ofSome(FollowUpFilter filter, int shown, int all) {
        return new LeadSentence("Of ")
                .link(Counted.of(all, "follow-up", "follow-ups"), FollowUpAddress.ROUTE)
                .text(", "
                        + filter.kind()
                                .map(kind -> Counted.followUps(kind, shown))
                                .orElseGet(() -> Integer.toString(shown))
                        + Place.phrase(filter.site(), filter.department())
                        + (filter.text().isBlank() ? "" : " matching the search")
                        + " " + Counted.isOrAre(shown) + " "
                        + filter.state().map(FollowUpWords::predicate).orElse("owed") + ".");
    }
}
