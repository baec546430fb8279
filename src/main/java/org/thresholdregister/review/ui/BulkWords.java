package org.thresholdregister.review.ui;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.thresholdregister.core.wording.CaseWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.BulkResult;
import org.thresholdregister.review.BulkResult.Left;
import org.thresholdregister.review.BulkResult.Why;
import org.thresholdregister.review.DecisionResult;

/** Says what came of doing one thing for many. */
final class BulkWords {

    /** So many workers are named; the others are counted. */
    private static final int NAMED = 3;

    private BulkWords() {}

    /**
     * {@code 5 marked, 1 not: it is settled by a test (M-2).}
     *
     * @param done the verb, such as {@code marked}
     */
    static String result(BulkResult result, String done) {
        String marked = result.done().size() + " " + done;
        return result.left().isEmpty()
                ? marked + "."
                : marked + ", " + result.left().size() + " not: " + reasons(result.left()) + ".";
    }

    /** Why nothing was changed about these, each reason once. */
    static String reasons(List<Left> left) {
        Map<String, List<Left>> byReason = left.stream()
                .collect(Collectors.groupingBy(one -> why(one.why()), LinkedHashMap::new, Collectors.toList()));
        return byReason.entrySet().stream()
                .map(reason -> reason.getKey() + " (" + workers(reason.getValue()) + ")")
                .collect(Collectors.joining("; "));
    }

    private static String workers(List<Left> left) {
        List<String> numbers =
                left.stream().map(one -> one.task().workerId()).distinct().toList();
        return numbers.size() <= NAMED
                ? Words.listed(numbers)
                : String.join(", ", numbers.subList(0, NAMED)) + " and " + (numbers.size() - NAMED) + " more";
    }

    private static String why(Why why) {
        return switch (why) {
            case Why.NotOpen() -> "it is not open any more";
            case Why.NotThisRole() -> "it is another role's to enter";
            case Why.SettledElsewhere() -> "it is settled by a test or on a page of its own";
            case Why.AfterTheWindow() -> "the day is after the last one on which a retest may take the test's place";
            case Why.AlreadyOnRecord() -> "it was on record already";
            case Why.Refused(var reason) -> refused(reason);
            case Why.OutOfOrder(var objection) -> inSentence(CaseWords.objection(objection));
        };
    }

    private static String refused(DecisionResult.Reason reason) {
        return switch (reason) {
            case UNKNOWN_WORKER -> "the worker is not among those that you may see";
            case NO_SUCH_TEST -> "there is no test of that day";
            case BEFORE_THE_TEST -> "the day is before the test";
            case IN_THE_FUTURE -> "the day is still to come";
            case REASON_MISSING -> "it is taken down only with its reason";
            case TEXT_TOO_LONG -> "a text is too long";
            case EVIDENCE_MISSING -> "nothing says how it was done";
        };
    }

    private static String inSentence(String sentence) {
        String withoutStop = sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
        return Character.toLowerCase(withoutStop.charAt(0)) + withoutStop.substring(1);
    }
}
