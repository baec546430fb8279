package org.thresholdregister.exposure;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.TreeMap;
import org.thresholdregister.core.noise.NoiseResult;
import org.thresholdregister.core.noise.TimeWeightedAverage;

/** Invented measurements, and a roster of two sites for them. */
public final class Measurements {

    /** M-1 and M-2 belong to the noise group Saws, M-1 alone is in the programme; Y-1 works at the other site. */
    public static final String ROSTER = """
            worker_id,birth_date,sex,family_name,given_name,site,job_title,noise_group,hire_date,twa_dba,enrolled_from
            M-1,1990-05-01,F,Núñez,Ada,Mill,Sawyer,Saws,2020-01-01,92.5,2020-01-01
            M-2,1990-01-31,M,Orrin,Bela,Mill,Feeder,Saws,2026-02-01,,
            M-3,1991-01-31,M,Pell,Cora,Mill,Clerk,,2020-01-01,,
            Y-1,1990-01-01,F,Quill,Cato,Yard,Rigger,Cranes,2020-01-01,97,2020-01-01
            """;

    private Measurements() {}

    public static NewMeasurement group(String site, String name, LocalDate day, double dba) {
        return of(new NoiseSubject(NoiseSubject.Kind.GROUP, site, name), day, dba);
    }

    public static NewMeasurement of(NoiseSubject subject, LocalDate day, double dba) {
        return new NewMeasurement(
                subject,
                day,
                MeasurementKind.PERSONAL_DOSIMETRY,
                "Hollow 7, no. 12",
                true,
                true,
                BigDecimal.valueOf(8),
                new NoiseResult.Average(TimeWeightedAverage.ofDba(dba)),
                Optional.empty(),
                new TreeMap<>(),
                Optional.empty(),
                "all saws",
                "A. Vale");
    }
}
