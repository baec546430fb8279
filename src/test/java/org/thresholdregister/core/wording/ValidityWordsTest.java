package org.thresholdregister.core.wording;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.calibration.Audiometer.CalibrationKind;
import org.thresholdregister.core.calibration.DailyCheck.Verdict;
import org.thresholdregister.core.calibration.EquipmentDoubt;
import org.thresholdregister.core.calibration.MeterReading;
import org.thresholdregister.core.calibration.OctaveBand;
import org.thresholdregister.core.calibration.RoomLimit;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.validity.EarDifference;
import org.thresholdregister.core.validity.Fit;
import org.thresholdregister.core.validity.FlagCount;
import org.thresholdregister.core.validity.FlagKind;
import org.thresholdregister.core.validity.LevelChange;
import org.thresholdregister.core.validity.Transducer;
import org.thresholdregister.core.validity.ValidityFlag;

class ValidityWordsTest {

    private static final LocalDate DAY = LocalDate.of(2020, 3, 9);

    private static final LevelChange BETTER =
            new LevelChange(Frequency.HZ_4000, Threshold.measured(40), Threshold.measured(20));
    private static final LevelChange WORSE =
            new LevelChange(Frequency.HZ_6000, Threshold.measured(20), Threshold.noResponseAt(95));
    private static final EarDifference DIFFERENCE =
            new EarDifference(Frequency.HZ_3000, Threshold.measured(60), Threshold.measured(5));

    private static final List<ValidityFlag> ONE_OF_EACH = List.of(
            new ValidityFlag.QuietTimeShort(new BigDecimal("5.50"), false, RuleSets.OSHA.quiet()),
            new ValidityFlag.QuietTimeNotOnRecord(RuleSets.OSHA.quiet()),
            new ValidityFlag.FrequenciesMissing(Ear.LEFT, List.of(Frequency.HZ_2000, Frequency.HZ_3000)),
            new ValidityFlag.CouldNotBeTested(
                    Ear.RIGHT, List.of(Frequency.HZ_500, Frequency.HZ_1000, Frequency.HZ_2000)),
            new ValidityFlag.RepeatDiffers(Ear.LEFT, Threshold.measured(20), Threshold.measured(30), false),
            new ValidityFlag.RepeatDiffers(Ear.LEFT, Threshold.measured(20), Threshold.measured(35), true),
            new ValidityFlag.EarsLookSwapped(new Fit(255, 14), new Fit(49, 14), 5),
            new ValidityFlag.LooksLikeAnotherWorkers("W-7", new Fit(170, 14), new Fit(42, 14), true),
            new ValidityFlag.LooksLikeAnotherWorkers("W-7", new Fit(170, 14), new Fit(42, 14), false),
            new ValidityFlag.BetterThanBaseline(Ear.RIGHT, DAY, List.of(BETTER), DecibelRange.exactly(35), true),
            new ValidityFlag.BetterThanBaseline(Ear.RIGHT, DAY, List.of(BETTER), DecibelRange.exactly(20), false),
            new ValidityFlag.WorseThanPrevious(Ear.LEFT, DAY, List.of(WORSE)),
            new ValidityFlag.MaskingCalledFor(Ear.LEFT, Transducer.INSERT, List.of(DIFFERENCE)),
            new ValidityFlag.NoResponseThroughout(Ear.LEFT, List.of(Frequency.values())),
            new ValidityFlag.SameLevelThroughout(Ear.LEFT, Threshold.measured(15), List.of(Frequency.values())),
            new ValidityFlag.OffTheStep(Ear.RIGHT, List.of(Frequency.HZ_2000)),
            new ValidityFlag.RoomNoise(3, 5),
            equipment(new EquipmentDoubt.CalibrationOutOfDate("A-7", CalibrationKind.ACOUSTIC, Optional.of(DAY))),
            equipment(new EquipmentDoubt.CalibrationFoundOutside("A-7", DAY)),
            equipment(new EquipmentDoubt.CheckMissing("A-7", false)),
            equipment(new EquipmentDoubt.CheckFailed("A-7", DAY, Verdict.DEVIATES)),
            equipment(new EquipmentDoubt.CheckFailedLater("A-7", DAY, Optional.empty())),
            equipment(new EquipmentDoubt.TransducerOfAnotherUnit("P-7", "A-7", Optional.of("A-8"))),
            equipment(new EquipmentDoubt.RoomTooLoud(
                    "Booth",
                    DAY,
                    List.of(new RoomLimit.BandFinding(
                            OctaveBand.HZ_500, MeterReading.ofDecibels(40), Optional.of(MeterReading.parse("44.5")))))),
            equipment(new EquipmentDoubt.RoomNotOnRecord("", EquipmentDoubt.RoomNotOnRecord.Why.NO_SUCH_ROOM)),
            equipment(new EquipmentDoubt.TesterCertificateExpired("B. Hale", Optional.of(DAY))),
            equipment(new EquipmentDoubt.TesterWithoutSupervisor("B. Hale")),
            equipment(new EquipmentDoubt.InstrumentNotRegistered("A-9")),
            equipment(new EquipmentDoubt.TransducerNotRegistered("")),
            equipment(new EquipmentDoubt.TesterNotOnRecord("C. Rusk")));

    private static ValidityFlag equipment(EquipmentDoubt doubt) {
        return new ValidityFlag.Equipment(doubt);
    }

    @Test
    void everyKindOfFlagIsPutIntoWords() {
        assertThat(ONE_OF_EACH.stream().map(ValidityFlag::kind).collect(Collectors.toSet()))
                .isEqualTo(EnumSet.allOf(FlagKind.class));
        Set<String> kinds =
                Arrays.stream(FlagKind.values()).map(ValidityWords::kind).collect(Collectors.toSet());
        assertThat(kinds).hasSize(FlagKind.values().length);
        assertThat(ONE_OF_EACH).allSatisfy(flag -> {
            assertThat(ValidityWords.reason(flag)).matches("[A-Z0-9].*\\.").doesNotContain("  ");
            assertThat(ValidityWords.advice(flag)).matches("[A-Z].*\\.");
            assertThat(ValidityWords.source(flag.source())).isNotBlank();
        });
    }

    @Test
    void theReasonsSayTheValues() {
        assertThat(ONE_OF_EACH.stream().map(ValidityWords::reason))
                .containsExactly(
                        "The test was made 5.5 hours after workplace noise; 14 hours are asked for before such a test,"
                                + " or hearing protectors worn instead.",
                        "The record does not say how long the worker had been away from workplace noise; 14 hours are"
                                + " asked for before such a test.",
                        "Left ear: 2000 and 3000 Hz were not tested, though the rule asks for 500 to 6000 Hz.",
                        "Right ear: 500, 1000 and 2000 Hz could not be tested.",
                        "Left ear: at 1000 Hz 20 dB HL first, 30 dB HL on the second reading: more than 5 dB apart.",
                        "Left ear: at 1000 Hz 20 dB HL first, 35 dB HL on the second reading: more than 10 dB apart, so"
                                + " that the ear cannot be relied on.",
                        "Beside the worker's 5 nearest other tests the levels lie 18.2 dB off in the mean, and 3.5 dB"
                                + " with left and right exchanged.",
                        "The levels lie 12.1 dB in the mean from what this worker's tests usually show, and 3.0 dB from"
                                + " what those of worker W-7 do, who was tested on the same day and whose test of that"
                                + " day fits this worker better.",
                        "The levels lie 12.1 dB in the mean from what this worker's tests usually show, and 3.0 dB from"
                                + " what those of worker W-7 do, who was tested on the same day.",
                        "Right ear: 15 dB or more better than at the baseline of 9 Mar 2020: at 4000 Hz 20 dB HL after"
                                + " 40 dB HL; the mean at 2000, 3000 and 4000 Hz is better by 11.67 dB.",
                        "Right ear: 15 dB or more better than at the baseline of 9 Mar 2020: at 4000 Hz 20 dB HL after"
                                + " 40 dB HL.",
                        "Left ear: more than 10 dB worse than on the test of 9 Mar 2020: at 6000 Hz no response at 95"
                                + " dB HL after 20 dB HL.",
                        "Left ear: at 3000 Hz 60 dB HL beside 5 dB HL in the other ear: from 55 dB of difference on,"
                                + " the other ear may have heard the tone.",
                        "Left ear: no response at any frequency that was tested.",
                        "Left ear: 15 dB HL at every frequency that was tested.",
                        "Right ear: the level at 2000 Hz does not stand on the 5 dB step on which most levels of this"
                                + " test stand.",
                        "500 Hz is raised by 10 dB or more in both ears of 3 of the 5 people tested at the site on this"
                                + " day whose usual hearing is known.",
                        "The last acoustic calibration of A-7 was in time until 9 Mar 2020.",
                        "The calibration of 9 Mar 2020 found A-7 outside its tolerances, and no functional check in"
                                + " between had passed.",
                        "No functional check of A-7 is on record for that day.",
                        "The functional check of A-7 on 9 Mar 2020 was 10 dB or more off, and no calibration had"
                                + " followed by then.",
                        "The next functional check of A-7, on 9 Mar 2020, failed; none before it is on record as"
                                + " passed.",
                        "The earphones P-7 were used on A-7, but are calibrated to A-8.",
                        "The room Booth measured on 9 Mar 2020 44.5 dB at 500 Hz, where 40 dB are allowed.",
                        "The record does not say in which room the test was made.",
                        "The certificate of B. Hale ran out on 9 Mar 2020.",
                        "The record names no audiologist or physician to whom B. Hale is responsible.",
                        "The instrument A-9 is not on record.",
                        "The record does not say with which earphones the test was made.",
                        "The tester C. Rusk is not on record.");
    }

    @Test
    void whatTheRecordLeavesOpenIsSaid() {
        assertThat(ValidityWords.reason(
                        new ValidityFlag.MaskingCalledFor(Ear.LEFT, Transducer.NOT_KNOWN, List.of(DIFFERENCE))))
                .endsWith("from 40 dB of difference on, the other ear may have heard the tone. The record does not say"
                        + " which earphones were used; supra-aural ones are assumed.");
        assertThat(ValidityWords.reason(new ValidityFlag.EarsLookSwapped(new Fit(140, 14), new Fit(0, 14), 1)))
                .isEqualTo("Beside the worker's one other test the levels lie 10.0 dB off in the mean, and 0.0 dB with"
                        + " left and right exchanged. Which of the two tests has them exchanged cannot be told.");
        assertThat(ValidityWords.reason(new ValidityFlag.QuietTimeShort(
                        new BigDecimal("1.0"),
                        true,
                        RuleSets.find("niosh").orElseThrow().quiet())))
                .isEqualTo("The test was made 1 hour after workplace noise; 12 hours are asked for before such a test,"
                        + " and hearing protectors do not count.");
        assertThat(ValidityWords.reason(
                        new ValidityFlag.BetterThanBaseline(Ear.LEFT, DAY, List.of(), DecibelRange.atLeast(30), true)))
                .isEqualTo("Left ear: the mean at 2000, 3000 and 4000 Hz is better by 10.00 dB or more than at the"
                        + " baseline of 9 Mar 2020.");
    }

    @Test
    void aSourceThatIsNoRegulationSaysWhatItIs() {
        assertThat(ONE_OF_EACH.stream()
                        .map(flag -> ValidityWords.source(flag.source()))
                        .distinct())
                .contains(
                        "29 CFR 1910.95(g)(5)(iii)",
                        "29 CFR 1910.95(h)(1)",
                        "HSE L108 (2021) (published guidance)",
                        "ISO 8253-1 and the British Society of Audiology's procedure (from memory, not checked against"
                                + " the text)",
                        "comparison with the worker's other tests (this register's own measure)",
                        "checks for faults of entry and equipment (common practice)");
    }

    @Test
    void flagsAreCountedByTheirWeight() {
        assertThat(ValidityWords.count(FlagCount.NONE)).isEmpty();
        assertThat(ValidityWords.count(new FlagCount(2, 1))).isEqualTo("2 doubts, 1 note");
        assertThat(ValidityWords.count(new FlagCount(0, 2))).isEqualTo("2 notes");
        assertThat(FlagCount.of(ONE_OF_EACH)).isEqualTo(new FlagCount(19, 11));
        assertThat(FlagCount.of(List.of()).isNone()).isTrue();
    }
}
