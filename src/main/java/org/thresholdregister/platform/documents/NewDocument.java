package org.thresholdregister.platform.documents;

import java.util.Optional;

/**
 * A file that is to be kept, found to be of a kind that can be.
 *
 * @param name without any folder, at most {@value #LONGEST_NAME} characters
 * @param content not copied; nobody changes it
 */
public record NewDocument(String name, MediaType type, byte[] content) {

    public static final int LONGEST_NAME = 200;

    /** The most bytes a file may have. */
    public static final int MOST_BYTES = 10_000_000;

    /** @throws IllegalArgumentException where name or content break the bounds */
    public NewDocument {
        if (name.isBlank() || name.length() > LONGEST_NAME || content.length > MOST_BYTES) {
            throw new IllegalArgumentException("a document has a name, and at most " + MOST_BYTES + " bytes");
        }
    }

    /** The file, unless it is empty, too large or of no kind that can be kept. A folder in the name is left off. */
    public static Optional<NewDocument> of(String fileName, byte[] content) {
        String name = fileName.substring(Math.max(fileName.lastIndexOf('/'), fileName.lastIndexOf('\\')) + 1)
                .replaceAll("\\p{Cntrl}", "")
                .strip();
        if (content.length > MOST_BYTES) {
            return Optional.empty();
        }
        return MediaType.of(content)
                .map(type -> new NewDocument(
                        name.isEmpty()
                                ? "document" + type.suffix()
                                : name.substring(Math.max(0, name.length() - LONGEST_NAME)),
                        type,
                        content));
    }
}
