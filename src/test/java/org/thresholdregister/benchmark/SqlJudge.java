package org.thresholdregister.benchmark;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Judges files by {@code judge.sql} in DuckDB, in memory and on all cores, which are DuckDB's defaults. */
final class SqlJudge implements MeasuredJudging {

    static final String STAGES = "--stages";

    private static final Path AGE_TABLES = Path.of("src/main/resources/org/thresholdregister/core/aging");

    private final String read;
    private final String judge;
    private final String write;

    private SqlJudge(String script) {
        String[] sections = script.split("-- \\[(read|judge|write)]", -1);
        read = sections[1];
        judge = sections[2];
        write = sections[3];
    }

    static SqlJudge load() throws IOException {
        try (InputStream script = SqlJudge.class.getResourceAsStream("/benchmark/judge.sql")) {
            return new SqlJudge(new String(Objects.requireNonNull(script).readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    /** Judges one task as a process of its own; with {@value #STAGES}, over and over, to say what each stage took. */
    static void main(String[] arguments) throws Exception {
        SqlJudge sql = load();
        JudgingTask task = JudgingTask.parse(arguments);
        if (List.of(arguments).contains(STAGES)) {
            System.out.print(sql.measureWarm(task).lines());
        } else {
            sql.judge(task);
        }
    }

    void judge(JudgingTask task) throws SQLException {
        try (Connection database = open(task);
                Statement statement = database.createStatement()) {
            statement.execute(read);
            statement.execute(judge);
            statement.execute(write);
        }
    }

    /** The last query of judging is a view, which the writing fills; here a table holds its result before it is written. */
    @Override
    public StageTimes measure(JudgingTask task) throws SQLException {
        try (Connection database = open(task);
                Statement statement = database.createStatement()) {
            long began = System.nanoTime();
            statement.execute(read);
            long haveRead = System.nanoTime();
            statement.execute(judge);
            statement.execute("create table judged as from determination");
            long haveJudged = System.nanoTime();
            statement.execute("drop view determination");
            statement.execute("alter table judged rename to determination");
            statement.execute(write);
            long haveWritten = System.nanoTime();
            return StageTimes.ofNanoseconds(haveRead - began, haveJudged - haveRead, haveWritten - haveJudged);
        }
    }

    private static Connection open(JudgingTask task) throws SQLException {
        Connection database = DriverManager.getConnection("jdbc:duckdb:");
        Map<String, Object> variables = Map.of(
                "roster", task.roster(),
                "audiograms", task.audiograms(),
                "age_tables", AGE_TABLES.toAbsolutePath(),
                "as_of", task.asOf(),
                "out", task.determinations());
        for (var variable : variables.entrySet()) {
            try (PreparedStatement set = database.prepareStatement("set variable " + variable.getKey() + " = ?")) {
                set.setString(1, variable.getValue().toString());
                set.execute();
            }
        }
        return database;
    }
}
