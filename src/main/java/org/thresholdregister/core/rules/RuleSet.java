package org.thresholdregister.core.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.regulation.Citation;

/**
 * The rules that a workplace answers to, as data: what a shift is, what a retest does, what is told to whom and by
 * when, what is recorded, and which further rules are read beside it. The list of them is {@link RuleSets}.
 *
 * @param word the name in files and options
 * @param edition the edition of the text, and of our reading of it; stored with every determination
 * @param name the name for people: a short one, a colon, and what it is taken from or about
 * @param force law, recommendation or practice, in words
 * @param needs what it needs to answer, as noun phrases
 * @param answers what it answers, as noun phrases
 * @param retest empty where the rule set knows no retest
 * @param notice empty where the rule set asks for none
 * @param revision how persistent changes are told for the revision of a baseline
 * @param quiet the time away from noise before a test
 * @param tests when the first and the next test are due
 * @param furtherRules read beside the shift; their answers never mix with its counts
 * @param paragraphs what each step of judging rests on
 * @param settings the numbers that a site may set, since they could not be checked
 */
public record RuleSet(
        String word,
        String edition,
        String name,
        String force,
        List<String> needs,
        List<String> answers,
        ShiftRule shift,
        Optional<RetestRule> retest,
        Optional<NoticeRule> notice,
        RecordingRule recording,
        RevisionRule revision,
        QuietRule quiet,
        TestSchedule tests,
        List<Rule> furtherRules,
        Map<Step, Citation> paragraphs,
        List<Duty> duties,
        List<Setting> settings) {

    public RuleSet {
        if (name.indexOf(':') < 1) {
            throw new IllegalArgumentException("no short name before a colon: " + name);
        }
        needs = List.copyOf(needs);
        answers = List.copyOf(answers);
        furtherRules = List.copyOf(furtherRules);
        paragraphs = Map.copyOf(paragraphs);
        duties = List.copyOf(duties);
        settings = List.copyOf(settings);
    }

    /** The paragraph that a step of judging rests on; the shift's own where the rule set has none for the step. */
    public Citation paragraph(Step step) {
        Citation own = paragraphs.get(step);
        if (own != null) {
            return own;
        }
        Citation shifts = paragraphs.get(Step.SHIFT);
        if (shifts == null) {
            throw new IllegalStateException("the rule set " + word + " names no paragraph for its shift");
        }
        return shifts;
    }

    /** The name for a heading or a sentence, such as {@code OSHA}. */
    public String shortName() {
        return name.substring(0, name.indexOf(':'));
    }

    /** Whether an allowance for aging may be made at all. */
    public boolean allowsForAge() {
        return shift.ageTables().isPresent();
    }

    /** Two rule sets are the same where word, edition and settings are. */
    @Override
    public boolean equals(Object other) {
        return other instanceof RuleSet that
                && word.equals(that.word)
                && edition.equals(that.edition)
                && settings.equals(that.settings);
    }

    @Override
    public int hashCode() {
        return word.hashCode();
    }

    @Override
    public String toString() {
        return word;
    }
}
