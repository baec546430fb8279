package org.thresholdregister.intake;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import org.jspecify.annotations.Nullable;

/**
 * How a file's bytes become characters. A byte-order mark settles it; without one the file is UTF-8 if all of it can be
 * UTF-8, and otherwise windows-1252, which is what older spreadsheets write. ASCII is the same in both, so that the
 * whole file is looked at only once something else is met in it.
 */
final class TextEncoding {

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
    private static final int BUFFER_BYTES = 1 << 16;

    private final SourceFile file;
    private final int markBytes;
    private @Nullable Charset charset;

    private TextEncoding(SourceFile file, int markBytes, @Nullable Charset charset) {
        this.file = file;
        this.markBytes = markBytes;
        this.charset = charset;
    }

    static TextEncoding detect(SourceFile file) throws IOException {
        try (InputStream bytes = file.content().open()) {
            byte[] start = bytes.readNBytes(3);
            if (startsWith(start, 0xEF, 0xBB, 0xBF)) {
                return new TextEncoding(file, 3, StandardCharsets.UTF_8);
            }
            if (startsWith(start, 0xFF, 0xFE)) {
                return new TextEncoding(file, 2, StandardCharsets.UTF_16LE);
            }
            if (startsWith(start, 0xFE, 0xFF)) {
                return new TextEncoding(file, 2, StandardCharsets.UTF_16BE);
            }
            return new TextEncoding(file, 0, null);
        }
    }

    Charset charset() throws IOException {
        if (charset == null) {
            charset = isUtf8() ? StandardCharsets.UTF_8 : WINDOWS_1252;
        }
        return charset;
    }

    /** The lines after the byte-order mark; bytes that mean nothing come as U+FFFD. */
    LineSource open() throws IOException {
        InputStream bytes = file.content().open();
        try {
            bytes.skipNBytes(markBytes);
            boolean unitsOfTwoBytes = charset == StandardCharsets.UTF_16LE || charset == StandardCharsets.UTF_16BE;
            return unitsOfTwoBytes
                    ? new LineReader(new BufferedReader(new InputStreamReader(bytes, newDecoder())))
                    : new ByteLines(bytes, this);
        } catch (IOException | RuntimeException failure) {
            bytes.close();
            throw failure;
        }
    }

    /** Makes U+FFFD of bytes that mean nothing. */
    CharsetDecoder newDecoder() throws IOException {
        return charset()
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPLACE)
                .onUnmappableCharacter(CodingErrorAction.REPLACE);
    }

    private static boolean startsWith(byte[] bytes, int... mark) {
        if (bytes.length < mark.length) {
            return false;
        }
        for (int i = 0; i < mark.length; i++) {
            if ((bytes[i] & 0xFF) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    private boolean isUtf8() throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.allocate(BUFFER_BYTES);
        CharBuffer characters = CharBuffer.allocate(BUFFER_BYTES);
        try (InputStream source = file.content().open()) {
            boolean atEnd = false;
            while (!atEnd) {
                int read = source.read(bytes.array(), bytes.position(), bytes.remaining());
                atEnd = read < 0;
                bytes.position(bytes.position() + Math.max(read, 0)).flip();
                CoderResult result = decoder.decode(bytes, characters.clear(), atEnd);
                if (result.isError()) {
                    return false;
                }
                bytes.compact();
            }
            return true;
        }
    }
}
