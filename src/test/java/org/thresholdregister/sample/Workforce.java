package org.thresholdregister.sample;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;

/**
 * The people who worked at the plant in ten years, numbered in the order of their hiring. Each is made from the number
 * alone, so that a large workforce can be written one by one.
 *
 * @param size how many there are
 * @param turnover whether people come and go over the years, or all stay for the ten years and come to each yearly test
 */
record Workforce(int size, boolean turnover) {

    /** What {@code sample-roster/} holds. */
    static final Workforce SAMPLE = new Workforce(400, true);

    private static final double THERE_AT_THE_START = 0.575;
    private static final double LEAVE_IN_A_YEAR = 0.042;
    private static final int LEAST_ID_DIGITS = 4;

    /** The worker of that number, from 1 to the size. */
    Worker worker(int number) {
        int idDigits = Math.max(LEAST_ID_DIGITS, Integer.toString(size).length());
        Dice dice = Dice.of(number, "employment");
        LocalDate hired = hired(number, dice);
        Optional<AwkwardCase> awkward = equals(SAMPLE) ? AwkwardCase.ofWorker(number) : Optional.empty();
        // Young people's stories are not blurred by the losses of age.
        int ageWhenHired = awkward.isPresent() ? 19 : ageWhenHired(hired, dice);
        Worker worker = new Worker(number, idDigits, hired, ageWhenHired);
        if (awkward.isPresent()) {
            awkward.get().happenTo(worker);
        } else {
            if (turnover) {
                employ(worker, dice);
            }
            new Career(worker, !turnover).live();
        }
        new Filing(worker).file();
        return worker;
    }

    private LocalDate hired(int number, Dice dice) {
        double place = (number - 0.5) / size;
        if (!turnover || place < THERE_AT_THE_START) {
            double before = turnover ? 1 - place / THERE_AT_THE_START : dice.between(0.0, 1.0);
            // Most came in the last years before the programme, a few more than thirty years before it.
            return Plant.PROGRAMME_START.minusDays(5 + (long) (before * before * 33 * 365));
        }
        long days = ChronoUnit.DAYS.between(Plant.PROGRAMME_START, Plant.LAST_DAY);
        return Plant.openOn(Plant.PROGRAMME_START.plusDays(
                (long) ((place - THERE_AT_THE_START) / (1 - THERE_AT_THE_START) * (days - 12))));
    }

    private static int ageWhenHired(LocalDate hired, Dice dice) {
        int oldest = Math.min(52, 62 - (int) Math.max(0, ChronoUnit.YEARS.between(hired, Plant.PROGRAMME_START)));
        int age = 18 + (int) (-StrictMath.log(dice.between(0.01, 1.0)) * 9);
        return Math.min(age, oldest);
    }

    private static void employ(Worker worker, Dice dice) {
        double years = -StrictMath.log(dice.between(0.0001, 1.0)) / LEAVE_IN_A_YEAR;
        LocalDate leaves = worker.enrolled().plusDays(20 + (long) (Math.min(years, 60) * 365));
        LocalDate retires = worker.birthDate().plusYears(dice.between(63, 68)).plusDays(dice.between(0, 364));
        LocalDate end = leaves.isBefore(retires) ? leaves : retires;
        if (end.isBefore(Plant.LAST_DAY)) {
            worker.leaves(Plant.openOn(end));
        }
    }
}
