package org.thresholdregister.intake;

import java.io.IOException;
import java.time.LocalDate;
import java.util.function.Consumer;

/** Goes through the audiograms file of a file set once more, for what judging needs none of. */
final class SecondReading {

    private SecondReading() {}

    /**
     * Hands over the rows that the first reading kept; it has told the problems already.
     *
     * @param intake what the first reading of these files gave
     */
    static void of(FileSet files, LocalDate asOf, Intake intake, Consumer<AudiogramRow> row)
            throws IOException, UnusableFileException {
        if (files.audiograms().isPresent()) {
            new AudiogramReader(asOf, intake.known(ExistingRecords.none()), ProblemSink.ignoring())
                    .read(files.audiograms().get(), read -> {
                        if (intake.keeps(Table.AUDIOGRAMS, read.line())) {
                            row.accept(read);
                        }
                    });
        }
    }
}
