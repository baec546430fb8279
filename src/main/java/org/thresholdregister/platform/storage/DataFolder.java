package org.thresholdregister.platform.storage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;

/** The folder of the health records: made when missing, and then readable by its owner alone where the system can. */
final class DataFolder {

    private DataFolder() {}

    static void prepare(Path folder) {
        if (Files.isDirectory(folder)) {
            return;
        }
        try {
            if (FileSystems.getDefault().supportedFileAttributeViews().contains("posix")) {
                Files.createDirectories(
                        folder, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------")));
            } else {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot make the data folder " + folder, e);
        }
    }
}
