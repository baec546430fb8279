package org.thresholdregister.platform.storage;

import java.nio.file.Path;

/** The embedded database file of a register. */
final class RegisterDatabase {

    static final String USER = "sa";
    static final String PASSWORD = "";
    private static final String NAME = "register";
    // Options under which the same migrations run on H2 and on PostgreSQL.
    private static final String OPTIONS =
            ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;CASE_INSENSITIVE_IDENTIFIERS=TRUE"
                    // A long result stays in memory: what H2 writes to the system's temporary folder others may read.
                    + ";MAX_MEMORY_ROWS=10000000";

    private RegisterDatabase() {}

    static Path file(Path folder) {
        return folder.toAbsolutePath().normalize().resolve(NAME + ".mv.db");
    }

    static String url(Path folder) {
        return "jdbc:h2:file:" + folder.toAbsolutePath().normalize().resolve(NAME) + OPTIONS;
    }
}
