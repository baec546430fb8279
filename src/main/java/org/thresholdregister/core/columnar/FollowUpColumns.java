package org.thresholdregister.core.columnar;

import java.util.Arrays;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.followup.FollowUpKind;

/** What is owed to workers one after the other, in plain arrays that grow. */
final class FollowUpColumns {

    private static final FollowUpKind[] KINDS = FollowUpKind.values();
    private static final Ears[] EARS = Ears.values();

    private int size;
    private int[] dueDays;
    private int[] testDays;
    private byte[] kinds;
    private byte[] ears;

    FollowUpColumns(int capacity) {
        dueDays = new int[capacity];
        testDays = new int[capacity];
        kinds = new byte[capacity];
        ears = new byte[capacity];
    }

    int size() {
        return size;
    }

    void add(FollowUpKind kind, int dueDay, int testDay, Ears concerned) {
        if (size == kinds.length) {
            int capacity = 16 + size + (size >> 1);
            dueDays = Arrays.copyOf(dueDays, capacity);
            testDays = Arrays.copyOf(testDays, capacity);
            kinds = Arrays.copyOf(kinds, capacity);
            ears = Arrays.copyOf(ears, capacity);
        }
        set(size++, kind.ordinal(), dueDay, testDay, concerned.ordinal());
    }

    private void set(int place, int kind, int dueDay, int testDay, int concerned) {
        kinds[place] = (byte) kind;
        dueDays[place] = dueDay;
        testDays[place] = testDay;
        ears[place] = (byte) concerned;
    }

    /** Adds all of these; there must be room. */
    void addAll(FollowUpColumns others) {
        System.arraycopy(others.dueDays, 0, dueDays, size, others.size);
        System.arraycopy(others.testDays, 0, testDays, size, others.size);
        System.arraycopy(others.kinds, 0, kinds, size, others.size);
        System.arraycopy(others.ears, 0, ears, size, others.size);
        size += others.size;
    }

    /** Sorts the last ones, from this place on, by due day and kind; equal ones stay in the order of their tests. */
    void sortFrom(int first) {
        for (int i = first + 1; i < size; i++) {
            int dueDay = dueDays[i];
            int testDay = testDays[i];
            int kind = kinds[i];
            int concerned = ears[i];
            int place = i;
            while (place > first && isAfter(place - 1, dueDay, kind)) {
                set(place, kinds[place - 1], dueDays[place - 1], testDays[place - 1], ears[place - 1]);
                place--;
            }
            set(place, kind, dueDay, testDay, concerned);
        }
    }

    private boolean isAfter(int place, int dueDay, int kind) {
        return dueDays[place] != dueDay ? dueDays[place] > dueDay : kinds[place] > kind;
    }

    FollowUpKind kind(int place) {
        return KINDS[kinds[place]];
    }

    int dueDay(int place) {
        return dueDays[place];
    }

    /** The day of the test that it follows, or {@link Population#NO_DAY}. */
    int testDay(int place) {
        return testDays[place];
    }

    Ears ears(int place) {
        return EARS[ears[place]];
    }
}
