package org.thresholdregister.drawing;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;

/**
 * What one drawing shows: a test and, for each ear, the baseline beside it. The two ears may have different baselines,
 * and either may have none. A test that is itself an ear's baseline is shown once, and said to be the baseline.
 *
 * @param latest the test that is looked at, drawn strong
 * @param baselines the test that each ear is compared with, drawn faint
 */
public record AudiogramComparison(Audiogram latest, Map<Ear, Audiogram> baselines) {

    /** The right ear first, as the trade lists them. */
    public static final List<Ear> EARS = List.of(Ear.RIGHT, Ear.LEFT);

    public AudiogramComparison {
        baselines = Map.copyOf(baselines);
    }

    /** A test by itself. */
    public static AudiogramComparison of(Audiogram latest) {
        return new AudiogramComparison(latest, Map.of());
    }

    /** A test beside one baseline for both ears. */
    public static AudiogramComparison of(Audiogram latest, Audiogram baseline) {
        return of(latest).withBaseline(Ear.RIGHT, baseline).withBaseline(Ear.LEFT, baseline);
    }

    public AudiogramComparison withBaseline(Ear ear, Audiogram baseline) {
        Map<Ear, Audiogram> changed = new EnumMap<>(Ear.class);
        changed.putAll(baselines);
        changed.put(ear, baseline);
        return new AudiogramComparison(latest, changed);
    }

    /** Whether the test looked at is this ear's baseline itself. */
    public boolean latestIsBaseline(Ear ear) {
        return Optional.ofNullable(baselines.get(ear)).filter(latest::equals).isPresent();
    }

    /** Every line to be drawn, the right ear first and each ear's latest test before its baseline. */
    List<Trace> traces() {
        return EARS.stream().flatMap(this::traces).toList();
    }

    private Stream<Trace> traces(Ear ear) {
        return Arrays.stream(Series.values())
                .flatMap(series -> test(ear, series).stream().map(test -> new Trace(ear, series, test)));
    }

    /** The test of this series, where the ear has one of its own. */
    public Optional<Audiogram> test(Ear ear, Series series) {
        return switch (series) {
            case LATEST -> Optional.of(latest);
            case BASELINE -> Optional.ofNullable(baselines.get(ear)).filter(baseline -> !baseline.equals(latest));
        };
    }
}
