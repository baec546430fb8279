package org.thresholdregister.core.columnar;

import static org.thresholdregister.core.columnar.Population.NO_DAY;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;
import org.thresholdregister.core.aging.Sex;
import org.thresholdregister.core.judging.WorkerFacts;

/** What the rules need to know of many workers, in plain arrays: about 25 bytes a worker and the id. */
final class WorkerColumns {

    static final byte NO_SEX = -1;

    private static final Sex[] SEXES = Sex.values();

    private int size;
    private byte[] idBytes = new byte[1024];
    /** Where each worker's id begins, and the last one's ends. */
    private int[] idStarts = new int[129];

    private int[] birthDays = new int[128];
    private byte[] sexes = new byte[128];
    private int[] enrolledFrom = new int[128];
    private int[] endDays = new int[128];

    int size() {
        return size;
    }

    /** Adds a worker of whom nothing but the id is known, and gives the worker's number. */
    int add(byte[] text, int from, int to) {
        if (size == sexes.length) {
            resize(size + (size >> 1));
        }
        int start = idStarts[size];
        int end = Math.addExact(start, to - from);
        if (end > idBytes.length) {
            idBytes = Arrays.copyOf(idBytes, Math.max(end, idBytes.length + (idBytes.length >> 1)));
        }
        System.arraycopy(text, from, idBytes, start, to - from);
        idStarts[size + 1] = end;
        birthDays[size] = NO_DAY;
        sexes[size] = NO_SEX;
        enrolledFrom[size] = NO_DAY;
        endDays[size] = NO_DAY;
        return size++;
    }

    private void resize(int capacity) {
        idStarts = Arrays.copyOf(idStarts, capacity + 1);
        birthDays = Arrays.copyOf(birthDays, capacity);
        sexes = Arrays.copyOf(sexes, capacity);
        enrolledFrom = Arrays.copyOf(enrolledFrom, capacity);
        endDays = Arrays.copyOf(endDays, capacity);
    }

    /** These workers in this order, in arrays without slack. */
    WorkerColumns inOrder(int[] order) {
        WorkerColumns sorted = new WorkerColumns();
        sorted.resize(order.length);
        int idLength = 0;
        for (int worker : order) {
            idLength += idLength(worker);
        }
        sorted.idBytes = new byte[idLength];
        for (int worker : order) {
            int copy = sorted.add(idBytes, idStarts[worker], idStarts[worker + 1]);
            sorted.birthDays[copy] = birthDays[worker];
            sorted.sexes[copy] = sexes[worker];
            sorted.enrolledFrom[copy] = enrolledFrom[worker];
            sorted.endDays[copy] = endDays[worker];
        }
        return sorted;
    }

    /** By Unicode code points, which is the order of the bytes in UTF-8. */
    int compareIds(int worker, int other) {
        return Arrays.compareUnsigned(
                idBytes, idStarts[worker], idStarts[worker + 1], idBytes, idStarts[other], idStarts[other + 1]);
    }

    boolean hasId(int worker, byte[] text, int from, int to) {
        return Arrays.equals(idBytes, idStarts[worker], idStarts[worker + 1], text, from, to);
    }

    boolean haveSameId(int worker, int other) {
        return hasId(worker, idBytes, idStarts[other], idStarts[other + 1]);
    }

    int idHash(int worker) {
        return hash(idBytes, idStarts[worker], idStarts[worker + 1]);
    }

    static int hash(byte[] text, int from, int to) {
        int hash = 1;
        for (int i = from; i < to; i++) {
            hash = 31 * hash + text[i];
        }
        return hash ^ hash >>> 15;
    }

    String id(int worker) {
        return new String(idBytes, idStarts[worker], idLength(worker), StandardCharsets.UTF_8);
    }

    int idLength(int worker) {
        return idStarts[worker + 1] - idStarts[worker];
    }

    int copyId(int worker, byte[] into, int at) {
        System.arraycopy(idBytes, idStarts[worker], into, at, idLength(worker));
        return at + idLength(worker);
    }

    void setBirthDay(int worker, int day) {
        birthDays[worker] = day;
    }

    void setSex(int worker, Sex sex) {
        sexes[worker] = (byte) sex.ordinal();
    }

    void setEnrolledFrom(int worker, int day) {
        enrolledFrom[worker] = day;
    }

    void setEndDay(int worker, int day) {
        endDays[worker] = day;
    }

    int birthDay(int worker) {
        return birthDays[worker];
    }

    /** The ordinal of the sex, or {@link #NO_SEX}. */
    byte sex(int worker) {
        return sexes[worker];
    }

    int enrolledFrom(int worker) {
        return enrolledFrom[worker];
    }

    int endDay(int worker) {
        return endDays[worker];
    }

    WorkerFacts facts(int worker) {
        return new WorkerFacts(
                id(worker),
                date(birthDays[worker]),
                sexes[worker] == NO_SEX ? Optional.empty() : Optional.of(SEXES[sexes[worker]]),
                date(enrolledFrom[worker]),
                date(endDays[worker]));
    }

    private static Optional<LocalDate> date(int day) {
        return day == NO_DAY ? Optional.empty() : Optional.of(LocalDate.ofEpochDay(day));
    }
}
