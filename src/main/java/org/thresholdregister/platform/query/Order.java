package org.thresholdregister.platform.query;

/** The column that a list is ordered by, and the direction. */
public record Order<C extends Enum<C>>(C column, boolean descending) {

    public static <C extends Enum<C>> Order<C> ascending(C column) {
        return new Order<>(column, false);
    }

    public static <C extends Enum<C>> Order<C> descending(C column) {
        return new Order<>(column, true);
    }
}
