package org.thresholdregister.core.scheduling;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.thresholdregister.core.scheduling.TestPlan.LeftOut;
import org.thresholdregister.core.scheduling.TestPlan.Planned;
import org.thresholdregister.core.scheduling.TestPlan.Why;

/**
 * Makes the plan of one or several test days.
 *
 * <p>People are placed in order of urgency, and somebody placed stays placed: where a less urgent person fits only if
 * another moves, the other moves. So a more urgent person is left out only where no arrangement of the times has room.
 * Each prefers a time rested from noise, then one within the shift, then any other. Within a day those of one shift and
 * department come one after the other, as far as that costs nobody a better time. The order of the input decides
 * nothing.
 */
public final class TestPlanner {

    /** Nobody is called to a time that is not open to them. */
    private static final int NEVER = Integer.MAX_VALUE;

    private static final int ANY = 2;

    private static final Comparator<DueTest> BY_SHIFT_AND_DEPARTMENT = Comparator.comparing(
                    (DueTest due) -> due.shift().isEmpty())
            .thenComparing(due ->
                    due.shift().map(WorkShift::starts).map(Object::toString).orElse(""))
            .thenComparing(due -> due.shift().map(WorkShift::name).orElse(""))
            .thenComparing(DueTest::department);

    private TestPlanner() {}

    /**
     * The plan for these days.
     *
     * @param taken times that somebody has already
     * @param due the same worker may be due for several tests and comes once, for the most urgent that can be held
     */
    public static TestPlan plan(List<DayHours> days, Set<Slot> taken, Collection<DueTest> due) {
        List<Slot> slots = days.stream()
                .flatMap(day -> day.slots().stream())
                .filter(slot -> !taken.contains(slot))
                .distinct()
                .sorted()
                .toList();
        List<DueTest> people = onePerWorker(due, slots);
        Matching matching = new Matching(slots, people);
        for (int person = 0; person < people.size(); person++) {
            matching.place(person);
        }
        List<Planned> planned = new ArrayList<>();
        matching.byDay().values().forEach(ofDay -> planned.addAll(ofDay.inGroups()));
        planned.sort(Comparator.comparing(Planned::slot));
        return new TestPlan(planned, leftOut(matching, people, slots));
    }

    private static List<DueTest> onePerWorker(Collection<DueTest> due, List<Slot> slots) {
        Map<String, List<DueTest>> byWorker =
                due.stream().sorted(DueTest.BY_URGENCY).collect(Collectors.groupingBy(DueTest::workerId));
        return byWorker.values().stream()
                .map(tests -> tests.stream()
                        .filter(test -> slots.stream().anyMatch(slot -> rank(test, slot) != NEVER))
                        .findFirst()
                        .orElse(tests.getFirst()))
                .sorted(DueTest.BY_URGENCY)
                .toList();
    }

    private static List<LeftOut> leftOut(Matching matching, List<DueTest> people, List<Slot> slots) {
        List<LeftOut> leftOut = new ArrayList<>();
        for (int person = 0; person < people.size(); person++) {
            if (!matching.isPlaced(person)) {
                leftOut.add(new LeftOut(people.get(person), why(people.get(person), slots)));
            }
        }
        return leftOut;
    }

    private static Why why(DueTest due, List<Slot> slots) {
        if (!slots.isEmpty() && slots.stream().allMatch(slot -> isTooLate(due, slot))) {
            return Why.TOO_LATE;
        }
        boolean noneWouldDo = !slots.isEmpty() && slots.stream().allMatch(slot -> rank(due, slot) == NEVER);
        return noneWouldDo ? Why.NO_QUIET_TIME : Why.NO_TIME_LEFT;
    }

    private static boolean isTooLate(DueTest due, Slot slot) {
        return due.occasion().endsWithItsLastDay() && slot.day().isAfter(due.lastDay());
    }

    /** 0 rested, or nothing is known of the shift; 1 within the shift; 2 off work but not rested. */
    private static int rank(DueTest due, Slot slot) {
        if (isTooLate(due, slot)) {
            return NEVER;
        }
        if (due.shift().isEmpty()) {
            return 0;
        }
        WorkShift shift = due.shift().get();
        if (shift.isRested(slot.time(), due.quiet().hours())) {
            return 0;
        }
        if (due.needsQuiet() && !due.quiet().protectorsMayStandIn()) {
            return NEVER;
        }
        return shift.isAtWork(slot.time()) ? 1 : ANY;
    }

    /** People and the times they have, so that each has one and each time has one. */
    private static final class Matching {

        private static final int NOBODY = -1;

        private final List<Slot> slots;
        private final List<DueTest> people;
        private final int[][] ranks;
        /** The worst rank that each person is moved to for another's sake. */
        private final int[] limits;

        private final int[] personAt;
        private final int[] slotOf;

        Matching(List<Slot> slots, List<DueTest> people) {
            this.slots = slots;
            this.people = people;
            ranks = new int[people.size()][slots.size()];
            limits = new int[people.size()];
            personAt = filled(slots.size());
            slotOf = filled(people.size());
            for (int person = 0; person < people.size(); person++) {
                for (int slot = 0; slot < slots.size(); slot++) {
                    ranks[person][slot] = rank(people.get(person), slots.get(slot));
                }
            }
        }

        private static int[] filled(int length) {
            int[] all = new int[length];
            Arrays.fill(all, NOBODY);
            return all;
        }

        boolean isPlaced(int person) {
            return slotOf[person] != NOBODY;
        }

        /**
         * First a good time without making another's worse, then any time without that, then any at all. Who needs no
         * quiet gives way to who does.
         */
        void place(int person) {
            boolean yields = !people.get(person).needsQuiet();
            for (int limit = 0; limit <= ANY; limit++) {
                limits[person] = limit;
                if (augment(person, new boolean[slots.size()])) {
                    limits[person] = yields ? ANY : limit;
                    return;
                }
            }
            int[] before = limits.clone();
            Arrays.fill(limits, ANY);
            if (!augment(person, new boolean[slots.size()])) {
                System.arraycopy(before, 0, limits, 0, limits.length);
            }
        }

        private boolean augment(int person, boolean[] seen) {
            for (int rank = 0; rank <= limits[person]; rank++) {
                for (int slot = 0; slot < slots.size(); slot++) {
                    if (ranks[person][slot] != rank || seen[slot]) {
                        continue;
                    }
                    seen[slot] = true;
                    if (personAt[slot] == NOBODY || augment(personAt[slot], seen)) {
                        personAt[slot] = person;
                        slotOf[person] = slot;
                        return true;
                    }
                }
            }
            return false;
        }

        /** The days, each by itself, with the people who come on it; nobody's time may become a worse one. */
        Map<LocalDate, Matching> byDay() {
            Map<LocalDate, List<Integer>> peopleByDay = new TreeMap<>();
            for (int person = 0; person < people.size(); person++) {
                if (isPlaced(person)) {
                    peopleByDay
                            .computeIfAbsent(slots.get(slotOf[person]).day(), day -> new ArrayList<>())
                            .add(person);
                }
            }
            Map<LocalDate, Matching> days = new TreeMap<>();
            peopleByDay.forEach((day, numbers) -> days.put(day, ofDay(day, numbers)));
            return days;
        }

        private Matching ofDay(LocalDate day, List<Integer> numbers) {
            List<Slot> ofDay =
                    slots.stream().filter(slot -> slot.day().equals(day)).toList();
            Matching matching =
                    new Matching(ofDay, numbers.stream().map(people::get).toList());
            for (int i = 0; i < numbers.size(); i++) {
                int slot = ofDay.indexOf(slots.get(slotOf[numbers.get(i)]));
                matching.slotOf[i] = slot;
                matching.personAt[slot] = i;
                matching.limits[i] = matching.ranks[i][slot];
            }
            return matching;
        }

        /** Fills the times of a day one after the other, staying with a shift and department as long as it can. */
        List<Planned> inGroups() {
            List<Planned> planned = new ArrayList<>();
            List<Integer> waiting = new ArrayList<>();
            for (int person = 0; person < people.size(); person++) {
                waiting.add(person);
            }
            boolean[] settled = new boolean[slots.size()];
            int last = NOBODY;
            for (int slot = 0; slot < slots.size(); slot++) {
                int chosen = chooseFor(slot, inOrder(waiting, last), settled);
                settled[slot] = true;
                if (chosen != NOBODY) {
                    waiting.remove(Integer.valueOf(chosen));
                    planned.add(new Planned(people.get(chosen), slots.get(slot)));
                    last = chosen;
                }
            }
            return planned;
        }

        private List<Integer> inOrder(List<Integer> waiting, int last) {
            Comparator<Integer> byGroup = Comparator.comparing(people::get, BY_SHIFT_AND_DEPARTMENT);
            Comparator<Integer> withTheLast = last == NOBODY
                    ? (one, other) -> 0
                    : Comparator.comparing(
                            person -> BY_SHIFT_AND_DEPARTMENT.compare(people.get(person), people.get(last)) != 0);
            return waiting.stream()
                    .sorted(withTheLast.thenComparing(byGroup).thenComparing(people::get, DueTest.BY_URGENCY))
                    .toList();
        }

        /** The first who may have this time so that all who wait after that still find one. */
        private int chooseFor(int slot, List<Integer> candidates, boolean[] settled) {
            for (int person : candidates) {
                if (ranks[person][slot] <= limits[person] && take(person, slot, settled)) {
                    return person;
                }
            }
            return NOBODY;
        }

        private boolean take(int person, int slot, boolean[] settled) {
            int evicted = personAt[slot];
            if (evicted == person) {
                return true;
            }
            int[] peopleBefore = personAt.clone();
            int[] slotsBefore = slotOf.clone();
            personAt[slotOf[person]] = NOBODY;
            personAt[slot] = person;
            slotOf[person] = slot;
            boolean[] seen = settled.clone();
            seen[slot] = true;
            if (evicted == NOBODY || augment(evicted, seen)) {
                return true;
            }
            System.arraycopy(peopleBefore, 0, personAt, 0, personAt.length);
            System.arraycopy(slotsBefore, 0, slotOf, 0, slotOf.length);
            return false;
        }
    }
}
