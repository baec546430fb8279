package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.meaning.Audiograms;
import org.thresholdregister.core.meaning.referral.ReferralFinding;

class MeaningsTest {

    /** The published example of {@code vectors/hearing-handicap-examples.csv}, with 4000 to 8000 Hz beside it. */
    private static final Audiogram EXAMPLE = Audiograms.of("25 35 45 55 60 50 40", "20 25 35 40 45 45 40");

    private static MeaningChapter chapter(Audiogram test, String heading) {
        return Meanings.of(test, List.of()).stream()
                .filter(chapter -> chapter.heading().equals(heading))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> said(Audiogram test, String heading) {
        return chapter(test, heading).sentences().stream()
                .map(Sentence::withBasis)
                .toList();
    }

    @Test
    void thePercentageNamesItsFormula() {
        assertThat(said(EXAMPLE, "Percentage of hearing handicap"))
                .containsExactly(
                        "AMA Guides, 6th edition: right ear 7.5 %, left ear 22.5 %, both ears together 10 %, whole person"
                                + " 3.5 %. 1.5 % for each dB that the mean of 500, 1000, 2000 and 3000 Hz is over 25, each"
                                + " threshold limited to 0 to 100 dB, the better ear counted five times; no allowance for"
                                + " age. [AMA Guides to the Evaluation of Permanent Impairment, 6th edition, section"
                                + " 11.2a; not verified against the text]",
                        "AAO-HNS, 1979: right ear 7.5 %, left ear 22.5 %, both ears together 10 %. 1.5 % for each dB that"
                                + " the mean of 500, 1000, 2000 and 3000 Hz is over 25, thresholds as measured, the better"
                                + " ear counted five times; no allowance for age. [AAO-HNS 1979, Guide for the evaluation"
                                + " of hearing handicap]");
        assertThat(chapter(EXAMPLE, "Percentage of hearing handicap").isNot())
                .isEqualTo("What this is not: no diagnosis; no compensation decision.");
    }

    @Test
    void aMissingThresholdMakesTheSentenceARange() {
        Audiogram open = Audiograms.of("25 35 - 55 60 50 40", "20 25 35 40 45 45 40");
        assertThat(said(open, "Percentage of hearing handicap"))
                .first()
                .asString()
                .contains("right ear 7.5 %, left ear 5.63 to 43.13 %, both ears together 5.94 to 13.44 %");
        assertThat(said(open, "Percentage of hearing handicap"))
                .last()
                .asString()
                .contains("left ear not known, both ears together 1.25 to 22.92 %");
        assertThat(said(open, "Material impairment"))
                .first()
                .asString()
                .startsWith(
                        "The mean of both ears at 1000, 2000, 3000 and 4000 Hz is not known; the fence is more than 25:"
                                + " undecided.");
    }

    @Test
    void materialImpairmentSaysTheFence() {
        assertThat(said(EXAMPLE, "Material impairment"))
                .contains(
                        "The mean of both ears at 1000, 2000, 3000 and 4000 Hz is 42.50 dB HL; the fence is more than 25:"
                                + " over the fence. [NIOSH 1998, Criteria for a recommended standard, publication 98-126;"
                                + " not verified against the text]",
                        "The mean at 2000, 3000 and 4000 Hz: right ear 40.00 dB HL (over the fence), left ear 53.33 dB HL"
                                + " (over the fence); the fence is 25 or more. It is the level test of the injury log,"
                                + " which asks for a shift besides. [29 CFR 1904.10(a) and (b)(2)(ii)]");
    }

    @Test
    void gradesSayTheirMeans() {
        assertThat(said(EXAMPLE, "Grades"))
                .containsExactly(
                        "World Health Organization, 2021: mild loss, by the better ear's mean of 500, 1000, 2000 and 4000"
                                + " Hz, 31.25 dB HL. Hearing loss in one ear only: no. [WHO, World report on hearing,"
                                + " 2021, table 1.3]",
                        "World Health Organization, 1991: slight impairment, by the same mean. Disabling in adults, over"
                                + " 40 dB: no. [WHO 1991, grades of hearing impairment; not verified against the text]",
                        "Clark, 1981, for each ear, by the mean of 500, 1000 and 2000 Hz: right ear mild (26.67 dB HL),"
                                + " left ear mild (35.00 dB HL). [Clark 1981, as taken up by ASHA]");
        assertThat(said(Audiograms.of("- 30 30 30 30 30 30", "30 30 30 30 30 30 30"), "Grades"))
                .first()
                .asString()
                .contains("anything from normal hearing to mild loss", "30.00 dB HL or less");
    }

    @Test
    void shapesSayWhatTheyCompare() {
        assertThat(said(EXAMPLE, "Notches"))
                .contains(
                        "Notch index: right ear yes (7.50 dB), left ear yes (15.83 dB). The mean of 2000, 3000 and 4000 Hz"
                                + " less the mean of 1000 and 8000 Hz is more than 0. [Dobie and Rabinowitz, notch index]");
        assertThat(said(Audiograms.of("25 35 45 55 60 50 -", "0 0 0 0 0 0 0"), "Notches"))
                .allSatisfy(sentence -> assertThat(sentence).contains("right ear no", "left ear undecided"));
        assertThat(said(EXAMPLE, "Differences between the ears"))
                .contains(
                        "15 dB or more worse on one side at 3000 Hz: yes, the left ear is the worse one. The left ear's"
                                + " mean against the right ear's: 15.00 dB worse at 3000 Hz. [Saliba and others 2009, the"
                                + " rule of 3000]",
                        "Pure-tone average more than 15 dB worse on one side: no. The left ear's mean against the right"
                                + " ear's: 10.00 dB worse at 500, 1000, 2000 and 3000 Hz. [AAO-HNS 2014, red flags for"
                                + " referral]");
        assertThat(chapter(EXAMPLE, "Notches").isNot()).contains("no statement of what caused it");
    }

    @Test
    void referralSaysWhatIsMetAndWhyAndWhatHasToBeAsked() {
        Audiogram baseline = Audiograms.flat(20);
        List<ReferralFinding> findings = ReferralFinding.atLaterTest(baseline, EXAMPLE, Ear.LEFT);
        List<String> sentences = Meanings.of(EXAMPLE, findings).getLast().sentences().stream()
                .map(Sentence::text)
                .toList();
        assertThat(sentences)
                .containsExactly(
                        "Of 2 criteria that an audiogram answers, 1 is met and 0 are undecided.",
                        "Met: left ear, test of 9 Mar 2026, the mean of 3000, 4000 and 6000 Hz is 35.00 dB worse against"
                                + " the baseline of 9 Mar 2026; the criterion is more than 20 dB.",
                        "Not met: left ear, test of 9 Mar 2026, the mean of 500, 1000 and 2000 Hz is 15.00 dB worse"
                                + " against the baseline of 9 Mar 2026; the criterion is more than 15 dB.",
                        "For a professional to judge: an unusual curve; variable or inconsistent responses.",
                        "To ask the worker about, for the last twelve months, as no audiogram answers it: ear pain;"
                                + " drainage from the ear; dizziness; severe, persistent tinnitus; sudden, fluctuating or"
                                + " rapidly growing loss of hearing; a feeling of fullness or discomfort in the ear.",
                        "To look for in the ear: wax or a foreign body.");
    }

    @Test
    void noResponseIsSaidAsFarAsItIsKnown() {
        Audiogram test = Audiograms.of(">95 >95 >95 >95 >95 >95 >95", "0 0 0 0 0 0 0");
        assertThat(said(test, "Grades")).last().asString().contains("left ear profound (100.00 dB HL or more)");
        assertThat(said(test, "Differences between the ears"))
                .first()
                .asString()
                .contains("100.00 dB worse, or worse than that at 500");
    }
}
