package org.thresholdregister.intake;

/** The fingerprint of a row's cells: FNV-1a over UTF-16 units, with a value that no unit has at the end of each cell. */
final class RowHash {

    static final long START = 0xcbf29ce484222325L;

    private static final long PRIME = 0x100000001b3L;
    private static final int END_OF_CELL = 0x10000;

    private RowHash() {}

    static long withUnit(long hash, int unit) {
        return (hash ^ unit) * PRIME;
    }

    static long withEndOfCell(long hash) {
        return (hash ^ END_OF_CELL) * PRIME;
    }
}
