package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.rules.Deadline;
import org.thresholdregister.core.rules.QuietRule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.ShiftRule;

/** What letters say in plain words, for a reader of about twelve years. The paragraphs around it are a site's own. */
public sealed interface LetterWords permits EnglishLetterWords, SpanishLetterWords {

    static LetterWords in(Language language) {
        return switch (language) {
            case ENGLISH -> new EnglishLetterWords();
            case SPANISH -> new SpanishLetterWords();
        };
    }

    /** The heading of a letter. */
    String title(LetterKind kind);

    /** {@code March 9, 2026}, as the language writes it out. */
    String day(LocalDate date);

    String ear(Ear ear);

    String ears(Ears ears);

    String purpose(TestPurpose purpose);

    String shift(ShiftRule rule);

    String deadline(Deadline deadline);

    String thresholdCell(Threshold threshold);

    /** What was found for one ear, in whole sentences; of a retest, what became of the test that it answers for. */
    String finding(Determination found);

    /** That the test was not compared for an ear. */
    String notCompared();

    /** What follows, a sentence each. */
    List<String> nextSteps(NextSteps steps);

    /** What the rule set says of the written notice, with its paragraph. */
    String noticeStatement(RuleSet ruleSet);

    /** How to come to a test with rested ears; good practice before any test, whatever the rule asks for. */
    String quietTime(QuietRule rule);

    /** Where and when a test is; room to write on where it is not known. */
    String whenAndWhere(Optional<String> booked);

    /** Why a baseline was revised. */
    String whyRevised(boolean forBetterHearing);

    /** The heading of the table's first column, and what its numbers are. */
    String frequencyHeading();

    String tableNote();

    /** The heading of the facts about whoever is referred, and the names of the facts. */
    String referralFacts();

    String birthDate();

    String jobTitle();

    String noiseLevel();

    String enrolledFrom();

    String rules();

    String historyHeading();

    /** Where a chapter of the history is not on record. */
    String nothingOnRecord();

    String enclosuresHeading();

    /** What a professional is to be given, 29 CFR 1910.95(g)(7)(iii), in the order of its letters (A) to (D). */
    List<String> enclosures(LocalDate baseline, LocalDate latest);

    /** The line under a place to sign, with room for the date. */
    String signatureAndDate();

    /** For a professional who is not named. */
    String aProfessional();

    /** Under every letter. */
    String caution();

    /** At the foot: {@code Health record}. */
    String healthRecord();

    /** At the foot: who printed it. */
    String printed(LocalDate day, String by);

    /** On every page of a reprint. */
    String reprint(LocalDate issuedOn, LocalDate printedOn);
}
