package org.thresholdregister.core.watch;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Frequency;

/**
 * One thing that is watched: the mean over some frequencies of some ears. A fault of the headset as a whole shows soonest
 * in a wide mean, a fault at one frequency of one earphone in that one alone.
 *
 * @param ears one or both
 * @param frequencies one or more
 */
public record Channel(List<Ear> ears, List<Frequency> frequencies) {

    private static final List<Ear> BOTH = List.of(Ear.LEFT, Ear.RIGHT);
    private static final List<Frequency> HIGH = List.of(Frequency.HZ_3000, Frequency.HZ_4000, Frequency.HZ_6000);

    /** Everything that is watched: all of it, each ear, the high frequencies, and each frequency of each ear. */
    static final List<Channel> ALL = all();

    private static List<Channel> all() {
        List<Frequency> everything = List.of(Frequency.values());
        List<Channel> channels = new ArrayList<>();
        channels.add(new Channel(BOTH, everything));
        channels.add(new Channel(BOTH, HIGH));
        for (Ear ear : Ear.values()) {
            channels.add(new Channel(List.of(ear), everything));
            channels.add(new Channel(List.of(ear), HIGH));
        }
        for (Ear ear : Ear.values()) {
            for (Frequency frequency : Frequency.values()) {
                channels.add(new Channel(List.of(ear), List.of(frequency)));
            }
        }
        return List.copyOf(channels);
    }

    /** A mean over less than half of its thresholds is another thing than the whole. */
    OptionalDouble mean(double[][] ofEachThreshold) {
        double sum = 0;
        int known = 0;
        for (Ear ear : ears) {
            for (Frequency frequency : frequencies) {
                double value = ofEachThreshold[ear.ordinal()][frequency.ordinal()];
                if (!Double.isNaN(value)) {
                    sum += value;
                    known++;
                }
            }
        }
        return known > 0 && 2 * known >= ears.size() * frequencies.size()
                ? OptionalDouble.of(sum / known)
                : OptionalDouble.empty();
    }
}
