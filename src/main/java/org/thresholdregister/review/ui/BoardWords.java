package org.thresholdregister.review.ui;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.caselife.CaseDuty;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.duty.OpenDuty;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.review.BoardCounts;
import org.thresholdregister.review.BoardFilter;
import org.thresholdregister.review.BoardNews;
import org.thresholdregister.review.BoardRow;
import org.thresholdregister.review.DueState;
import org.thresholdregister.review.Evidence;
import org.thresholdregister.review.TaskKind;

/** The words of the board and the sentences that it opens with. */
final class BoardWords {

    private BoardWords() {}

    static String state(DueState state) {
        return switch (state) {
            case OVERDUE -> "overdue";
            case WITHIN_7_DAYS -> "due in 7 days";
            case WITHIN_30_DAYS -> "due in 8 to 30 days";
            case LATER -> "due later";
            case WITHOUT_DATE -> "without a date";
        };
    }

    private static String predicate(DueState state) {
        return switch (state) {
            case OVERDUE -> "overdue";
            case WITHIN_7_DAYS -> "due in the next 7 days";
            case WITHIN_30_DAYS -> "due in 8 to 30 days";
            case LATER -> "due in more than 30 days";
            case WITHOUT_DATE -> "open without a date";
        };
    }

    static String doer(TaskKind.Doer doer) {
        return switch (doer) {
            case NURSE -> "nurse";
            case SAFETY_OFFICER -> "safety officer";
            case PROFESSIONAL -> "professional";
        };
    }

    static String postponed(BoardFilter.Postponed which) {
        return switch (which) {
            case POSTPONED -> "put off";
            case NOT_POSTPONED -> "not put off";
        };
    }

    static String means(Evidence.Means means) {
        return switch (means) {
            case HANDED_OVER -> "letter handed over";
            case POSTED -> "letter sent by post";
            case ELECTRONIC -> "letter sent electronically";
            case SIGNED_FOR -> "letter explained in person and signed for";
            case NOTED -> "as the note or the file says";
        };
    }

    /** @param kind the word of a task's kind, or the words of a duty */
    static String kind(String kind) {
        return BoardAddress.task(kind).map(BoardWords::task).orElse(kind);
    }

    static String task(TaskKind kind) {
        return switch (kind) {
            case RETEST -> Words.followUp(FollowUpKind.RETEST);
            case NOTICE -> Words.followUp(FollowUpKind.NOTICE);
            case RECORD -> Words.followUp(FollowUpKind.RECORD);
            case ANNUAL_TEST -> Words.followUp(FollowUpKind.ANNUAL_TEST);
            case BASELINE_TEST -> Words.followUp(FollowUpKind.BASELINE_TEST);
            case REFIT -> CaseWords.duty(CaseDuty.REFIT);
            case TRAINING -> CaseWords.duty(CaseDuty.TRAINING);
            case RECORDABILITY -> "finding out whether it is recordable";
            case LINE_OUT -> CaseWords.duty(CaseDuty.LINE_OUT);
            case BASELINE_PROPOSAL -> "baseline proposal";
            case ALTERATION -> "change after a notice or an entry";
        };
    }

    private static String counted(String kind, int number) {
        return BoardAddress.task(kind)
                .map(task -> counted(task, number))
                .orElse(kind + (number == 1 ? "" : " (" + number + ")"));
    }

    private static String counted(TaskKind kind, int number) {
        return switch (kind) {
            case RETEST -> Counted.followUps(FollowUpKind.RETEST, number);
            case NOTICE -> Counted.followUps(FollowUpKind.NOTICE, number);
            case RECORD -> Counted.followUps(FollowUpKind.RECORD, number);
            case ANNUAL_TEST -> Counted.followUps(FollowUpKind.ANNUAL_TEST, number);
            case BASELINE_TEST -> Counted.followUps(FollowUpKind.BASELINE_TEST, number);
            case REFIT -> Counted.of(number, "fitting of protectors", "fittings of protectors");
            case TRAINING -> Counted.of(number, "training", "trainings");
            case RECORDABILITY -> Counted.of(number, "undecided case", "undecided cases");
            case LINE_OUT -> Counted.of(number, "entry to line out", "entries to line out");
            case BASELINE_PROPOSAL -> Counted.of(number, "baseline proposal", "baseline proposals");
            case ALTERATION -> Counted.of(number, "change", "changes") + " after a notice or an entry";
        };
    }

    /** {@code Dara Rusk (M-2)}, or the thing's name. */
    static String subject(BoardRow row) {
        return switch (row) {
            case BoardRow.OfTask task ->
                People.name(task.givenName(), task.familyName(), task.workerId()) + " (" + task.workerId() + ")";
            case BoardRow.OfDuty(var duty, var today) ->
                switch (duty.subject()) {
                    case OpenDuty.Subject.OfWorker(var number, var name) -> name + " (" + number + ")";
                    case OpenDuty.Subject.OfThing(var name) -> name;
                };
        };
    }

    static String kind(BoardRow row) {
        return switch (row) {
            case BoardRow.OfTask task -> task(task.kind());
            case BoardRow.OfDuty(var duty, var today) -> duty.kind();
        };
    }

    /** {@code 6 days overdue}; what has no date says so. */
    static String due(BoardRow row) {
        return row.daysLeft().isPresent() ? Counted.daysLeft(row.daysLeft().getAsLong()) : "the rule gives no date";
    }

    /** The page where a row is seen to. */
    static String path(BoardRow row) {
        return switch (row) {
            case BoardRow.OfTask task ->
                switch (task.kind()) {
                    case BASELINE_PROPOSAL ->
                        Paths.baselineProposal(task.key().ears().word(), task.workerId());
                    case ALTERATION -> AlterationsView.ROUTE;
                    default -> Paths.worker(task.workerId());
                };
            case BoardRow.OfDuty(var duty, var today) -> duty.address();
        };
    }

    /** {@code Most urgent: written notice for Dara Rusk (M-2), 6 days overdue by 29 CFR 1910.95(g)(8)(i).} */
    static LeadSentence mostUrgent(BoardRow first) {
        boolean overdue = first.state() == DueState.OVERDUE;
        var sentence = new LeadSentence(overdue ? "Most urgent: " : "Nothing is overdue. Next: ")
                .link(kind(first) + " for " + subject(first), path(first))
                .text(", " + due(first) + (first.basis().isEmpty() ? "" : " by " + first.basis()) + ".");
        if (overdue) {
            sentence.addClassName("tr-urgent");
        }
        return sentence;
    }

    /** What is overdue, what is due in the next seven days and what has no date, each number a link. */
    static LeadSentence ofToday(BoardCounts counts) {
        var sentence = new LeadSentence();
        add(sentence, counts, DueState.OVERDUE);
        sentence.text(" ");
        add(sentence, counts, DueState.WITHIN_7_DAYS);
        if (counts.of(DueState.WITHOUT_DATE) > 0) {
            sentence.text(" ");
            add(sentence, counts, DueState.WITHOUT_DATE);
        }
        return sentence;
    }

    private static void add(LeadSentence sentence, BoardCounts counts, DueState state) {
        List<String> kinds = new ArrayList<>();
        for (String kind : counts.kinds()) {
            if (counts.of(kind, state) > 0) {
                kinds.add(kind);
            }
        }
        if (kinds.isEmpty()) {
            sentence.text("Nothing is " + predicate(state) + ".");
            return;
        }
        for (int i = 0; i < kinds.size(); i++) {
            String kind = kinds.get(i);
            sentence.link(counted(kind, counts.of(kind, state)), BoardAddress.of(Optional.of(kind), Optional.of(state)))
                    .text(Counted.joint(i, kinds));
        }
        sentence.text(" " + Counted.isOrAre(counts.of(state)) + " " + predicate(state) + ".");
    }

    /** {@code 3 follow-ups are put off; their due dates stand.} */
    static LeadSentence postponed(int number) {
        return new LeadSentence()
                .link(
                        Counted.of(number, "follow-up is", "follow-ups are") + " put off",
                        FilterParameters.NONE
                                .withChoice(BoardAddress.POSTPONED, Optional.of(BoardFilter.Postponed.POSTPONED))
                                .pathOf(BoardAddress.ROUTE))
                .text(number == 1 ? "; its due date stands." : "; their due dates stand.");
    }

    /** {@code Since yesterday, 2 things have become overdue and 1 test was found to show a shift.} */
    static Optional<LeadSentence> news(BoardNews news) {
        if (news.overdue() == 0 && news.shifts() == 0) {
            return Optional.empty();
        }
        var sentence = new LeadSentence("Since yesterday, ");
        if (news.overdue() > 0) {
            Optional<LocalDate> yesterday = Optional.of(news.yesterday());
            sentence.link(
                            Counted.of(news.overdue(), "thing has", "things have") + " become overdue",
                            FilterParameters.NONE
                                    .withDay(BoardAddress.FROM, yesterday)
                                    .withDay(BoardAddress.TO, yesterday)
                                    .pathOf(BoardAddress.ROUTE))
                    .text(news.shifts() > 0 ? " and " : "");
        }
        if (news.shifts() > 0) {
            sentence.link(Counted.of(news.shifts(), "test was", "tests were") + " found to show a shift", "shifts");
        }
        return Optional.of(sentence.text("."));
    }

    /** How much is open and how pressing it is, each number a link. */
    static LeadSentence ofAll(BoardCounts counts) {
        int all = counts.total();
        var sentence =
                new LeadSentence(Counted.of(all, "follow-up", "follow-ups") + " " + Counted.isOrAre(all) + " owed: ");
        List<DueState> states = List.of(DueState.OVERDUE, DueState.WITHIN_7_DAYS, DueState.WITHOUT_DATE);
        for (int i = 0; i < states.size(); i++) {
            DueState state = states.get(i);
            int number = counts.of(state);
            sentence.link(Integer.toString(number), BoardAddress.of(Optional.empty(), Optional.of(state)))
                    .text(" " + Counted.isOrAre(number) + " " + predicate(state) + Counted.joint(i, states));
        }
        return sentence.text(".");
    }

    /** How many the filter lets through, of how many in all. */
    static LeadSentence ofSome(BoardFilter filter, int shown, int all) {
        return new LeadSentence("Of ")
                .link(Counted.of(all, "follow-up", "follow-ups"), BoardAddress.ROUTE)
                .text(", "
                        + filter.kind().map(kind -> counted(kind, shown)).orElseGet(() -> Integer.toString(shown))
                        + Place.phrase(filter.site(), filter.department())
                        + (filter.text().isBlank() ? "" : " matching the search")
                        + filter.who().map(who -> " for the " + doer(who)).orElse("")
                        + " " + Counted.isOrAre(shown) + " "
                        + filter.state().map(BoardWords::predicate).orElse("owed")
                        + filter.from()
                                .map(day -> ", due on " + Words.day(day) + " or later")
                                .orElse("")
                        + filter.to()
                                .map(day -> ", due on " + Words.day(day) + " or before")
                                .orElse("")
                        + filter.postponed()
                                .map(which -> ", " + postponed(which))
                                .orElse("")
                        + ".");
    }
}
