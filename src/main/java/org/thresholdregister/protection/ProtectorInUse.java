package org.thresholdregister.protection;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.attenuation.Attenuation;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.Estimate;
import org.thresholdregister.core.attenuation.Noise;

/**
 * A protector that a worker has, and what it leaves of the worker's noise.
 *
 * @param fitTest the latest of this protector and this worker
 * @param estimates by every method
 * @param chosen by the fit test of this protector in this size, where there is one, else by the method that the site's
 *     employer picked; empty where there is neither
 */
public record ProtectorInUse(
        Issue issue, Optional<FitTest> fitTest, List<Estimate> estimates, Optional<Estimate> chosen) {

    /**
     * What an issued protector leaves of a noise.
     *
     * @param fitTests of the worker, the latest first
     * @param method what the site's employer picked
     */
    static ProtectorInUse of(Issue issue, Noise noise, List<FitTest> fitTests, Optional<AttenuationMethod> method) {
        Optional<FitTest> fitTest = fitTests.stream()
                .filter(FitTest::counts)
                .filter(test -> test.product().key() == issue.product().key())
                .filter(test ->
                        test.details().size().equalsIgnoreCase(issue.details().size()))
                .findFirst();
        Optional<BigDecimal> personal = fitTest.map(test -> test.details().par());
        return new ProtectorInUse(
                issue,
                fitTest,
                Attenuation.byEveryMethod(issue.product().worn(), noise, personal),
                fitTest.<AttenuationMethod>map(test -> new AttenuationMethod.PersonalFit())
                        .or(() -> method)
                        .map(some -> Attenuation.estimate(some, issue.product().worn(), noise, personal)));
    }
}
