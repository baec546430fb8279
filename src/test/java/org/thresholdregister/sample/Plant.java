package org.thresholdregister.sample;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import org.thresholdregister.core.audiometry.Frequency;

/** Fernhollow Glassworks: its sites, departments, noise, instruments and calendar. All of it is invented. */
final class Plant {

    /** The first day of the hearing-conservation programme; whoever worked there then is enrolled from this day. */
    static final LocalDate PROGRAMME_START = LocalDate.of(2016, 11, 1);

    /** The last day in the files. */
    static final LocalDate LAST_DAY = LocalDate.of(2026, 11, 20);

    static final String WORKS = "Fernhollow Works";
    static final String QUARRY_ROAD = "Quarry Road";

    /** The month in which instrument A-1 read too high, and by how much; see {@link #isFaulty}. */
    static final YearMonth FAULTY_MONTH = YearMonth.of(2023, 11);

    /** In 2020 the clinic was closed for a season. */
    private static final LocalDate SHUT_FROM = LocalDate.of(2020, 3, 23);

    private static final LocalDate OPEN_AGAIN = LocalDate.of(2020, 6, 22);
    private static final long SHUT_DAYS = ChronoUnit.DAYS.between(SHUT_FROM, OPEN_AGAIN);

    static final int FAULT_DB = 10;
    static final Set<Frequency> FAULTY_FREQUENCIES = Set.of(Frequency.HZ_3000, Frequency.HZ_4000, Frequency.HZ_6000);

    /**
     * A department at one site.
     *
     * @param noiseGroup people with like exposure, measured together
     * @param twaDba the group's eight-hour time-weighted average in dBA
     * @param share workers out of a hundred
     */
    record Department(String site, String name, String noiseGroup, double twaDba, int share, List<String> jobTitles) {}

    static final Department HOT_END = new Department(
            WORKS,
            "Hot End",
            "HE-1",
            94.0,
            25,
            List.of("Forming machine operator", "Forming machine operator", "Mould changer", "Shift lead, hot end"));
    static final Department COLD_END = new Department(
            WORKS, "Cold End", "CE-1", 89.5, 19, List.of("Lehr attendant", "Inspection operator", "Line mechanic"));
    static final Department BATCH_HOUSE = new Department(
            WORKS, "Batch House", "BH-1", 88.0, 11, List.of("Batch mixer", "Cullet handler", "Furnace tender"));
    static final Department MAINTENANCE = new Department(
            WORKS, "Maintenance", "MT-1", 87.0, 11, List.of("Mechanic", "Electrician", "Compressor attendant"));
    static final Department CUTTING_SHOP = new Department(
            QUARRY_ROAD, "Cutting Shop", "CS-1", 92.5, 19, List.of("Glass cutter", "Edge grinder", "Saw operator"));
    static final Department PACKING_HALL = new Department(
            QUARRY_ROAD, "Packing Hall", "PH-1", 85.5, 15, List.of("Packer", "Palletiser operator", "Forklift driver"));
    /** Four people: small enough that its counts would give a person away. */
    static final Department QUARRY_ROAD_MAINTENANCE =
            new Department(QUARRY_ROAD, "Maintenance", "MT-2", 86.5, 0, List.of("Mechanic", "Electrician"));

    static final List<Department> DEPARTMENTS =
            List.of(HOT_END, COLD_END, BATCH_HOUSE, MAINTENANCE, CUTTING_SHOP, PACKING_HALL, QUARRY_ROAD_MAINTENANCE);

    /**
     * A screening audiometer.
     *
     * @param tests8000Hz the travelling instrument stops at 6000 Hz
     */
    record Instrument(String name, boolean tests8000Hz) {
        /** The loudest tone in dB HL. */
        int limitDb(Frequency frequency) {
            return frequency == Frequency.HZ_8000 ? 90 : 95;
        }
    }

    static final Instrument AT_WORKS = new Instrument("A-1", true);
    static final Instrument AT_QUARRY_ROAD = new Instrument("A-2", true);
    static final Instrument TRAVELLING = new Instrument("A-3", false);

    static final String AUDIOLOGIST = "S. Amadi-Rook, audiologist";
    static final String NURSE = "N. Castañuelo, nurse";
    static final String SAFETY_OFFICER = "E. Flintharrow, safety officer";
    static final String PHYSICIAN = "Dr I. Larkenfell, occupational physician";

    private static final List<String> TESTERS_AT_WORKS =
            List.of("P. Marrowdale", "P. Marrowdale", "P. Marrowdale", "N. Castañuelo");
    private static final List<String> TESTERS_AT_QUARRY_ROAD = List.of("D. Okonwelu", "D. Okonwelu", "N. Castañuelo");

    private Plant() {}

    static Department departmentFor(Dice dice) {
        int mark = dice.between(0, 99);
        for (Department department : DEPARTMENTS) {
            mark -= department.share();
            if (mark < 0) {
                return department;
            }
        }
        throw new IllegalStateException("the departments' shares add up to less than a hundred");
    }

    static Instrument instrumentFor(String site, LocalDate day, boolean retest, Dice dice) {
        boolean suspected = retest && YearMonth.from(day).equals(FAULTY_MONTH);
        if (suspected || dice.chance(0.04)) {
            return TRAVELLING;
        }
        return site.equals(QUARRY_ROAD) ? AT_QUARRY_ROAD : AT_WORKS;
    }

    static String transducerOf(Instrument instrument, LocalDate day) {
        if (instrument.equals(AT_WORKS)) {
            return "P-11";
        }
        if (instrument.equals(TRAVELLING)) {
            return "P-31";
        }
        return day.getYear() < 2021 ? "P-21" : "P-22";
    }

    static String testerFor(String site, Instrument instrument, Dice dice) {
        if (instrument.equals(TRAVELLING)) {
            return "R. Wetherfold";
        }
        return dice.pick(site.equals(QUARRY_ROAD) ? TESTERS_AT_QUARRY_ROAD : TESTERS_AT_WORKS);
    }

    static boolean isFaulty(Instrument instrument, LocalDate day) {
        return instrument.equals(AT_WORKS) && YearMonth.from(day).equals(FAULTY_MONTH);
    }

    /** That day or the next on which the clinic is open; what fell into the closure of 2020 came a season later. */
    static LocalDate openOn(LocalDate day) {
        LocalDate open = day;
        while (isClosed(open)) {
            open = open.plusDays(isShut(open) ? SHUT_DAYS : 1);
        }
        return open;
    }

    /** That day, or the Friday before it at a weekend. */
    static LocalDate workingDayUpTo(LocalDate day) {
        LocalDate working = day;
        while (isWeekend(working)) {
            working = working.minusDays(1);
        }
        return working;
    }

    /** At weekends, from 24 December to 1 January, and in the closure. */
    static boolean isClosed(LocalDate day) {
        boolean midwinter = day.getMonthValue() == 12 && day.getDayOfMonth() >= 24
                || day.getMonthValue() == 1 && day.getDayOfMonth() == 1;
        return isWeekend(day) || midwinter || isShut(day);
    }

    private static boolean isWeekend(LocalDate day) {
        return day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
    }

    private static boolean isShut(LocalDate day) {
        return !day.isBefore(SHUT_FROM) && day.isBefore(OPEN_AGAIN);
    }
}
