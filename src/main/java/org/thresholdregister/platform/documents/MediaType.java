package org.thresholdregister.platform.documents;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of file that can be kept. A file is what its first bytes say, whatever its name. */
public enum MediaType {
    PDF("application/pdf", ".pdf", 0x25, 0x50, 0x44, 0x46, 0x2D),
    PNG("image/png", ".png", 0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A),
    JPEG("image/jpeg", ".jpg", 0xFF, 0xD8, 0xFF);

    private final String value;
    private final String suffix;
    private final int[] firstBytes;

    MediaType(String value, String suffix, int... firstBytes) {
        this.value = value;
        this.suffix = suffix;
        this.firstBytes = firstBytes;
    }

    /** As a browser is told. */
    public String value() {
        return value;
    }

    /** How the name of such a file ends. */
    public String suffix() {
        return suffix;
    }

    /** What a file is; empty where it is none of these. */
    public static Optional<MediaType> of(byte[] content) {
        return Arrays.stream(values()).filter(type -> type.begins(content)).findFirst();
    }

    private boolean begins(byte[] content) {
        if (content.length < firstBytes.length) {
            return false;
        }
        for (int i = 0; i < firstBytes.length; i++) {
            if ((content[i] & 0xFF) != firstBytes[i]) {
                return false;
            }
        }
        return true;
    }
}
