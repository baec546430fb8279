package org.thresholdregister.intake;

/** Names the lines that contradict a line, the first few of them. */
final class OtherLines {

    private static final int MOST_NAMED = 10;

    private final int line;
    private final StringBuilder names = new StringBuilder();
    private int count;

    OtherLines(int line) {
        this.line = line;
    }

    /** Adds a line, and tells whether more are wanted. */
    boolean add(int other) {
        if (other == line) {
            return true;
        }
        if (count == MOST_NAMED) {
            names.append(" and more");
            return false;
        }
        names.append(count == 0 ? "" : ", ").append(other);
        count++;
        return true;
    }

    @Override
    public String toString() {
        return (count == 1 ? "line " : "lines ") + names;
    }
}
