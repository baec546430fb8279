package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.groups.Tuple.tuple;
import static org.thresholdregister.intake.TestImports.AUDIOGRAM_COLUMNS;
import static org.thresholdregister.intake.TestImports.test;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hibernate.exception.ConstraintViolationException;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.ImportProgress.Phase;
import org.thresholdregister.intake.WorkerChange.Field;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.platform.storage.RegisterProperties;

@RegisterTest
class ImportServiceTest {

    private static final String ROSTER = """
            worker_id,birth_date,sex,family_name,given_name,end_date,site,department,twa_dba,email
            0042,1980-05-01,F,Núñez,Ada,,Mill,Saws,88.50,ada@mill.example
            0043,1975-01-31,M,Orrin,Bela,2025-12-31,Mill,Saws,90,
            0044,,,Quill,Cato,,Yard,Cranes,,
            """;
    private static final String AUDIOGRAMS = AUDIOGRAM_COLUMNS
            + test("0042", "2024-02-01", "baseline", 10, 10)
            + test("0042", "2025-02-01", "annual", 10, 25)
            + test("0043", "2024-03-01", "baseline", 15, 15)
            + test("0044", "2024-04-01", "baseline", 20, 20);
    private static final String DECISIONS = """
            worker_id,ear,test_date,kind,date,by,reason
            0042,right,2025-02-01,notice-given,2025-02-20,the nurse,
            """;

    @Autowired
    private ImportService imports;

    @Autowired
    private TestImports files;

    @Autowired
    private JdbcTemplate jdbc;

    @Autowired
    private RegisterProperties properties;

    /** All that the register holds, by table. */
    private Map<String, List<Map<String, Object>>> register() {
        Map<String, List<Map<String, Object>>> tables = new LinkedHashMap<>();
        for (String table : List.of(
                "worker",
                "audiogram",
                "decision",
                "determination",
                "follow_up",
                "worker_judgement",
                "import_batch",
                "import_batch_file",
                "audit_event")) {
            tables.put(table, jdbc.queryForList("select * from " + table + " order by 1, 2"));
        }
        return tables;
    }

    private int count(String table) {
        return jdbc.queryForList("select * from " + table).size();
    }

    @Test
    void theFirstImportStoresAllRows() {
        SignIn.as(Role.SAFETY_OFFICER);

        ImportCounts counts = files.store(ROSTER, AUDIOGRAMS, DECISIONS);

        assertThat(counts).isEqualTo(new ImportCounts(3, 0, 0, 4, 0, 1, 0, 0));
        assertThat(count("worker")).isEqualTo(3);
        assertThat(count("audiogram")).isEqualTo(4);
        assertThat(count("decision")).isEqualTo(1);
        assertThat(jdbc.queryForList("select outcome from determination where ear = 'right' and purpose = 'annual'"))
                .extracting(row -> row.get("outcome"))
                .containsExactly("confirmed");
        assertThat(jdbc.queryForList("select actor, action, subject_type from audit_event"))
                .containsExactly(
                        Map.of("actor", "test-safety_officer", "action", "FILES_IMPORTED", "subject_type", "import"));
        assertThat(jdbc.queryForList("select name from import_batch_file order by name"))
                .extracting(row -> row.get("name"))
                .containsExactly("audiograms.csv", "decisions.csv", "roster.csv");
    }

    @Test
    void theSameFilesAgainChangeNothing() {
        SignIn.as(Role.SAFETY_OFFICER);
        files.store(ROSTER, AUDIOGRAMS, DECISIONS);
        var before = register();

        ImportCounts counts = files.store(ROSTER, AUDIOGRAMS, DECISIONS);

        assertThat(counts).isEqualTo(new ImportCounts(0, 0, 3, 0, 4, 0, 1, 0));
        assertThat(counts.changeNothing()).isTrue();
        assertThat(register()).isEqualTo(before);
    }

    @Test
    void aPreviewStoresNothing() {
        SignIn.as(Role.NURSE);
        var before = register();

        ImportPreview preview = files.preview(ROSTER, AUDIOGRAMS, "");

        assertThat(preview.counts()).isEqualTo(new ImportCounts(3, 0, 0, 4, 0, 0, 0, 0));
        assertThat(register()).isEqualTo(before);
    }

    @Test
    void aFailureInTheMiddleStoresNothingAtAll() {
        SignIn.as(Role.NURSE);
        jdbc.execute("alter table follow_up add constraint never_an_annual_test check (kind <> 'annual-test')");
        try {
            ImportPreview preview = files.preview(ROSTER, AUDIOGRAMS, "");
            var before = register();
            List<Phase> phases = new ArrayList<>();

            assertThatThrownBy(() -> imports.confirm(preview.token(), recording(phases)))
                    .isInstanceOf(ConstraintViolationException.class);

            assertThat(phases).contains(Phase.STORING_WORKERS, Phase.STORING_TESTS, Phase.JUDGING);
            assertThat(register()).isEqualTo(before);
        } finally {
            jdbc.execute("alter table follow_up drop constraint never_an_annual_test");
        }
    }

    @Test
    void anImportThatIsStoppedWhileJudgingStoresNothing() {
        SignIn.as(Role.NURSE);
        ImportPreview preview = files.preview(ROSTER, AUDIOGRAMS, "");
        var before = register();
        List<Phase> phases = new ArrayList<>();

        ImportResult result = imports.confirm(preview.token(), new ImportProgress() {
            @Override
            public void report(Phase phase, int done, int total) {
                phases.add(phase);
            }

            @Override
            public boolean isCancelled() {
                return phases.contains(Phase.JUDGING);
            }
        });

        assertThat(result).isEqualTo(new ImportResult.Cancelled());
        assertThat(phases).endsWith(Phase.JUDGING);
        assertThat(register()).isEqualTo(before);
    }

    private static ImportProgress recording(List<Phase> phases) {
        return new ImportProgress() {
            @Override
            public void report(Phase phase, int done, int total) {
                phases.add(phase);
            }

            @Override
            public boolean isCancelled() {
                return false;
            }
        };
    }

    @Test
    void testsOfWorkersOnRecordNeedNoRosterFile() {
        SignIn.as(Role.NURSE);
        files.store(ROSTER, "", "");

        ImportCounts counts = files.store("", AUDIOGRAMS, "");

        assertThat(counts).isEqualTo(new ImportCounts(0, 0, 0, 4, 0, 0, 0, 0));
    }

    @Test
    void aTestThatDiffersFromTheOneOnRecordIsRefused() {
        SignIn.as(Role.NURSE);
        files.store(ROSTER, AUDIOGRAMS, "");
        String differing = AUDIOGRAM_COLUMNS
                + test("0042", "2025-02-01", "annual", 10, 30)
                + test("0043", "2025-03-01", "annual", 15, 15);

        ImportPreview preview = files.preview("", differing, "");

        assertThat(preview.counts()).isEqualTo(new ImportCounts(0, 0, 0, 1, 0, 0, 0, 1));
        assertThat(preview.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.line()).isEqualTo(2);
            assertThat(problem.kind()).isEqualTo(ProblemKind.DIFFERS_FROM_TEST_ON_RECORD);
            assertThat(problem.effect()).isEqualTo(Effect.ROW_LEFT_OUT);
            assertThat(problem.problem())
                    .contains("right_500, right_1000, right_2000")
                    .doesNotContain("left_");
        });
    }

    @Test
    void aChangedWorkerIsShownFieldByFieldAndStored() {
        SignIn.as(Role.NURSE);
        files.store(ROSTER, AUDIOGRAMS, "");
        String changed = """
                worker_id,birth_date,sex,family_name,given_name,end_date,site,department,twa_dba,email
                0042,1980-05-01,F,Núñez,Ada,,Mill,Press,88.5,
                """;

        ImportPreview preview = files.preview(changed, "", "");

        assertThat(preview.changes())
                .containsExactly(
                        new WorkerChange("0042", List.of(new Field(RosterColumn.DEPARTMENT, "Saws", "Press"))));
        imports.confirm(preview.token(), ImportProgress.unwatched());
        assertThat(jdbc.queryForMap("select department, email from worker where worker_id = '0042'"))
                .isEqualTo(Map.of("department", "Press", "email", "ada@mill.example"));
        assertThat(count("worker"))
                .as("workers that are not on the new roster stay")
                .isEqualTo(3);
        assertThat(jdbc.queryForList("select subject_id, detail from audit_event where action = 'WORKER_CHANGED'"))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.get("subject_id")).isEqualTo("0042");
                    assertThat(row.get("detail").toString()).endsWith(": department");
                });
    }

    @Test
    void onlyABlankEndDateTakesAFactAway() {
        SignIn.as(Role.NURSE);
        files.store(ROSTER, "", "");
        String blank = """
                worker_id,birth_date,sex,family_name,given_name,end_date,site,department,twa_dba,email
                0043,,,,,,,,,
                """;
        String unreadable = """
                worker_id,birth_date,sex,end_date
                0043,,,soon
                """;
        String withoutColumn = """
                worker_id,birth_date,sex
                0043,,
                """;

        assertThat(files.preview(unreadable, "", "").changes()).isEmpty();
        assertThat(files.preview(withoutColumn, "", "").changes()).isEmpty();
        assertThat(files.preview(blank, "", "").changes())
                .containsExactly(new WorkerChange("0043", List.of(new Field(RosterColumn.END_DATE, "2025-12-31", ""))));
    }

    @Test
    void filesThatWouldNowDoSomethingElseMustBeLookedAtAgain() {
        SignIn.as(Role.NURSE);
        ImportPreview preview = files.preview(ROSTER, AUDIOGRAMS, "");
        files.store(ROSTER, "", "");
        var before = register();

        ImportResult result = imports.confirm(preview.token(), ImportProgress.unwatched());

        assertThat(result)
                .isInstanceOfSatisfying(
                        ImportResult.RegisterChanged.class,
                        changed -> assertThat(changed.preview().counts())
                                .isEqualTo(new ImportCounts(0, 0, 3, 4, 0, 0, 0, 0)));
        assertThat(register()).isEqualTo(before);
        assertThat(imports.confirm(preview.token(), ImportProgress.unwatched()))
                .isEqualTo(new ImportResult.Stored(new ImportCounts(0, 0, 3, 4, 0, 0, 0, 0)));
    }

    @Test
    void aPreviewIsConfirmedOnceAndOnlyByWhoeverMadeIt() {
        SignIn.as("first-nurse", Role.NURSE, SiteScope.all());
        ImportPreview preview = files.preview(ROSTER, "", "");

        SignIn.as("second-nurse", Role.NURSE, SiteScope.all());
        assertThat(imports.confirm(preview.token(), ImportProgress.unwatched())).isEqualTo(new ImportResult.Expired());
        assertThatThrownBy(() -> imports.preview(preview.files())).isInstanceOf(IllegalArgumentException.class);
        assertThat(count("worker")).isZero();

        SignIn.as("first-nurse", Role.NURSE, SiteScope.all());
        assertThat(imports.confirm(preview.token(), ImportProgress.unwatched()))
                .isInstanceOf(ImportResult.Stored.class);
        assertThat(imports.confirm(preview.token(), ImportProgress.unwatched())).isEqualTo(new ImportResult.Expired());
    }

    @Test
    void handedOverFilesAreGoneOnceStoredOrGivenUp() throws IOException {
        SignIn.as(Role.NURSE);
        Path folder = properties.data().resolve("uploads");
        try (var kept = Files.list(folder)) {
            for (Path file : kept.toList()) {
                Files.delete(file);
            }
        }
        UploadedFile givenUp = files.keep(Table.ROSTER, ROSTER);
        assertThat(folder.resolve(givenUp.id())).exists();

        imports.giveUp(List.of(givenUp));
        files.store(ROSTER, AUDIOGRAMS, "");

        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aFileWithoutARequiredColumnIsUnusable() {
        SignIn.as(Role.NURSE);
        UploadedFile roster = files.keep(Table.ROSTER, "worker_id,sex\n1,F\n");

        assertThat(imports.preview(List.of(roster)))
                .isEqualTo(new PreviewResult.Unusable("roster.csv has no column birth_date, which is required."));
    }

    @Test
    void problemsOfTheReaderAreInThePreview() {
        SignIn.as(Role.NURSE);
        String audiograms = AUDIOGRAM_COLUMNS
                + test("9999", "2024-02-01", "baseline", 10, 10)
                + test("0042", "2024-02-01", "baseline", 10, 130);

        ImportPreview preview = files.preview(ROSTER, audiograms, "");

        assertThat(preview.counts().newTests()).isEqualTo(1);
        assertThat(preview.counts().rowsLeftOut()).isEqualTo(1);
        assertThat(preview.problems())
                .extracting(RowProblem::line, RowProblem::kind)
                .startsWith(tuple(2, ProblemKind.UNKNOWN_WORKER))
                .hasSize(8);
    }

    @Test
    void aTextTooLongToKeepLeavesItsRowOutAndTheWorkersTestsWithIt() {
        SignIn.as(Role.NURSE);
        String roster = "worker_id,birth_date,sex,job_title\n0042,,,%s\n0043,,,%s\n"
                .formatted("x".repeat(201), "y".repeat(200));
        String audiograms = AUDIOGRAM_COLUMNS
                + test("0042", "2024-02-01", "baseline", 10, 10)
                + test("0043", "2024-02-01", "baseline", 10, 10);

        ImportPreview preview = files.preview(roster, audiograms, "");

        assertThat(preview.counts()).isEqualTo(new ImportCounts(1, 0, 0, 1, 0, 0, 0, 2));
        assertThat(preview.problems())
                .extracting(RowProblem::kind)
                .containsExactly(ProblemKind.TEXT_TOO_LONG_TO_KEEP, ProblemKind.UNKNOWN_WORKER);
        assertThat(imports.confirm(preview.token(), ImportProgress.unwatched()))
                .isInstanceOf(ImportResult.Stored.class);
    }

    @Test
    void theLongestTextsOfEveryColumnCanBeStored() {
        SignIn.as(Role.SAFETY_OFFICER);
        String name = "Å".repeat(200);
        String roster =
                "worker_id,birth_date,sex,family_name,given_name,site,department,job_title,noise_group,twa_dba,email\n"
                        + "%s,,,%s,%s,%s,%s,%s,%s,139.123456789,%s\n"
                                .formatted("1".repeat(100), name, name, name, name, name, name, "e".repeat(320));
        String audiograms = AUDIOGRAM_COLUMNS.strip()
                + ",hours_since_noise,tester,instrument,transducer,remark\n"
                + test("1".repeat(100), "2024-02-01", "baseline", 10, 10).strip()
                + ",999999,%s,%s,%s,%s\n".formatted(name, name, name, "r".repeat(2000));
        String decisions =
                "worker_id,ear,test_date,kind,date,by,reason\n%s,both,2024-02-01,invalid-test,2024-02-02,%s,%s\n"
                        .formatted("1".repeat(100), name, "s".repeat(2000));

        assertThat(files.store(roster, audiograms, decisions)).isEqualTo(new ImportCounts(1, 0, 0, 1, 0, 1, 0, 0));
        assertThat(files.store(roster, audiograms, decisions)).isEqualTo(new ImportCounts(0, 0, 1, 0, 1, 0, 1, 0));
    }

    @Test
    void rowsOfSitesThatTheUserDoesNotLookAfterAreLeftOut() {
        SignIn.as(Role.NURSE);
        files.store(ROSTER, "", "");
        String takesOver = """
                worker_id,birth_date,sex,site
                0044,,,Mill
                0045,,,Yard
                0046,,,
                0047,,,Mill
                """;

        SignIn.as(Role.NURSE, "Mill");
        ImportPreview preview = files.preview(takesOver, AUDIOGRAMS, "");

        assertThat(preview.counts()).isEqualTo(new ImportCounts(1, 0, 0, 3, 0, 0, 0, 4));
        assertThat(preview.problems())
                .extracting(RowProblem::table, RowProblem::line, RowProblem::kind)
                .containsExactly(
                        tuple(Table.ROSTER, 2, ProblemKind.WORKER_OF_ANOTHER_SITE),
                        tuple(Table.ROSTER, 3, ProblemKind.WORKER_OF_ANOTHER_SITE),
                        tuple(Table.ROSTER, 4, ProblemKind.WORKER_OF_ANOTHER_SITE),
                        tuple(Table.AUDIOGRAMS, 5, ProblemKind.UNKNOWN_WORKER));
    }

    @Test
    void aNurseImportsOnlyTheDecisionsThatANurseMayEnter() {
        SignIn.as(Role.NURSE);
        String decisions = DECISIONS + "0042,right,2025-02-01,recorded,2025-03-01,the officer,\n";

        ImportPreview asNurse = files.preview(ROSTER, AUDIOGRAMS, decisions);
        SignIn.as(Role.SAFETY_OFFICER);
        ImportPreview asOfficer = files.preview(ROSTER, AUDIOGRAMS, decisions);

        assertThat(asNurse.counts().newDecisions()).isEqualTo(1);
        assertThat(asNurse.problems())
                .extracting(RowProblem::line, RowProblem::kind)
                .containsExactly(tuple(3, ProblemKind.DECISION_OF_ANOTHER_ROLE));
        assertThat(asOfficer.counts().newDecisions()).isEqualTo(2);
        assertThat(asOfficer.problems()).isEmpty();
    }
}
