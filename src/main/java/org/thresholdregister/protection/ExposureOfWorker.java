package org.thresholdregister.protection;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.NavigableMap;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.thresholdregister.core.attenuation.MeasuredBy;
import org.thresholdregister.core.attenuation.Noise;
import org.thresholdregister.core.attenuation.NoiseBands;
import org.thresholdregister.core.attenuation.OctaveBand;
import org.thresholdregister.core.noise.TimeWeightedAverage;
import org.thresholdregister.exposure.WorkerExposure;

/**
 * The noise that a worker's estimates are made for. The roster gives an average in dBA and does not say how it was
 * measured; a dosimeter is taken for it, whose case of Appendix B is that of any other instrument in dBA.
 */
final class ExposureOfWorker {

    private ExposureOfWorker() {}

    /** @param exposure empty where nothing is known of the worker's noise */
    static Noise of(Optional<WorkerExposure> exposure) {
        return exposure.map(known -> new Noise(
                        measuredBy(known.source()),
                        known.twa().flatMap(ExposureOfWorker::decibels),
                        known.cWeightedDbc(),
                        bands(known.octaveBandsDb())))
                .orElse(new Noise(MeasuredBy.DOSIMETER, Optional.empty(), Optional.empty(), Optional.empty()));
    }

    private static MeasuredBy measuredBy(WorkerExposure.Source source) {
        return switch (source) {
            case WorkerExposure.Source.Roster roster -> MeasuredBy.DOSIMETER;
            case WorkerExposure.Source.Measured measured ->
                switch (measured.kind()) {
                    case PERSONAL_DOSIMETRY -> MeasuredBy.DOSIMETER;
                    case SOUND_LEVEL_METER -> MeasuredBy.SOUND_LEVEL_METER;
                    case AREA_LEVEL -> MeasuredBy.AREA_MONITORING;
                };
        };
    }

    /** To a hundredth of a decibel, as the roster has averages; a dose of next to nothing has none of 0 dBA or more. */
    private static Optional<BigDecimal> decibels(TimeWeightedAverage twa) {
        BigDecimal exact = BigDecimal.valueOf(twa.decibels())
                .setScale(2, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return Optional.of(exact.scale() < 0 ? exact.setScale(0) : exact).filter(level -> level.signum() >= 0);
    }

    /** All seven bands that a method needs, or none. */
    private static Optional<NoiseBands> bands(NavigableMap<Integer, BigDecimal> measured) {
        OctaveBand[] needed = OctaveBand.values();
        return Stream.of(needed).allMatch(band -> measured.containsKey(band.hertz()))
                ? Optional.of(NoiseBands.of(Stream.of(needed)
                        .map(band -> Objects.requireNonNull(measured.get(band.hertz())))
                        .toArray(BigDecimal[]::new)))
                : Optional.empty();
    }
}
