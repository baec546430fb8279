package org.thresholdregister.core.statistics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** Many questions asked at once: Holm's step-down adjustment (1979). */
public final class Holm {

    private Holm() {}

    /**
     * Each p made as large as the number of questions asks for, so that whatever is still under 5 % stands out among all
     * of them. In the order given; 0 to 1.
     */
    public static List<Double> adjusted(List<Double> ps) {
        int n = ps.size();
        List<Integer> byP = IntStream.range(0, n)
                .boxed()
                .sorted(Comparator.comparing(ps::get))
                .toList();
        List<Double> adjusted = new ArrayList<>(Collections.nCopies(n, 0.0));
        double largest = 0;
        for (int rank = 0; rank < n; rank++) {
            int place = byP.get(rank);
            largest = Math.max(largest, Math.min(1, (n - rank) * ps.get(place)));
            adjusted.set(place, largest);
        }
        return List.copyOf(adjusted);
    }
}
