package org.thresholdregister.core.wording;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.Finding;
import org.thresholdregister.core.rules.Quantity;
import org.thresholdregister.core.rules.Rule;
import org.thresholdregister.core.rules.SumTable;
import org.thresholdregister.core.rules.Verdict;
import org.thresholdregister.core.shift.FrequencyShift;

/** Puts what a rule found into sentences that let it be done again by hand: the numbers, the limit, the answer. */
public final class RuleWording {

    private RuleWording() {}

    public static List<Sentence> of(Finding finding) {
        List<Sentence> sentences = new ArrayList<>();
        Rule rule = finding.rule();
        for (Quantity quantity : finding.reading().quantities()) {
            sentences.add(Sentence.of(quantity(quantity, finding.test()), rule.basis()));
        }
        if (finding.reading().quantities().isEmpty()) {
            sentences.add(Sentence.of("There is no earlier test in the time that the rule looks back.", rule.basis()));
        }
        sentences.add(Sentence.of(verdict(finding), rule.basis()));
        tableRows(finding).forEach(row -> sentences.add(Sentence.of(row, rule.basis())));
        if (callsForSomething(finding.verdict())) {
            sentences.add(Sentence.of(rule.consequence(), rule.basis()));
        }
        if (rule.provenance() != Provenance.LOOKED_UP) {
            sentences.add(Sentence.of(provenance(rule.provenance()), rule.basis()));
        }
        return List.copyOf(sentences);
    }

    /** How a number that was not read in its text is marked. */
    public static String provenance(Provenance provenance) {
        return switch (provenance) {
            case LOOKED_UP -> "Read in its text.";
            case FROM_MEMORY -> "The numbers of this rule were written from memory.";
            case UNVERIFIED -> "Unverified: the numbers of this rule were written from memory and are settings.";
        };
    }

    /** {@code Right ear, early warning: yes}. */
    public static String heading(Finding finding) {
        return asked(finding) + ": " + answer(finding.verdict());
    }

    private static String asked(Finding finding) {
        return Words.capitalised(Words.ears(finding.ears())) + ", "
                + finding.rule().name();
    }

    private static String answer(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Answered answered -> Words.answer(answered.answer());
            case Verdict.Category category ->
                category.isDecided()
                        ? "category " + category.lowest()
                        : "undecided, from category " + category.lowest() + " to " + category.highest();
        };
    }

    /** The answer with what was asked: "Left ear, early warning (15 dB or more …): yes." */
    private static String verdict(Finding finding) {
        return asked(finding) + " (" + finding.rule().explained() + "): " + answer(finding.verdict()) + ".";
    }

    private static boolean callsForSomething(Verdict verdict) {
        return switch (verdict) {
            case Verdict.Answered answered -> answered.answer() == Answer.YES;
            case Verdict.Category category -> category.highest() > 1;
        };
    }

    private static List<String> tableRows(Finding finding) {
        List<SumTable.Row> rows = finding.reading().rows();
        if (rows.size() > 2) {
            return List.of("Age or sex is not on record, so that every row of the table remains possible.");
        }
        return rows.stream()
                .map(row -> "For " + (row.sex() == Sex.MALE ? "men" : "women") + " "
                        + (row.oldest() == Integer.MAX_VALUE
                                ? "from " + row.youngest() + " years on"
                                : "of " + row.youngest() + " to " + row.oldest() + " years")
                        + " the warning value is " + row.warningSum() + " dB and the referral value "
                        + row.referralSum() + " dB.")
                .toList();
    }

    private static String quantity(Quantity quantity, Audiogram test) {
        String at = " at " + Words.frequencies(quantity.frequencies());
        String ear = Words.capitalised(Words.ear(quantity.ear()));
        return switch (quantity.of()) {
            case LEVELS ->
                ear + ": the levels" + at + " are " + levels(quantity, test) + ", a sum of "
                        + decibels(quantity.total()) + mean(quantity) + ".";
            case HIGHEST_LEVEL ->
                ear + ": the levels" + at + " are " + levels(quantity, test) + ", the highest "
                        + decibels(quantity.total()) + ".";
            case CHANGES ->
                ear + ": the changes since " + since(quantity) + at + " are " + changes(quantity, test) + ", a sum of "
                        + decibels(quantity.total()) + mean(quantity) + ".";
            case LARGEST_CHANGE ->
                ear + ": the changes since " + since(quantity) + at + " are " + changes(quantity, test)
                        + ", the largest " + decibels(quantity.total()) + ".";
            case DIFFERENCES ->
                ear + " less the other" + at + ": " + differences(quantity, test) + ", a sum of "
                        + decibels(quantity.total()) + mean(quantity) + ".";
        };
    }

    private static String since(Quantity quantity) {
        return "the test of " + Words.day(quantity.earlier().orElseThrow().date());
    }

    private static String mean(Quantity quantity) {
        OptionalInt sum = quantity.total().exact();
        int count = quantity.frequencies().size();
        return sum.isPresent() ? ", a mean of " + twoDecimals(sum.getAsInt(), count) + " dB" : "";
    }

    private static String twoDecimals(int sum, int count) {
        return BigDecimal.valueOf(sum)
                .divide(BigDecimal.valueOf(count), 2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String levels(Quantity quantity, Audiogram test) {
        return quantity.frequencies().stream()
                .map(frequency -> Words.bareThreshold(test.threshold(quantity.ear(), frequency)))
                .collect(Collectors.joining(", "));
    }

    private static String changes(Quantity quantity, Audiogram test) {
        Audiogram earlier = quantity.earlier().orElseThrow();
        return quantity.frequencies().stream()
                .map(frequency -> open(FrequencyShift.uncorrected(
                        earlier.threshold(quantity.ear(), frequency), test.threshold(quantity.ear(), frequency))))
                .collect(Collectors.joining(", "));
    }

    private static String differences(Quantity quantity, Audiogram test) {
        return quantity.frequencies().stream()
                .map(frequency -> open(difference(test, quantity.ear(), frequency)))
                .collect(Collectors.joining(", "));
    }

    private static DecibelRange difference(Audiogram test, Ear ear, Frequency frequency) {
        return test.threshold(ear, frequency)
                .range()
                .minus(test.threshold(ear.other(), frequency).range());
    }

    private static String decibels(DecibelRange range) {
        return range.exact().isPresent() ? range.exact().getAsInt() + " dB" : open(range);
    }

    private static String open(DecibelRange range) {
        if (range.exact().isPresent()) {
            return Integer.toString(range.exact().getAsInt());
        }
        if (range.lowest().isPresent()) {
            return range.lowest().getAsInt() + " or more";
        }
        return range.highest().isPresent() ? range.highest().getAsInt() + " or less" : "not known";
    }
}
