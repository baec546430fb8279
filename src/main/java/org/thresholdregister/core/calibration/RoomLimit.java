package org.thresholdregister.core.calibration;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Citation;
import org.thresholdregister.core.regulation.Provenance;

/**
 * Published limits of background noise in a room for hearing tests, in octave bands, dB. A level at the limit keeps it:
 * the texts name the highest level allowed.
 */
public enum RoomLimit {
    /** Required of every site under the rule; earphones are not told apart, and there is no limit below 500 Hz. */
    OSHA("29 CFR 1910.95 Appendix D, Table D-1", "any earphones", Provenance.LOOKED_UP),
    FRA_SUPRA_AURAL("49 CFR 227 Appendix D, Table D-1", "supra-aural earphones", Provenance.LOOKED_UP),
    FRA_INSERT("49 CFR 227 Appendix D, Table D-1", "insert earphones", Provenance.LOOKED_UP),
    /** Stricter: for hearing down to 0 dB HL. */
    ANSI_SUPRA_AURAL("ANSI S3.1-1999 (R2018), Table 1", "supra-aural earphones", Provenance.FROM_MEMORY),
    ANSI_INSERT("ANSI S3.1-1999 (R2018), Table 1", "insert earphones", Provenance.FROM_MEMORY);

    private static final Map<RoomLimit, Map<OctaveBand, MeterReading>> LEVELS = load();

    private final Citation source;
    private final String earphones;
    private final Provenance provenance;

    RoomLimit(String source, String earphones, Provenance provenance) {
        this.source = new Citation(source);
        this.earphones = earphones;
        this.provenance = provenance;
    }

    private static Map<RoomLimit, Map<OctaveBand, MeterReading>> load() {
        Map<RoomLimit, Map<OctaveBand, MeterReading>> levels = new EnumMap<>(RoomLimit.class);
        for (String[] cells : CsvTable.rows("room-limits.csv")) {
            Map<OctaveBand, MeterReading> bands = new EnumMap<>(OctaveBand.class);
            for (OctaveBand band : OctaveBand.values()) {
                String cell = cells[band.ordinal() + 1];
                if (!cell.isEmpty()) {
                    bands.put(band, MeterReading.parse(cell));
                }
            }
            levels.put(valueOf(cells[0]), bands);
        }
        return levels;
    }

    public Citation source() {
        return source;
    }

    /** For which earphones, in words. */
    public String earphones() {
        return earphones;
    }

    public Provenance provenance() {
        return provenance;
    }

    /** The highest level allowed in a band; empty where there is no limit. */
    public Optional<MeterReading> at(OctaveBand band) {
        return Optional.ofNullable(LEVELS.getOrDefault(this, Map.of()).get(band));
    }

    /**
     * One band beside its limit.
     *
     * @param level empty where the band was not measured
     */
    public record BandFinding(OctaveBand band, MeterReading limit, Optional<MeterReading> level) {

        public Answer isKept() {
            return level.map(measured -> measured.compareTo(limit) <= 0 ? Answer.YES : Answer.NO)
                    .orElse(Answer.UNDECIDED);
        }
    }

    /** Whether a room keeps a limit; undecided where a band is missing and none is too loud. */
    public record Finding(RoomLimit limit, List<BandFinding> bands) {

        public Answer isKept() {
            return Answer.allOf(bands.stream().map(BandFinding::isKept));
        }

        /** The bands that are too loud. */
        public List<BandFinding> tooLoud() {
            return bands.stream().filter(band -> band.isKept() == Answer.NO).toList();
        }

        /** The bands with a limit that were not measured. */
        public List<OctaveBand> missing() {
            return bands.stream()
                    .filter(band -> band.level().isEmpty())
                    .map(BandFinding::band)
                    .toList();
        }
    }

    /** Compares the levels of a room, band by band. */
    public Finding judge(Map<OctaveBand, MeterReading> levels) {
        List<BandFinding> bands = new ArrayList<>();
        for (OctaveBand band : OctaveBand.values()) {
            at(band).ifPresent(limit -> bands.add(new BandFinding(band, limit, Optional.ofNullable(levels.get(band)))));
        }
        return new Finding(this, List.copyOf(bands));
    }
}
