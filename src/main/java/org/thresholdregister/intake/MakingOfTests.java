package org.thresholdregister.intake;

import java.io.IOException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * Who made the tests of a file set and on what, read from the audiograms file a second time, because judging needs none of
 * it. What is alike is held once.
 */
public final class MakingOfTests {

    /** Texts are empty where nothing is given. */
    public record MadeWith(String tester, String instrument, String transducer) {
        private static final MadeWith NOT_ON_RECORD = new MadeWith("", "", "");

        /** Instrument and headset together, empty where no instrument is named. */
        public String unit() {
            return instrument.isEmpty() || transducer.isEmpty() ? instrument : instrument + " with " + transducer;
        }
    }

    private record Test(String workerId, LocalDate date, TestPurpose purpose) {}

    private final Map<Test, MadeWith> made = new HashMap<>();
    private final Map<MadeWith, MadeWith> pool = new HashMap<>();

    private MakingOfTests() {}

    /** @param intake what the first reading of these files gave */
    public static MakingOfTests read(FileSet files, LocalDate asOf, Intake intake)
            throws IOException, UnusableFileException {
        var making = new MakingOfTests();
        SecondReading.of(files, asOf, intake, making::add);
        return making;
    }

    private void add(AudiogramRow row) {
        var with = new MadeWith(row.tester(), row.instrument(), row.transducer());
        made.put(
                new Test(row.workerId(), row.audiogram().date(), row.audiogram().purpose()),
                pool.computeIfAbsent(with, same -> same));
    }

    public MadeWith of(String workerId, Audiogram test) {
        return made.getOrDefault(new Test(workerId, test.date(), test.purpose()), MadeWith.NOT_ON_RECORD);
    }
}
