package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.rules.Duty;
import org.thresholdregister.core.rules.Rule;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;

class RuleSetWordingTest {

    static List<RuleSet> ruleSets() {
        return RuleSets.ALL;
    }

    private static RuleSet ruleSet(String word) {
        return RuleSets.find(word).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "osha|A mean of 10 dB or more, after the allowance for age where it is made, is a standard threshold"
                        + " shift, measured from the ear's baseline.",
                "niosh|15 dB or more worse at any of 500, 1000, 2000, 3000, 4000 and 6000 Hz is a significant threshold"
                        + " shift, measured from the ear's baseline.",
                "uk-l108|A sum of 30 dB or more at 3000, 4000 and 6000 Hz within three years is a rapid hearing loss,"
                        + " measured from the ear's latest test of the 3 years before."
            })
    void aShiftIsSaidWithItsCriterionAndWhatItIsMeasuredFrom(String word, String sentence) {
        assertThat(RuleSetWording.shift(ruleSet(word))).isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "osha|14 hours without workplace noise before a baseline test; hearing protectors may be worn instead.",
                "niosh|12 hours without workplace noise before a baseline test and a retest; hearing protectors do not"
                        + " count as quiet."
            })
    void quietIsSaidWithItsTests(String word, String sentence) {
        assertThat(RuleSetWording.quiet(ruleSet(word))).isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "osha|A retest within 30 days of the test may take its place; the last one counts. Without one the test"
                        + " stands.",
                "msha|One retest within 30 days of the test may take its place. Without one the test stands.",
                "niosh|A shift is established only by two tests running, at the same frequency of the same ear; the"
                        + " second is wanted within 30 days.",
                "alberta|There is no retest: what a test shows stands."
            })
    void aRetestIsSaidWithWhatItDoes(String word, String sentence) {
        assertThat(RuleSetWording.retest(ruleSet(word))).isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "osha|The worker is told in writing of every shift, within 21 days of the test that settled it.",
                "msha|The worker is told in writing of the results of every test, within 10 working days of the test.",
                "niosh|The worker is told in writing of every shift that is established, within 30 days of the test that"
                        + " settled it.",
                "uk-l108|The rule set names no notice."
            })
    void aNoticeIsSaidWithItsOccasionAndItsTime(String word, String sentence) {
        assertThat(RuleSetWording.notice(ruleSet(word))).isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "osha|A shift that stands, together with a mean level of 25 dB HL or more at 2000, 3000 and 4000 Hz in"
                        + " the same ear, within 7 days of the retest, or within 30 days of the test where there was"
                        + " none.",
                "fra|A shift that stands, together with a mean level of 25 dB HL or more at 2000, 3000 and 4000 Hz in"
                        + " the same ear, within 7 working days of the test that settled it.",
                "msha|A mean shift of 25 dB or more from the first baseline or one revised for better hearing, reported"
                        + " within 10 working days.",
                "dod|The rule set keeps no log."
            })
    void whatIsRecordedIsSaidWithItsNumbersAndItsTime(String word, String sentence) {
        assertThat(RuleSetWording.recording(ruleSet(word))).isEqualTo(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "osha|A baseline within 6 months of enrolment, then a test within 12 months of the last.",
                "fra|A baseline within 6 months of enrolment, then a test within 450 days of the last.",
                "uk-l108|A first test before exposure, then within 12 months of the last in the first 2 years, and"
                        + " within 36 months afterwards.",
                "alberta|A baseline within 6 months of enrolment, then within 12 months of the last in the first year,"
                        + " and within 24 months afterwards."
            })
    void theTestsAreSaidWithTheirIntervals(String word, String sentence) {
        assertThat(RuleSetWording.tests(ruleSet(word))).isEqualTo(sentence);
    }

    @Test
    void aDutyWithoutATimeSaysThatNoneIsNamed() {
        assertThat(ruleSet("alberta").duties().stream().map(RuleSetWording::when))
                .containsExactly("after an abnormal shift or audiogram; no time is named");
        assertThat(ruleSet("osha").duties().stream().map(RuleSetWording::when))
                .contains("within 21 days of the determination of a shift");
    }

    @Test
    void aSettingIsSaidWithItsNameItsMeaningAndItsUnit() {
        RuleSet changed = RuleSets.with(ruleSet("dod"), Map.of("early-warning-db", 20));
        assertThat(changed.settings().stream().map(RuleSetWording::setting))
                .containsExactly(
                        "retest-days: the time for the follow-up tests, 30 days",
                        "baseline-days: the time for the reference audiogram, 30 days",
                        "negative-shift-db: the mean improvement that is a negative shift, 10 dB",
                        "early-warning-db: the change at one frequency that is an early warning, 20 dB");
    }

    @Test
    void whateverWasNotReadInItsTextIsMarked() {
        assertThat(RuleSetWording.mark(Provenance.LOOKED_UP)).isEmpty();
        assertThat(RuleSetWording.mark(Provenance.FROM_MEMORY)).isEqualTo("from memory");
        assertThat(RuleSetWording.mark(Provenance.UNVERIFIED)).isEqualTo("unverified");
    }

    @ParameterizedTest
    @MethodSource("ruleSets")
    void everyRuleSetIsSaidInWholeSentences(RuleSet ruleSet) {
        assertThat(Stream.of(
                        RuleSetWording.shift(ruleSet),
                        RuleSetWording.retest(ruleSet),
                        RuleSetWording.quiet(ruleSet),
                        RuleSetWording.notice(ruleSet),
                        RuleSetWording.recording(ruleSet),
                        RuleSetWording.tests(ruleSet)))
                .allSatisfy(sentence -> assertThat(sentence)
                        .matches("[A-Z0-9].*\\.")
                        .doesNotContain("null", "Optional", "  ", "..", " ,"));
        assertThat(ruleSet.duties().stream().map(Duty::what))
                .allSatisfy(sentence -> assertThat(sentence).matches("[A-Z].*\\."));
        assertThat(ruleSet.furtherRules().stream().map(Rule::consequence))
                .allSatisfy(sentence -> assertThat(sentence).matches("[A-Z].*\\."));
        assertThat(ruleSet.shortName()).matches("[A-Z].{2,24}");
        assertThat(ruleSet.force()).matches("[A-Z].*[^.]");
    }
}
