package org.thresholdregister.platform.storage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.thresholdregister.core.judging.RuleEdition;

/** A register of an earlier version, brought up to date. */
class MigrationTest {

    @TempDir
    Path folder;

    private void migrateTo(String version) {
        Flyway.configure()
                .dataSource(RegisterDatabase.url(folder), RegisterDatabase.USER, RegisterDatabase.PASSWORD)
                .target(version)
                .load()
                .migrate();
    }

    private void execute(String sql) throws SQLException {
        try (Connection connection = connection();
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    private String only(String sql) throws SQLException {
        try (Connection connection = connection();
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(sql)) {
            assertThat(rows.next()).isTrue();
            String value = rows.getString(1);
            assertThat(rows.next()).isFalse();
            return value;
        }
    }

    private Connection connection() throws SQLException {
        return DriverManager.getConnection(
                RegisterDatabase.url(folder), RegisterDatabase.USER, RegisterDatabase.PASSWORD);
    }

    @Test
    void whatIsOwedAlreadyIsOwedByTheOnlyRuleSetThatThereWas() throws SQLException {
        migrateTo("4");
        execute("insert into worker (id, version, worker_id, family_name, given_name, site, department, job_title,"
                + " noise_group, email, language, search)"
                + " values (1, 0, 'W-1', '', '', '', '', '', '', '', '', '')");
        execute("insert into follow_up (id, worker_id, kind, due_date, ears)"
                + " values (1, 1, 'annual-test', date '2026-03-09', 'both')");
        migrateTo("5");
        assertThat(only("select rule_set from follow_up")).isEqualTo("osha");
        assertThat(only("select count(*) from site_rule_set")).isEqualTo("0");
        assertThat(only("select count(*) from holiday")).isEqualTo("0");
    }

    @Test
    void whatIsOpenIsWrittenAgainAtTheNextLook() throws SQLException {
        migrateTo("6");
        execute("insert into worker (id, version, worker_id, family_name, given_name, site, department, job_title,"
                + " noise_group, email, language, search)"
                + " values (1, 0, 'W-1', '', '', '', '', '', '', '', '', '')");
        execute("insert into follow_up (id, worker_id, kind, due_date, ears, rule_set)"
                + " values (1, 1, 'annual-test', date '2026-03-09', 'both', 'osha')");
        execute("insert into worker_judgement (worker_id, judged_on, rule_edition)"
                + " values (1, date '2026-03-09', 1)");
        migrateTo("11");
        assertThat(only("select count(*) from follow_up where due_date = date '2026-03-09'"))
                .isEqualTo("1");
        assertThat(only("select rule_set from test_follow_up")).isEqualTo("osha");
        assertThat(only("select rule_edition from worker_judgement"))
                .as("of no edition, so that the worker is judged before the next list")
                .isEqualTo(Integer.toString(RuleEdition.NONE));
    }
}
