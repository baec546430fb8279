package org.thresholdregister.core.calibration;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.regulation.Answer;
import org.thresholdregister.core.regulation.Citation;

/**
 * The acoustic check of an audiometer's output: dial at 70 dB HL, the earphone on the coupler, the meter's reading at
 * each frequency beside the one printed. Levels in dB.
 *
 * <p>Source: 29 CFR 1910.95 Appendix E, (1) and (3), and (h)(5)(ii). 3 dB at 500 to 3000 Hz, 4 dB at 4000 Hz and 5 dB at
 * 6000 Hz advise an exhaustive calibration; 15 dB at any of them require one.
 *
 * <p>Reading: Appendix E (3) prints "greater than 15 dB or greater"; paragraph (h)(5)(ii) says 15 dB or greater, and that
 * is taken.
 */
public final class AppendixE {

    public static final Citation SOURCE = new Citation("29 CFR 1910.95(h)(5)(ii) and Appendix E");

    /** What the dial is set to, in dB HL. */
    public static final int DIAL_DB = 70;

    /** What is measured: 29 CFR 1910.95(h)(5)(ii) lets frequencies below 500 and above 6000 Hz be left out. */
    public static final List<Frequency> FREQUENCIES = List.of(
            Frequency.HZ_500,
            Frequency.HZ_1000,
            Frequency.HZ_2000,
            Frequency.HZ_3000,
            Frequency.HZ_4000,
            Frequency.HZ_6000);

    private record Row(MeterReading expected, int advisedFrom, int requiredFrom) {}

    private static final Map<Earphone, Map<Frequency, Row>> ROWS = load();

    private AppendixE() {}

    private static Map<Earphone, Map<Frequency, Row>> load() {
        Map<Earphone, Map<Frequency, Row>> tables = new EnumMap<>(Earphone.class);
        for (String[] cells : CsvTable.rows("appendix-e.csv")) {
            Earphone earphone = Earphone.find(cells[1]).orElseThrow();
            Frequency frequency = FREQUENCIES.stream()
                    .filter(any -> any.hertz() == Integer.parseInt(cells[2]))
                    .findFirst()
                    .orElseThrow();
            tables.computeIfAbsent(earphone, unseen -> new EnumMap<>(Frequency.class))
                    .put(
                            frequency,
                            new Row(
                                    MeterReading.parse(cells[5]),
                                    Integer.parseInt(cells[6]),
                                    Integer.parseInt(cells[7])));
        }
        return tables;
    }

    /**
     * What the meter should show with the dial at {@value #DIAL_DB} dB HL.
     *
     * @throws IllegalArgumentException at a frequency that the table does not hold
     */
    public static MeterReading expected(Earphone earphone, Frequency frequency) {
        return row(earphone, frequency).expected();
    }

    private static Row row(Earphone earphone, Frequency frequency) {
        Row row = Objects.requireNonNull(ROWS.get(earphone)).get(frequency);
        if (row == null) {
            throw new IllegalArgumentException("Appendix E has no row for " + frequency.hertz() + " Hz");
        }
        return row;
    }

    /**
     * One reading beside the table.
     *
     * @param deviationTenths reading less expected, in tenths of a dB
     */
    public record Finding(
            Ear ear,
            Frequency frequency,
            MeterReading expected,
            MeterReading reading,
            int deviationTenths,
            boolean exhaustiveAdvised,
            boolean exhaustiveRequired) {}

    /**
     * What the readings ask for.
     *
     * @param missing how many of the twelve readings there are not
     * @param exhaustiveRequired no only where every reading is there
     * @param exhaustiveAdvised likewise; yes also where it is required
     */
    public record Result(List<Finding> findings, int missing, Answer exhaustiveRequired, Answer exhaustiveAdvised) {

        /** The reading that lies furthest off; empty where there is none. */
        public Optional<Finding> furthestOff() {
            return findings.stream()
                    .max((one, other) ->
                            Integer.compare(Math.abs(one.deviationTenths()), Math.abs(other.deviationTenths())));
        }
    }

    /** Judges the readings; those at 8000 Hz, for which there is no row, are left out. */
    public static Result judge(Earphone earphone, PerEar<Map<Frequency, MeterReading>> readings) {
        List<Finding> findings = new ArrayList<>();
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : FREQUENCIES) {
                MeterReading reading = readings.of(ear).get(frequency);
                if (reading != null) {
                    findings.add(finding(earphone, ear, frequency, reading));
                }
            }
        }
        int missing = Ear.values().length * FREQUENCIES.size() - findings.size();
        return new Result(
                List.copyOf(findings),
                missing,
                answer(findings.stream().anyMatch(Finding::exhaustiveRequired), missing),
                answer(findings.stream().anyMatch(Finding::exhaustiveAdvised), missing));
    }

    private static Finding finding(Earphone earphone, Ear ear, Frequency frequency, MeterReading reading) {
        Row row = row(earphone, frequency);
        int deviation = reading.tenthsAbove(row.expected());
        return new Finding(
                ear,
                frequency,
                row.expected(),
                reading,
                deviation,
                Math.abs(deviation) >= 10 * row.advisedFrom(),
                Math.abs(deviation) >= 10 * row.requiredFrom());
    }

    private static Answer answer(boolean any, int missing) {
        return any ? Answer.YES : missing > 0 ? Answer.UNDECIDED : Answer.NO;
    }
}
