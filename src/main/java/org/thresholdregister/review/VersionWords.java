package org.thresholdregister.review;

import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.review.DeterminationVersion.Basis;
import org.thresholdregister.review.DeterminationVersion.Replacement;

/** What was determined at one time, in words: when it stood, by which rules, and how it ended. */
public final class VersionWords {

    private VersionWords() {}

    /** {@code 5 Jun 2025 to 9 Mar 2026}, or {@code since 9 Mar 2026}. */
    public static String time(DeterminationVersion version) {
        return version.replacement()
                .map(replacement -> Words.day(version.determinedOn()) + " to " + Words.day(replacement.on()))
                .orElse("since " + Words.day(version.determinedOn()));
    }

    /** {@code settled by the test of 20 Mar 2026}, where that is another one; else empty. */
    public static String settled(DeterminationVersion version) {
        return version.settledOn()
                .filter(day -> !day.equals(version.testDate()))
                .map(day -> "settled by the test of " + Words.day(day))
                .orElse("");
    }

    /** The rule set with its edition, the options, and the edition of this program's rules. */
    public static String rules(Basis basis) {
        return RuleSets.find(basis.ruleSet()).map(RuleSet::name).orElse(basis.ruleSet()) + ", edition "
                + basis.ruleSetEdition() + ", "
                + (basis.ageCorrection() == AgeCorrection.ON ? "with" : "without") + " the age allowance, "
                + switch (basis.baselineRevision()) {
                    case OFF -> "without baseline proposals";
                    case PROPOSE -> "baseline revisions proposed";
                    case APPLY -> "baseline revisions applied";
                }
                + "; edition " + basis.ruleEdition() + " of this program's rules";
    }

    /** {@code by the decision of 9 Mar 2026: made the baseline, left ear, test of 1 Mar 2022}. */
    public static String why(DeterminationVersion version) {
        return version.replacement().map(VersionWords::why).orElse("stands now");
    }

    private static String why(Replacement replacement) {
        return switch (replacement.cause()) {
            case DECISION -> replacement.decision().map(VersionWords::why).orElse("by a decision");
            case IMPORT ->
                "by an import on " + Words.day(replacement.on())
                        + replacement
                                .importBatch()
                                .map(number -> ", number " + number)
                                .orElse("");
            case TEST -> "by a test that was signed on " + Words.day(replacement.on());
            case SUPERSEDING -> "as a test was superseded on " + Words.day(replacement.on());
            case CALENDAR -> "as the day came: time alone changed what the record says";
            case WORKING_LIFE -> "as the worker moved, left or came back";
            case OTHER -> "by another edition of this program's rules";
        };
    }

    private static String why(Decision decision) {
        return "by the decision of " + Words.day(decision.decidedOn()) + ": " + Words.decision(decision.kind()) + ", "
                + Words.ears(decision.ears()) + ", test of " + Words.day(decision.testDate())
                + (decision.by().isBlank() ? "" : ", by " + decision.by());
    }
}
