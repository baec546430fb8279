package org.thresholdregister.review;

import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;
import static org.thresholdregister.intake.TestImports.test;

/** Two invented sites with a worker or two each, as files. Today is 9 March 2026. */
final class ServiceFixture {

    static final String ROSTER = """
            worker_id,birth_date,sex,family_name,given_name,end_date,site,department,enrolled_from
            M-1,1990-05-01,F,Núñez,Ada,,Mill,Saws,2020-01-01
            M-2,1990-01-31,M,Orrin,Bela,2025-12-31,Mill,Press,2020-01-01
            Y-1,1990-01-01,F,Quill,Cato,,Yard,Cranes,2020-01-01
            N-1,1990-01-01,M,Rusk,Dara,,,,2025-09-20
            """;

    /**
     * M-1 shows a shift in the right ear on 1 March 2026, whose retest window is open until 31 March; Y-1 showed one on
     * 1 June 2025 that nobody retested.
     */
    static final String AUDIOGRAMS = AUDIOGRAM_COLUMNS
            + test("M-1", "2025-03-02", "baseline", 10, 10)
            + test("M-1", "2026-03-01", "annual", 10, 30)
            + test("M-2", "2025-03-05", "baseline", 10, 10)
            + test("Y-1", "2024-06-01", "baseline", 10, 10)
            + test("Y-1", "2025-06-01", "annual", 40, 10);

    private ServiceFixture() {}
}
