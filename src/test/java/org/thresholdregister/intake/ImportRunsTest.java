package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;
import static org.thresholdregister.intake.TestImports.test;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.system.CapturedOutput;
import org.springframework.boot.test.system.OutputCaptureExtension;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.ImportRun.State;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;

@RegisterTest
@ExtendWith(OutputCaptureExtension.class)
class ImportRunsTest {

    private static final String ROSTER = "worker_id,birth_date,sex,family_name\nW-1,1980-05-01,F,Testperson\n";
    private static final String AUDIOGRAMS = AUDIOGRAM_COLUMNS + test("W-1", "2025-02-01", "baseline", 10, 10);

    @Autowired
    private ImportRuns runs;

    @Autowired
    private ImportService imports;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @AfterEach
    void nothingIsLeftRunning() {
        SignIn.as(Role.NURSE);
        runs.dismiss();
        assertThat(runs.current()).isEmpty();
    }

    private static ImportRun ended(ImportRun run) {
        Awaitility.await().atMost(Duration.ofSeconds(60)).until(() -> !run.isRunning());
        return run;
    }

    private int workers() {
        return jdbc.queryForList("select id from worker").size();
    }

    @Test
    void anImportGoesOnInTheBackgroundAndItsResultWaits() {
        SignIn.as(Role.NURSE);
        ImportRun run = ended(runs.start(files.preview(ROSTER, AUDIOGRAMS, "")));

        assertThat(run.state())
                .isEqualTo(new State.Ended(new ImportResult.Stored(new ImportCounts(1, 0, 0, 1, 0, 0, 0, 0))));
        assertThat(runs.current()).contains(run);
        assertThat(workers()).isEqualTo(1);
        assertThat(jdbc.queryForList("select actor from audit_event where action = 'FILES_IMPORTED'"))
                .containsExactly(Map.of("actor", "test-nurse"));
        runs.dismiss();
        assertThat(runs.current()).isEmpty();
    }

    @Test
    void signingOutInBetweenDoesNotStopIt() {
        SignIn.as(Role.NURSE);
        ImportPreview preview = files.preview(ROSTER, AUDIOGRAMS, "");
        ImportRun run = runs.start(preview);
        SecurityContextHolder.getContext().setAuthentication(null);

        assertThat(ended(run).state()).isInstanceOf(State.Ended.class);
        assertThat(workers()).isEqualTo(1);
    }

    @Test
    void onceStoppedNothingIsStored() {
        SignIn.as(Role.NURSE);
        StringBuilder roster = new StringBuilder("worker_id,birth_date,sex\n");
        for (int i = 0; i < 3000; i++) {
            roster.append("W-").append(i).append(",,\n");
        }
        ImportRun run = runs.start(files.preview(roster.toString(), "", ""));
        run.stop();

        assertThat(ended(run).state()).isEqualTo(new State.Ended(new ImportResult.Cancelled()));
        assertThat(workers()).isZero();
        assertThat(imports.confirm(run.preview().token(), ImportProgress.unwatched()))
                .isEqualTo(new ImportResult.Expired());
    }

    @Test
    void whatNobodyExpectedIsKeptForTheScreenAndLoggedWithoutItsMessage(CapturedOutput output) {
        SignIn.as(Role.NURSE);
        jdbc.execute("alter table worker add constraint nobody_of_this_name check (family_name <> 'Testperson')");
        try {
            ImportRun run = ended(runs.start(files.preview(ROSTER, "", "")));

            assertThat(run.state()).isInstanceOf(State.Failed.class);
            assertThat(workers()).isZero();
            assertThat(output.getAll())
                    .contains("an import failed and nothing was stored")
                    .doesNotContain("Testperson");
        } finally {
            jdbc.execute("alter table worker drop constraint nobody_of_this_name");
        }
    }

    @Test
    void anotherUserSeesNothingOfIt() {
        SignIn.as(Role.NURSE);
        ended(runs.start(files.preview(ROSTER, "", "")));

        SignIn.as("someone-else", Role.NURSE, SiteScope.all());
        assertThat(runs.current()).isEmpty();
    }

    @Test
    void aPlantManagerStartsNothing() {
        SignIn.as(Role.NURSE);
        ImportPreview preview = files.preview(ROSTER, "", "");
        SignIn.as(Role.PLANT_MANAGER);

        assertThatThrownBy(() -> runs.start(preview)).isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> runs.current()).isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> runs.dismiss()).isInstanceOf(AccessDeniedException.class);
        assertThatThrownBy(() -> imports.problemsToTakeOut(preview)).isInstanceOf(AccessDeniedException.class);
    }

    @Test
    void takingProblemsOutIsOnTheAuditTrailWithoutWhatTheyQuote() {
        SignIn.as(Role.NURSE);
        ImportPreview preview = files.preview("worker_id,birth_date,sex\nW-1,Testperson,F\n,1980-01-01,F\n", "", "");

        List<RowProblem> problems = imports.problemsToTakeOut(preview);

        assertThat(problems).hasSize(2);
        assertThat(preview.rowsLeftOut(Table.ROSTER)).isEqualTo(1);
        assertThat(preview.rowsLeftOut(Table.AUDIOGRAMS)).isZero();
        assertThat(jdbc.queryForList("select actor, detail from audit_event where action = 'PROBLEMS_DOWNLOADED'"))
                .containsExactly(Map.of("actor", "test-nurse", "detail", "2 problems of rows"));
    }
}
