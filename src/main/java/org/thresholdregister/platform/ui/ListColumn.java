package org.thresholdregister.platform.ui;

import com.vaadin.flow.function.SerializableFunction;
import java.io.Serializable;
import java.util.Optional;

/**
 * One column of a list, for a table, a grid and the cards that either becomes in a narrow window.
 *
 * @param header heading, with the unit where there is one; empty over things to do
 * @param sort what clicking the heading orders by, where the list can be ordered by it
 * @param weight width beside the other columns
 */
public record ListColumn<T, C extends Enum<C>>(
        String header, Optional<C> sort, int weight, SerializableFunction<T, ListCell> cell) implements Serializable {

    public static <T, C extends Enum<C>> ListColumn<T, C> of(
            String header, C sort, int weight, SerializableFunction<T, ListCell> cell) {
        return new ListColumn<T, C>(header, Optional.of(sort), weight, cell);
    }

    /** A column that the list cannot be ordered by. */
    public static <T, C extends Enum<C>> ListColumn<T, C> unordered(
            String header, int weight, SerializableFunction<T, ListCell> cell) {
        return new ListColumn<T, C>(header, Optional.empty(), weight, cell);
    }
}
