package org.thresholdregister.core.audiometry;

import java.util.function.Function;

/** Something that each ear has one of. */
public record PerEar<T>(T left, T right) {

    public static <T> PerEar<T> from(Function<Ear, T> maker) {
        return new PerEar<>(maker.apply(Ear.LEFT), maker.apply(Ear.RIGHT));
    }

    public T of(Ear ear) {
        return ear == Ear.LEFT ? left : right;
    }
}
