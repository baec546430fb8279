package org.thresholdregister.protection;

import java.math.BigDecimal;
import java.util.Optional;
import org.thresholdregister.core.attenuation.MeasuredBy;
import org.thresholdregister.core.attenuation.Noise;

/**
 * The noise that a worker's estimates are made for. The roster gives an average in dBA and does not say how it was
 * measured; a dosimeter is taken for it, whose case of Appendix B is that of any other instrument in dBA.
 */
final class ExposureOfWorker {

    private ExposureOfWorker() {}

    /** @param twaDba as the roster gives it */
    static Noise of(Optional<BigDecimal> twaDba) {
        return new Noise(MeasuredBy.DOSIMETER, twaDba, Optional.empty(), Optional.empty());
    }
}
