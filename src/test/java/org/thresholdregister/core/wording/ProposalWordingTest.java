package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.thresholdregister.core.audiometry.TestPurpose.ANNUAL;
import static org.thresholdregister.core.audiometry.TestPurpose.BASELINE;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.Vectors;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.judging.ProposalCase;
import org.thresholdregister.core.judging.WorkerFacts;
import org.thresholdregister.core.judging.WorkerHistory;

/** The sums are worked by hand; the allowances are of Table F-1, 29 CFR 1910.95 Appendix F. */
class ProposalWordingTest {

    /** Born on 1 January 1990. */
    private static final WorkerFacts WORKER = new WorkerFacts(
            "W-1", Optional.of(LocalDate.of(1990, 1, 1)), Optional.of(Sex.MALE), Optional.empty(), Optional.empty());

    private static Audiogram test(String day, TestPurpose purpose, String left) {
        return Vectors.audiogram(LocalDate.parse(day), purpose, List.of(left.split(" ")), List.of("10", "10", "10"));
    }

    private static List<String> working(Audiogram... tests) {
        var history = new WorkerHistory(WORKER, List.of(tests), List.of());
        return ProposalWording.working(
                        ProposalCase.open(history, JudgingOptions.asOf(LocalDate.of(2026, 3, 9)), Ear.LEFT)
                                .orElseThrow())
                .stream()
                .map(Sentence::withBasis)
                .toList();
    }

    @Test
    void aLastingWorseningIsToldSoThatItCanBeRedoneByHand() {
        List<String> working = working(
                test("2020-03-01", BASELINE, "10 10 15"),
                test("2021-03-01", ANNUAL, "20 25 30"),
                test("2022-03-01", ANNUAL, "20 25 35"),
                test("2023-03-01", ANNUAL, "20 20 25"));

        assertThat(working)
                .startsWith(
                        "Left ear: it is proposed that the baseline moves from the baseline test of 1 Mar 2020 to the"
                                + " annual test of 1 Mar 2021, for a lasting worsening. The other ear is not concerned."
                                + " [29 CFR 1910.95(g)(9)]")
                .contains(
                        "The present baseline, the baseline test of 1 Mar 2020, shows 10, 10, 15 dB HL at 2000, 3000 and"
                                + " 4000 Hz: 35 in all, a mean of 11.67 dB HL. [29 CFR 1910.95(g)(5)(i)]")
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith(
                                "The annual test of 1 Mar 2021 shows 20, 25, 30 dB HL at 2000, 3000 and 4000 Hz: 75 in"
                                        + " all, a mean of 25.00 dB HL. That is 40 dB more in all than at the baseline;")
                        .endsWith("[49 CFR 227 Appendix C]"))
                .contains("Of the two tests the guide takes the one with the lower mean: the annual test of 1 Mar 2021,"
                        + " 25.00 dB HL against 26.67 dB HL. [49 CFR 227 Appendix C]")
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith("On the new baseline the annual test of 1 Mar 2023 would show a mean shift of -")
                        .contains(", no shift; on the present one it shows "))
                .anySatisfy(sentence -> assertThat(sentence)
                        .contains("a mean of 10 dB or more after the age allowance")
                        .contains("6 months after the first was 1 Sep 2021"))
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith("An annual audiogram may take the baseline's place where the audiologist,"
                                + " otolaryngologist or physician")
                        .endsWith("the standard threshold shift is persistent. [29 CFR 1910.95(g)(9)]"))
                .anySatisfy(sentence -> assertThat(sentence).contains("A professional supervisor decides"));
    }

    @Test
    void anImprovementIsToldWithoutAnyAgeAllowance() {
        List<String> working = working(
                test("2020-03-01", BASELINE, "20 20 20"),
                test("2021-03-01", ANNUAL, "15 15 15"),
                test("2022-03-01", ANNUAL, "15 15 15"));

        assertThat(working)
                .anySatisfy(sentence -> assertThat(sentence)
                        .contains("That is 15 dB less in all than at the baseline, a mean of 5.00 dB better. No age"
                                + " allowance is made here."))
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith("Both tests have the same mean: the guide takes the earlier one. ["))
                .anySatisfy(sentence -> assertThat(sentence)
                        .contains("judges that it shows significant improvement over the baseline."))
                .noneSatisfy(sentence -> assertThat(sentence).contains("persistent"));
    }

    @Test
    void ofEqualWorseningsTheEarlierIsTakenUnlessTheOtherFrequenciesSayOtherwise() {
        assertThat(working(
                        test("2016-03-01", BASELINE, "10 10 10"),
                        test("2017-03-01", ANNUAL, "30 30 30"),
                        test("2018-03-01", ANNUAL, "30 30 30")))
                .anySatisfy(sentence -> assertThat(sentence)
                        .startsWith(
                                "Both tests have the same mean: the guide takes the earlier one, unless the later has"
                                        + " better thresholds at other frequencies"));
    }

    @Test
    void whatAcceptingWouldBringNextIsSaid() {
        List<String> working = working(
                test("2016-03-01", BASELINE, "10 10 10"),
                test("2017-03-01", ANNUAL, "30 30 30"),
                test("2018-03-01", ANNUAL, "30 30 30"),
                test("2019-03-01", ANNUAL, "60 60 60"),
                test("2020-03-01", ANNUAL, "60 60 60"));

        assertThat(working)
                .contains(
                        "Once this is accepted, the tests on record also give the next proposal: to move on to the annual"
                                + " test of 1 Mar 2019, for a lasting worsening. [49 CFR 227 Appendix C]");
    }
}
