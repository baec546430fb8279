package org.thresholdregister.core.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.thresholdregister.core.meaning.referral.ReferralCriterion;
import org.thresholdregister.core.meaning.referral.ReferralFinding;
import org.thresholdregister.core.meaning.referral.ReferralQuestion;
import org.thresholdregister.core.regulation.Answer;

/** Referral criteria in words: those that are met first, and what has to be asked. */
final class ReferralWords {

    private ReferralWords() {}

    static MeaningChapter referral(List<ReferralFinding> findings) {
        List<Sentence> sentences = new ArrayList<>();
        sentences.add(Sentence.plain(opening(findings)));
        findings.stream()
                .sorted(Comparator.comparing(ReferralWords::rank))
                .map(finding -> MeaningWords.sentence(finding(finding), finding))
                .forEach(sentences::add);
        for (ReferralQuestion.Kind kind : ReferralQuestion.Kind.values()) {
            sentences.add(Sentence.plain(ask(kind) + questions(kind) + "."));
        }
        return MeaningWords.chapter("Referral criteria", findings, sentences.stream());
    }

    private static int rank(ReferralFinding finding) {
        return switch (finding.met()) {
            case YES -> 0;
            case UNDECIDED -> 1;
            case NO -> 2;
        };
    }

    private static String opening(List<ReferralFinding> findings) {
        long met =
                findings.stream().filter(finding -> finding.met() == Answer.YES).count();
        long open = findings.stream()
                .filter(finding -> finding.met() == Answer.UNDECIDED)
                .count();
        return "Of " + findings.size() + " criteria that an audiogram answers, " + met
                + (met == 1 ? " is met and " : " are met and ") + open + (open == 1 ? " is" : " are") + " undecided.";
    }

    private static String finding(ReferralFinding finding) {
        ReferralCriterion criterion = finding.criterion();
        String frequencies = MeaningWords.hertz(criterion.frequencies());
        String ear = Words.ear(finding.ear());
        String compared = switch (criterion) {
            case BASELINE_LEVEL ->
                "at the baseline, the mean of " + frequencies + " is " + MeaningWords.level(finding.value());
            case BASELINE_DIFFERENCE_LOW, BASELINE_DIFFERENCE_HIGH ->
                "at the baseline, the mean of " + frequencies + " is " + MeaningWords.worsening(finding.value())
                        + " against the other ear's";
            case WORSENING_LOW, WORSENING_HIGH ->
                "the mean of " + frequencies + " is " + MeaningWords.worsening(finding.value())
                        + " against the baseline of "
                        + Words.day(finding.baseline().date());
        };
        return Words.capitalised(MeaningWords.met(finding.met())) + ": " + ear + ", test of "
                + Words.day(finding.test().date()) + ", " + compared + "; the criterion is more than "
                + criterion.moreThanDecibels() + " dB.";
    }

    private static String ask(ReferralQuestion.Kind kind) {
        return switch (kind) {
            case REVIEW -> "For a professional to judge: ";
            case HISTORY -> "To ask the worker about, for the last twelve months, as no audiogram answers it: ";
            case EAR_EXAMINATION -> "To look for in the ear: ";
        };
    }

    private static String questions(ReferralQuestion.Kind kind) {
        return Arrays.stream(ReferralQuestion.values())
                .filter(question -> question.kind() == kind)
                .map(ReferralWords::question)
                .collect(Collectors.joining("; "));
    }

    private static String question(ReferralQuestion question) {
        return switch (question) {
            case UNUSUAL_CURVE -> "an unusual curve";
            case INCONSISTENT_RESPONSES -> "variable or inconsistent responses";
            case EAR_PAIN -> "ear pain";
            case DRAINAGE -> "drainage from the ear";
            case DIZZINESS -> "dizziness";
            case SEVERE_PERSISTENT_TINNITUS -> "severe, persistent tinnitus";
            case SUDDEN_FLUCTUATING_OR_RAPID_LOSS -> "sudden, fluctuating or rapidly growing loss of hearing";
            case FULLNESS_OR_DISCOMFORT -> "a feeling of fullness or discomfort in the ear";
            case WAX_OR_FOREIGN_BODY -> "wax or a foreign body";
        };
    }
}
