package org.thresholdregister.core.validity;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.calibration.DailyCheck;
import org.thresholdregister.core.calibration.EquipmentDoubt;
import org.thresholdregister.core.rules.QuietRule;

/** A reason to look twice at a test, with the values that it rests on. Levels are in dB HL, differences in dB. */
public sealed interface ValidityFlag {

    FlagKind kind();

    /** The ears that it is about; both where it is about the whole test. */
    Ears ears();

    /** The frequencies that it is about; none where it is about the whole test. */
    List<Frequency> frequencies();

    FlagSource source();

    /** A flag about the test as a whole. */
    sealed interface OfTheTest extends ValidityFlag {
        @Override
        default Ears ears() {
            return Ears.BOTH;
        }

        @Override
        default List<Frequency> frequencies() {
            return List.of();
        }
    }

    /** A flag about one ear. */
    sealed interface OfAnEar extends ValidityFlag {
        Ear ear();

        @Override
        default Ears ears() {
            return Ears.of(ear());
        }
    }

    /**
     * Noise too shortly before a test that wants quiet.
     *
     * @param hours away from workplace noise before the test
     */
    record QuietTimeShort(BigDecimal hours, boolean protectorsWorn, QuietRule rule) implements OfTheTest {
        @Override
        public FlagKind kind() {
            return FlagKind.QUIET_TIME_SHORT;
        }

        @Override
        public FlagSource source() {
            return FlagSource.of(rule);
        }
    }

    /** A test that wants quiet, and the record does not say whether there was any. */
    record QuietTimeNotOnRecord(QuietRule rule) implements OfTheTest {
        @Override
        public FlagKind kind() {
            return FlagKind.QUIET_TIME_NOT_ON_RECORD;
        }

        @Override
        public FlagSource source() {
            return FlagSource.of(rule);
        }
    }

    /** Required frequencies that were left out. */
    record FrequenciesMissing(Ear ear, List<Frequency> frequencies) implements OfAnEar {
        @Override
        public FlagKind kind() {
            return FlagKind.FREQUENCIES_MISSING;
        }

        @Override
        public FlagSource source() {
            return FlagSource.REQUIRED_FREQUENCIES;
        }
    }

    /** Required frequencies that could not be tested. */
    record CouldNotBeTested(Ear ear, List<Frequency> frequencies) implements OfAnEar {
        @Override
        public FlagKind kind() {
            return FlagKind.COULD_NOT_BE_TESTED;
        }

        @Override
        public FlagSource source() {
            return FlagSource.REQUIRED_FREQUENCIES;
        }
    }

    /**
     * The second reading at 1000 Hz does not agree with the first.
     *
     * @param unreliable whether the difference is so large that nothing of this ear can be relied on
     */
    record RepeatDiffers(Ear ear, Threshold first, Threshold second, boolean unreliable) implements OfAnEar {
        @Override
        public FlagKind kind() {
            return unreliable ? FlagKind.REPEAT_UNRELIABLE : FlagKind.REPEAT_DIFFERS;
        }

        @Override
        public List<Frequency> frequencies() {
            return List.of(Frequency.HZ_1000);
        }

        @Override
        public FlagSource source() {
            return FlagSource.REPEAT_AT_1000;
        }
    }

    /**
     * The ears fit the worker's other tests clearly better when they are exchanged.
     *
     * @param otherTests how many other tests were compared; with one, either of the two may be the exchanged one
     */
    record EarsLookSwapped(Fit asGiven, Fit exchanged, int otherTests) implements OfTheTest {
        @Override
        public FlagKind kind() {
            return FlagKind.EARS_SWAPPED;
        }

        @Override
        public FlagSource source() {
            return FlagSource.OWN_TESTS;
        }
    }

    /**
     * The test fits another worker of the day clearly better than its own.
     *
     * @param exchangedWithTheirs whether the other's test of that day in turn fits this worker better, which hardly
     *     ever comes about by chance
     */
    record LooksLikeAnotherWorkers(String otherWorkerId, Fit own, Fit others, boolean exchangedWithTheirs)
            implements OfTheTest {
        @Override
        public FlagKind kind() {
            return exchangedWithTheirs ? FlagKind.EXCHANGED_WITH_ANOTHER : FlagKind.LIKE_ANOTHER;
        }

        @Override
        public FlagSource source() {
            return FlagSource.TESTS_OF_THE_DAY;
        }
    }

    /**
     * More improvement than hearing shows.
     *
     * @param baseline the day of the baseline that the ear is compared with
     * @param at the frequencies that are so much better; may be none
     * @param sumBetter of 2000, 3000 and 4000 Hz; a third of it is the mean improvement
     * @param meanIsBetter whether that mean is so much better
     */
    record BetterThanBaseline(
            Ear ear, LocalDate baseline, List<LevelChange> at, DecibelRange sumBetter, boolean meanIsBetter)
            implements OfAnEar {
        @Override
        public FlagKind kind() {
            return meanIsBetter ? FlagKind.MEAN_BETTER_THAN_BASELINE : FlagKind.BETTER_THAN_BASELINE;
        }

        @Override
        public List<Frequency> frequencies() {
            return at.stream().map(LevelChange::frequency).toList();
        }

        @Override
        public FlagSource source() {
            return FlagSource.IMPROVEMENT;
        }
    }

    /** A fall of hearing since the test before, to be looked at again soon. */
    record WorseThanPrevious(Ear ear, LocalDate previous, List<LevelChange> at) implements OfAnEar {
        @Override
        public FlagKind kind() {
            return FlagKind.WORSE_THAN_PREVIOUS;
        }

        @Override
        public List<Frequency> frequencies() {
            return at.stream().map(LevelChange::frequency).toList();
        }

        @Override
        public FlagSource source() {
            return FlagSource.WORSENING;
        }
    }

    /**
     * The other ear may have heard for this one.
     *
     * @param ear the worse ear, whose unmasked levels are not established
     */
    record MaskingCalledFor(Ear ear, Transducer transducer, List<EarDifference> at) implements OfAnEar {
        @Override
        public FlagKind kind() {
            return FlagKind.MASKING_CALLED_FOR;
        }

        @Override
        public List<Frequency> frequencies() {
            return at.stream().map(EarDifference::frequency).toList();
        }

        @Override
        public FlagSource source() {
            return transducer.source();
        }
    }

    /** Nothing was heard at any frequency tested. */
    record NoResponseThroughout(Ear ear, List<Frequency> frequencies) implements OfAnEar {
        @Override
        public FlagKind kind() {
            return FlagKind.NO_RESPONSE_THROUGHOUT;
        }

        @Override
        public FlagSource source() {
            return FlagSource.ENTRY_AND_EQUIPMENT;
        }
    }

    /** One and the same level at every frequency. */
    record SameLevelThroughout(Ear ear, Threshold level, List<Frequency> frequencies) implements OfAnEar {
        @Override
        public FlagKind kind() {
            return FlagKind.SAME_LEVEL_THROUGHOUT;
        }

        @Override
        public FlagSource source() {
            return FlagSource.ENTRY_AND_EQUIPMENT;
        }
    }

    /** Levels that do not stand on the steps of a test that otherwise does. */
    record OffTheStep(Ear ear, List<Frequency> frequencies) implements OfAnEar {
        @Override
        public FlagKind kind() {
            return FlagKind.OFF_THE_STEP;
        }

        @Override
        public FlagSource source() {
            return FlagSource.ENTRY_AND_EQUIPMENT;
        }
    }

    /**
     * The lowest frequency is raised in both ears of many who were tested on that day.
     *
     * @param raised how many, this worker among them
     * @param compared of how many whose usual hearing is known, this worker among them
     */
    record RoomNoise(int raised, int compared) implements OfTheTest {
        @Override
        public FlagKind kind() {
            return FlagKind.ROOM_NOISE;
        }

        @Override
        public List<Frequency> frequencies() {
            return List.of(Frequency.HZ_500);
        }

        @Override
        public FlagSource source() {
            return FlagSource.ROOM_NOISE;
        }
    }

    /** The equipment, the room or the tester was not in order. */
    record Equipment(EquipmentDoubt doubt) implements OfTheTest {
        @Override
        public FlagKind kind() {
            return switch (doubt) {
                case EquipmentDoubt.CalibrationOutOfDate ignored -> FlagKind.CALIBRATION_OUT_OF_DATE;
                case EquipmentDoubt.CalibrationFoundOutside ignored -> FlagKind.CALIBRATION_FOUND_OUTSIDE;
                case EquipmentDoubt.CheckMissing ignored -> FlagKind.FUNCTIONAL_CHECK_MISSING;
                case EquipmentDoubt.CheckFailed ignored -> FlagKind.FUNCTIONAL_CHECK_FAILED;
                case EquipmentDoubt.CheckFailedLater ignored -> FlagKind.FUNCTIONAL_CHECK_FAILED_LATER;
                case EquipmentDoubt.TransducerOfAnotherUnit ignored -> FlagKind.TRANSDUCER_OF_ANOTHER_UNIT;
                case EquipmentDoubt.RoomTooLoud ignored -> FlagKind.ROOM_TOO_LOUD;
                case EquipmentDoubt.RoomNotOnRecord ignored -> FlagKind.ROOM_NOT_ON_RECORD;
                case EquipmentDoubt.TesterCertificateExpired ignored -> FlagKind.TESTER_CERTIFICATE_EXPIRED;
                case EquipmentDoubt.TesterWithoutSupervisor ignored -> FlagKind.TESTER_WITHOUT_SUPERVISOR;
                case EquipmentDoubt.InstrumentNotRegistered ignored -> FlagKind.INSTRUMENT_NOT_REGISTERED;
                case EquipmentDoubt.TransducerNotRegistered ignored -> FlagKind.TRANSDUCER_NOT_REGISTERED;
                case EquipmentDoubt.TesterNotOnRecord ignored -> FlagKind.TESTER_NOT_ON_RECORD;
            };
        }

        @Override
        public FlagSource source() {
            return switch (doubt) {
                case EquipmentDoubt.CalibrationOutOfDate calibration ->
                    switch (calibration.kind()) {
                        case ACOUSTIC -> FlagSource.ACOUSTIC_CALIBRATION;
                        case EXHAUSTIVE -> FlagSource.EXHAUSTIVE_CALIBRATION;
                    };
                case EquipmentDoubt.CheckMissing ignored -> FlagSource.FUNCTIONAL_CHECK;
                case EquipmentDoubt.CheckFailed failed ->
                    failed.verdict() == DailyCheck.Verdict.DEVIATES
                            ? FlagSource.FUNCTIONAL_CHECK
                            : FlagSource.FAULT_HEARD;
                case EquipmentDoubt.CheckFailedLater ignored -> FlagSource.SINCE_LAST_GOOD;
                case EquipmentDoubt.CalibrationFoundOutside ignored -> FlagSource.SINCE_LAST_GOOD;
                case EquipmentDoubt.TransducerOfAnotherUnit ignored -> FlagSource.TRANSDUCER_AND_UNIT;
                case EquipmentDoubt.RoomTooLoud ignored -> FlagSource.ROOM_LIMITS;
                case EquipmentDoubt.RoomNotOnRecord ignored -> FlagSource.ROOM_RECORD;
                case EquipmentDoubt.TesterCertificateExpired ignored -> FlagSource.TESTER;
                case EquipmentDoubt.TesterWithoutSupervisor ignored -> FlagSource.TESTER;
                case EquipmentDoubt.InstrumentNotRegistered ignored -> FlagSource.EQUIPMENT_RECORD;
                case EquipmentDoubt.TransducerNotRegistered ignored -> FlagSource.EQUIPMENT_RECORD;
                case EquipmentDoubt.TesterNotOnRecord ignored -> FlagSource.EQUIPMENT_RECORD;
            };
        }
    }
}
