package org.thresholdregister.core.wording;

import org.thresholdregister.core.followup.FollowUp;
import org.thresholdregister.core.followup.FollowUpKind;
import org.thresholdregister.core.rules.RuleSet;

/** What happens next, in sentences. */
public final class NextWords {

    private NextWords() {}

    /** {@code Written notice, left ear, after the test of 24 Nov 2026, by 15 Dec 2026.}, and the paragraph. */
    public static Sentence of(FollowUp owed, RuleSet ruleSet) {
        String ears = owed.kind() == FollowUpKind.ANNUAL_TEST || owed.kind() == FollowUpKind.BASELINE_TEST
                ? ""
                : ", " + Words.ears(owed.ears());
        String after = owed.testDate()
                .filter(day -> !ears.isEmpty())
                .map(day -> ", after the test of " + Words.day(day))
                .orElse("");
        String text = owed.kind() == FollowUpKind.RETEST
                ? "A retest may take the place of the test of "
                        + owed.testDate().map(Words::day).orElse("that day") + " until " + Words.day(owed.dueDate())
                        + "."
                : Words.capitalised(Words.followUp(owed.kind())) + ears + after + ", by " + Words.day(owed.dueDate())
                        + ".";
        return Sentence.of(text, ruleSet.paragraph(owed.kind().step()));
    }
}
