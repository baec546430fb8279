package org.thresholdregister.core.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.thresholdregister.core.regulation.Citation;

class RuleSetTest {

    private static final Citation SHIFTS = new Citation("Rule 1");
    private static final Citation RETESTS = new Citation("Rule 2");

    @Test
    void aStepRestsOnItsOwnParagraphElseOnTheOneOfTheShift() {
        RuleSet ruleSet = with(RuleSets.OSHA, Map.of(Step.SHIFT, SHIFTS, Step.RETEST, RETESTS));
        assertThat(ruleSet.paragraph(Step.RETEST)).isEqualTo(RETESTS);
        assertThat(ruleSet.paragraph(Step.NOTICE)).isEqualTo(SHIFTS);
    }

    @Test
    void aRuleSetHasToNameTheParagraphOfItsShift() {
        RuleSet ruleSet = with(RuleSets.OSHA, Map.of(Step.RETEST, RETESTS));
        assertThatIllegalStateException()
                .isThrownBy(() -> ruleSet.paragraph(Step.NOTICE))
                .withMessage("the rule set osha names no paragraph for its shift");
    }

    @ParameterizedTest
    @CsvSource({
        "osha, true",
        "msha, true",
        "fra, true",
        "niosh, false",
        "dod, false",
        "uk-l108, false",
        "alberta, false"
    })
    void someRuleSetsAllowForAge(String word, boolean allows) {
        assertThat(find(word).allowsForAge()).isEqualTo(allows);
    }

    @Test
    void ruleSetsAreTheSameByWordEditionAndSettings() {
        RuleSet dod = find("dod");
        assertThat(RuleSets.with(dod, Map.of())).isEqualTo(dod).hasSameHashCodeAs(dod);
        assertThat(RuleSets.with(dod, Map.of("retest-days", 31))).isNotEqualTo(dod);
        assertThat(named(dod, "dod", "1999-01")).isNotEqualTo(dod);
        assertThat(named(dod, "navy", dod.edition())).isNotEqualTo(dod);
        assertThat(dod).isNotEqualTo("dod");
        assertThat(RuleSets.ALL.stream().map(RuleSet::hashCode)).doesNotHaveDuplicates();
        assertThat(dod).hasToString("dod");
    }

    @Test
    void theWordsOfAllRuleSetsAreListedForMessages() {
        assertThat(RuleSets.words()).isEqualTo("osha, msha, fra, niosh, dod, uk-l108, alberta, aao, twice");
    }

    @Test
    void aSettingChangesWhatItStandsForAndNothingElse() {
        RuleSet dod = find("dod");
        RuleSet changed = RuleSets.with(dod, Map.of("retest-days", 14, "baseline-days", 60));
        LocalDate day = LocalDate.parse("2026-03-09");
        assertThat(changed.retest().orElseThrow().lastDay(day)).isEqualTo("2026-03-23");
        assertThat(changed.tests().baselineBy(day, Holidays.NONE)).isEqualTo("2026-05-08");
        assertThat(changed.settings())
                .extracting(Setting::word, Setting::value)
                .containsExactly(
                        tuple("retest-days", 14),
                        tuple("baseline-days", 60),
                        tuple("negative-shift-db", 10),
                        tuple("early-warning-db", 15));
        assertThat(dod.retest().orElseThrow().lastDay(day)).isEqualTo("2026-04-08");
    }

    @Test
    void aSettingThatTheRuleSetDoesNotHaveIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RuleSets.with(find("niosh"), Map.of("confirm-days", 20, "retest-days", 20)))
                .withMessage("the rule set niosh has no setting retest-days");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 30, 365})
    void aSettingTakesItsEndsAndWhatIsBetween(int days) {
        RuleSet fra = RuleSets.with(find("fra"), Map.of("notice-days", days));
        assertThat(fra.settings()).extracting(Setting::value).containsExactly(days);
    }

    @ParameterizedTest
    @ValueSource(ints = {-1, 0, 366})
    void aSettingOutsideItsRangeIsRefused(int days) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RuleSets.with(find("fra"), Map.of("notice-days", days)))
                .withMessage("notice-days is " + days + "; it goes from 1 to 365 days");
    }

    /** Alberta OHS Code Part 16: yearly in the first year after the first test, every two years afterwards. */
    @ParameterizedTest
    @CsvSource({"2024-03-01, 2025-03-01", "2025-02-28, 2026-02-28", "2025-03-01, 2027-03-01"})
    void theIntervalChangesAfterTheEarlyYears(LocalDate lastTest, LocalDate due) {
        assertThat(find("alberta").tests().nextBy(LocalDate.parse("2024-03-01"), lastTest, Holidays.NONE))
                .isEqualTo(due);
    }

    private static RuleSet find(String word) {
        return RuleSets.find(word).orElseThrow();
    }

    private static RuleSet with(RuleSet set, Map<Step, Citation> paragraphs) {
        return copy(set, set.word(), set.edition(), paragraphs);
    }

    private static RuleSet named(RuleSet set, String word, String edition) {
        return copy(set, word, edition, set.paragraphs());
    }

    private static RuleSet copy(RuleSet set, String word, String edition, Map<Step, Citation> paragraphs) {
        return new RuleSet(
                word,
                edition,
                set.name(),
                set.force(),
                set.needs(),
                set.answers(),
                set.shift(),
                set.retest(),
                set.notice(),
                set.recording(),
                set.revision(),
                set.quiet(),
                set.tests(),
                set.furtherRules(),
                paragraphs,
                List.of(),
                set.settings());
    }
}
