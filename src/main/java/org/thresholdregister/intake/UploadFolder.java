package org.thresholdregister.intake;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.DisposableBean;
import org.springframework.stereotype.Component;
import org.thresholdregister.platform.storage.RegisterProperties;

/**
 * Where handed-over files wait until they are imported or given up. They are health records: the folder is the data
 * folder's, readable by its owner alone, the names are made up, and what an earlier run left behind is removed.
 */
@Component
class UploadFolder implements DisposableBean {

    static final long MOST_BYTES = 256L << 20;

    private static final Logger log = LoggerFactory.getLogger(UploadFolder.class);

    private final Path folder;

    UploadFolder(RegisterProperties properties) throws IOException {
        folder = properties.data().resolve("uploads");
        Files.createDirectories(folder, ownerOnly());
        empty();
    }

    UploadedFile keep(Table table, String name, InputStream bytes) throws IOException {
        String id = UUID.randomUUID().toString();
        Path file = folder.resolve(id);
        try {
            return new UploadedFile(id, table, name, copy(bytes, file, name));
        } catch (IOException | RuntimeException failure) {
            Files.deleteIfExists(file);
            throw failure;
        }
    }

    SourceFile open(UploadedFile upload) {
        Path file = folder.resolve(upload.id());
        return new SourceFile(upload.name(), () -> Files.newInputStream(file));
    }

    void delete(UploadedFile upload) {
        try {
            Files.deleteIfExists(folder.resolve(upload.id()));
        } catch (IOException failure) {
            // It is tried again at the next start.
            log.warn("an uploaded file could not be deleted", failure);
        }
    }

    @Override
    public void destroy() throws IOException {
        empty();
    }

    private void empty() throws IOException {
        List<Path> left;
        try (Stream<Path> files = Files.list(folder)) {
            left = files.toList();
        }
        for (Path file : left) {
            Files.delete(file);
        }
    }

    private static String copy(InputStream bytes, Path file, String name) throws IOException {
        MessageDigest digest = sha256();
        try (OutputStream out = new DigestOutputStream(Files.newOutputStream(file), digest)) {
            byte[] buffer = new byte[1 << 16];
            long total = 0;
            int read;
            while ((read = bytes.read(buffer)) >= 0) {
                total += read;
                if (total > MOST_BYTES) {
                    throw new UploadTooLargeException(name);
                }
                out.write(buffer, 0, read);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static FileAttribute<?>[] ownerOnly() {
        return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rwx------"))
                }
                : new FileAttribute<?>[0];
    }
}
