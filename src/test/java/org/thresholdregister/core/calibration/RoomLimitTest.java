package org.thresholdregister.core.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Provenance;
import org.thresholdregister.core.wording.EquipmentWords;

/** The published limits of background noise, row by row. */
class RoomLimitTest {

    private static final Map<String, RoomLimit> BY_SOURCE = Map.of(
            "29 CFR 1910.95 App. D Table D-1|not stated (supra-aural assumed)", RoomLimit.OSHA,
            "49 CFR 227 App. D Table D-1|supra-aural", RoomLimit.FRA_SUPRA_AURAL,
            "49 CFR 227 App. D Table D-1|insert", RoomLimit.FRA_INSERT,
            "ANSI S3.1-1999 (R2018) Table 1|supra-aural (ears covered)", RoomLimit.ANSI_SUPRA_AURAL,
            "ANSI S3.1-1999 (R2018) Table 1|insert (ears covered)", RoomLimit.ANSI_INSERT);

    private static final Map<RoomLimit, Integer> ROWS = new HashMap<>();

    private static Map<OctaveBand, MeterReading> atTheLimit(RoomLimit limit) {
        Map<OctaveBand, MeterReading> levels = new EnumMap<>(OctaveBand.class);
        for (OctaveBand band : OctaveBand.values()) {
            limit.at(band).ifPresent(level -> levels.put(band, level));
        }
        return levels;
    }

    private static OctaveBand band(int hertz) {
        return List.of(OctaveBand.values()).stream()
                .filter(any -> any.hertz() == hertz)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/vectors/calibration/room-limits.csv", useHeadersInDisplayName = true)
    void eachRowHoldsAtItsLimitAndNotAbove(
            String standard, String transducer, String range, int hertz, String level, String provenance) {
        RoomLimit limit = BY_SOURCE.get(standard + "|" + transducer);
        assertThat(limit).isNotNull();
        assertThat(limit.provenance())
                .isEqualTo(provenance.startsWith("looked up") ? Provenance.LOOKED_UP : Provenance.FROM_MEMORY);
        assertThat(limit.at(band(hertz))).contains(MeterReading.parse(level));
        Map<OctaveBand, MeterReading> levels = atTheLimit(limit);
        assertThat(limit.judge(levels).isKept()).isEqualTo(Answer.YES);
        levels.put(band(hertz), new MeterReading(MeterReading.parse(level).tenths() + 1));
        assertThat(limit.judge(levels).isKept()).isEqualTo(Answer.NO);
        assertThat(limit.judge(levels).tooLoud())
                .singleElement()
                .extracting(RoomLimit.BandFinding::band)
                .isEqualTo(band(hertz));
    }

    @ParameterizedTest
    @EnumSource(RoomLimit.class)
    void theTablesHaveNoOtherRows(RoomLimit limit) {
        assertThat(atTheLimit(limit)).hasSize(limit.name().startsWith("ANSI") ? 7 : 5);
        assertThat(BY_SOURCE.values()).contains(limit);
    }

    @Test
    void aMissingBandLeavesItOpenUnlessAnotherIsTooLoud() {
        Map<OctaveBand, MeterReading> levels = atTheLimit(RoomLimit.OSHA);
        levels.remove(OctaveBand.HZ_8000);
        assertThat(RoomLimit.OSHA.judge(levels).isKept()).isEqualTo(Answer.UNDECIDED);
        assertThat(EquipmentWords.room(RoomLimit.OSHA.judge(levels)))
                .isEqualTo("cannot be decided: not measured at 8000 Hz");
        levels.put(OctaveBand.HZ_500, MeterReading.parse("40.5"));
        assertThat(RoomLimit.OSHA.judge(levels).isKept()).isEqualTo(Answer.NO);
        assertThat(EquipmentWords.room(RoomLimit.OSHA.judge(levels)))
                .isEqualTo("too loud at 500 Hz: 40.5 dB, 40 allowed");
    }

    @Test
    void bandsWithoutALimitDoNotMatter() {
        Map<OctaveBand, MeterReading> levels = atTheLimit(RoomLimit.OSHA);
        levels.put(OctaveBand.HZ_125, MeterReading.ofDecibels(90));
        assertThat(RoomLimit.OSHA.judge(levels).isKept()).isEqualTo(Answer.YES);
        assertThat(EquipmentWords.room(RoomLimit.OSHA.judge(levels))).isEqualTo("keeps it");
        assertThat(EquipmentWords.limit(RoomLimit.ANSI_INSERT))
                .isEqualTo(
                        "ANSI S3.1-1999 (R2018), Table 1 (from memory, not checked against the text): insert earphones");
    }
}
