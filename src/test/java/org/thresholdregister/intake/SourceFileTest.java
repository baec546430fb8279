package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SourceFileTest {

    @TempDir
    Path directory;

    @Test
    void aFileOnDiskIsReportedByItsLastName() throws Exception {
        Path path = Files.writeString(directory.resolve("staff.csv"), Csv.ROSTER_HEADER + "1,soon,F\n");
        ProblemList problems = new ProblemList();
        List<RosterRow> rows = new ArrayList<>();
        int read = new RosterReader(Csv.AS_OF, problems).read(SourceFile.of(path), rows::add);
        assertThat(read).isEqualTo(1);
        assertThat(rows).hasSize(1);
        assertThat(problems.inFileOrder()).extracting(RowProblem::file).containsExactly("staff.csv");
    }

    @Test
    void aFileThatIsNotThereIsAnErrorAndNotAnEmptyFile() {
        SourceFile absent = SourceFile.of(directory.resolve("absent.csv"));
        assertThatThrownBy(() -> new RosterReader(Csv.AS_OF, ProblemSink.ignoring()).read(absent, row -> {}))
                .isInstanceOf(NoSuchFileException.class);
    }
}
