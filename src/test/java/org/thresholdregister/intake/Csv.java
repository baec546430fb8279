package org.thresholdregister.intake;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;

/** Small files of invented people, and readings of them. */
final class Csv {

    static final LocalDate AS_OF = LocalDate.of(2026, 6, 30);
    static final String ROSTER_HEADER = "worker_id,birth_date,sex\n";
    static final String AUDIOGRAM_HEADER = "worker_id,test_date,purpose,"
            + "left_500,left_1000,left_2000,left_3000,left_4000,left_6000,left_8000,"
            + "right_500,right_1000,right_2000,right_3000,right_4000,right_6000,right_8000\n";
    static final String DECISION_HEADER = "worker_id,ear,test_date,kind,date,by,reason\n";
    static final String LEVELS = ",5,5,10,15,20,25,30,0,5,10,10,15,20,20";

    /** What one reading gave. */
    record Reading(Intake intake, List<RowProblem> problems) {

        /** The problems as {@code line column kind effect}. */
        List<String> briefly() {
            return problems.stream().map(Csv::briefly).toList();
        }
    }

    private Csv() {}

    static String briefly(RowProblem problem) {
        return problem.line() + " " + (problem.column().isEmpty() ? "-" : problem.column()) + " " + problem.kind() + " "
                + problem.effect();
    }

    static SourceFile file(String name, String text) {
        return SourceFile.of(name, text.getBytes(StandardCharsets.UTF_8));
    }

    static Reading read(FileSet files) throws IOException, UnusableFileException {
        return read(files, ExistingRecords.none());
    }

    static Reading read(FileSet files, ExistingRecords existing) throws IOException, UnusableFileException {
        ProblemList problems = new ProblemList();
        Intake intake = Intake.read(files, AS_OF, existing, problems);
        return new Reading(intake, problems.inFileOrder());
    }

    static Reading read(String roster, String audiograms) throws IOException, UnusableFileException {
        return read(FileSet.of(file("roster.csv", roster), file("audiograms.csv", audiograms)));
    }

    static Reading read(String roster, String audiograms, String decisions) throws IOException, UnusableFileException {
        return read(FileSet.of(file("roster.csv", roster), file("audiograms.csv", audiograms))
                .withDecisions(file("decisions.csv", decisions)));
    }
}
