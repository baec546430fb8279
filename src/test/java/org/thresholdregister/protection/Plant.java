package org.thresholdregister.protection;

import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;
import static org.thresholdregister.intake.TestImports.test;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import org.thresholdregister.core.attenuation.LabelValues;
import org.thresholdregister.core.attenuation.ProtectorKind;
import org.thresholdregister.core.training.TrainingTopic;

/** Two invented sites on 9 March 2026. */
public final class Plant {

    public static final LocalDate TODAY = LocalDate.of(2026, 3, 9);

    /**
     * M-1 shifted on the left on 1 June 2025, at 92.5 dBA; M-2 is at 86 dBA with a baseline, M-3 without one and enrolled
     * long ago; Y-1 works at the other site.
     */
    public static final String ROSTER = """
            worker_id,birth_date,sex,family_name,given_name,site,department,twa_dba,enrolled_from
            M-1,1990-05-01,F,Núñez,Ada,Mill,Saws,92.5,2020-01-01
            M-2,1990-01-31,M,Orrin,Bela,Mill,Press,86,2026-03-01
            M-3,1991-01-31,M,Pell,Cora,Mill,Press,88,2025-01-01
            M-4,1991-01-31,M,Quist,Dov,Mill,Press,82,
            Y-1,1990-01-01,F,Quill,Cato,Yard,Cranes,97,2020-01-01
            """;

    public static final String AUDIOGRAMS = AUDIOGRAM_COLUMNS
            + test("M-1", "2024-06-01", "baseline", 10, 10)
            + test("M-1", "2025-06-01", "annual", 40, 10)
            + test("M-2", "2025-03-05", "baseline", 10, 10)
            + test("Y-1", "2024-06-01", "baseline", 10, 10);

    private Plant() {}

    public static ProductDetails product(String site, String name, ProtectorKind kind, int nrr) {
        return new ProductDetails(site, name, kind, "S, M, L", LabelValues.ofNrr(nrr), Optional.empty());
    }

    public static NewIssue issue(long product, String size) {
        return new NewIssue(product, size, TODAY.minusDays(1), Optional.empty(), "");
    }

    public static NewFitTest fitTest(long product, String size, int par) {
        return new NewFitTest(product, size, TODAY.minusDays(2), BigDecimal.valueOf(par), 84, "microphone", "A. Vale");
    }

    public static NewSession session(LocalDate day) {
        return new NewSession("Mill", day, EnumSet.allOf(TrainingTopic.class), "A. Vale", "en", 45, "slides", false);
    }
}
