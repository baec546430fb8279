package org.thresholdregister.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.PlatformTransactionManager;
import org.thresholdregister.MovableClock;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.roster.WorkerStore;

@RegisterTest
class SampleImportTest {

    @Autowired
    private Importer importer;

    @Autowired
    private UploadFolder uploads;

    @Autowired
    private WorkerStore workers;

    @Autowired
    private PlatformTransactionManager transactionManager;

    @Autowired
    private TestImports files;

    @Autowired
    private MovableClock clock;

    @Autowired
    private JdbcTemplate jdbc;

    private SampleImport from(Path folder) {
        return new SampleImport(folder, importer, uploads, workers, transactionManager);
    }

    private int count(String table) {
        return jdbc.queryForList("select id from " + table).size();
    }

    @Test
    void anEmptyRegisterIsFilledOnceAndWithoutASignIn() throws Exception {
        clock.moveTo(LocalDate.of(2026, 11, 24));

        from(Path.of("sample-roster")).importIntoEmptyRegister();

        assertThat(count("worker")).isEqualTo(400);
        assertThat(count("audiogram")).isGreaterThan(2500);
        assertThat(count("decision")).isGreaterThan(10);
        assertThat(jdbc.queryForList("select actor from audit_event"))
                .extracting(row -> row.get("actor"))
                .containsExactly("(demonstration)");

        from(Path.of("sample-roster")).importIntoEmptyRegister();
        assertThat(count("import_batch")).isEqualTo(1);
    }

    @Test
    void aRegisterThatHoldsAnyoneIsLeftAlone() throws Exception {
        SignIn.as(Role.NURSE);
        files.store("worker_id,birth_date,sex\n1,,\n", "", "");

        from(Path.of("sample-roster")).importIntoEmptyRegister();

        assertThat(count("worker")).isEqualTo(1);
    }

    @Test
    void withoutASampleTheRegisterStaysEmpty() throws Exception {
        from(Path.of("no-such-folder")).importIntoEmptyRegister();

        assertThat(count("worker")).isZero();
    }
}
