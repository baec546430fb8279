package org.thresholdregister.intake;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file to be read: the name by which its problems are reported, and its bytes, which are read more than once and must
 * be the same each time.
 */
public record SourceFile(String name, Content content) {

    /** Opens the bytes from their beginning. */
    @FunctionalInterface
    public interface Content {
        InputStream open() throws IOException;
    }

    /** A file on disk, reported by its last name so that a report does not depend on the folder it lay in. */
    public static SourceFile of(Path path) {
        Path name = path.getFileName();
        return new SourceFile(name == null ? path.toString() : name.toString(), () -> Files.newInputStream(path));
    }

    /** Bytes in memory; the array must not be changed afterwards. */
    public static SourceFile of(String name, byte[] bytes) {
        return new SourceFile(name, () -> new ByteArrayInputStream(bytes));
    }
}
