package org.thresholdregister.intake;

import java.io.IOException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.validity.TestConditions;

/**
 * How the tests of a file set were made, read from the audiograms file a second time, because judging needs none of it.
 * Equal conditions are held once.
 */
public final class ConditionsOfTests {

    private record Test(String workerId, LocalDate date, TestPurpose purpose) {}

    private final Map<Test, TestConditions> conditions = new HashMap<>();
    private final Map<TestConditions, TestConditions> pool = new HashMap<>();

    private ConditionsOfTests() {}

    /** @param intake what the first reading of these files gave */
    public static ConditionsOfTests read(FileSet files, LocalDate asOf, Intake intake)
            throws IOException, UnusableFileException {
        ConditionsOfTests conditions = new ConditionsOfTests();
        SecondReading.of(files, asOf, intake, conditions::add);
        return conditions;
    }

    private void add(AudiogramRow row) {
        TestConditions made = row.conditions();
        if (!made.equals(TestConditions.NOT_ON_RECORD)) {
            conditions.put(
                    new Test(
                            row.workerId(),
                            row.audiogram().date(),
                            row.audiogram().purpose()),
                    pool.computeIfAbsent(made, same -> same));
        }
    }

    public TestConditions of(String workerId, Audiogram test) {
        return conditions.getOrDefault(new Test(workerId, test.date(), test.purpose()), TestConditions.NOT_ON_RECORD);
    }
}
