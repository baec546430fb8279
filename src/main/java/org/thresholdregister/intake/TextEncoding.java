package org.thresholdregister.intake;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/**
 * How a file's bytes become characters. A byte-order mark settles it; without one the file is UTF-8 if all of it can be
 * UTF-8, and otherwise windows-1252, which is what older spreadsheets write.
 */
record TextEncoding(Charset charset, int markBytes) {

    private static final Charset WINDOWS_1252 = Charset.forName("windows-1252");
    private static final int BUFFER_BYTES = 1 << 16;

    static TextEncoding detect(SourceFile file) throws IOException {
        try (InputStream bytes = file.content().open()) {
            byte[] start = bytes.readNBytes(3);
            if (startsWith(start, 0xEF, 0xBB, 0xBF)) {
                return new TextEncoding(StandardCharsets.UTF_8, 3);
            }
            if (startsWith(start, 0xFF, 0xFE)) {
                return new TextEncoding(StandardCharsets.UTF_16LE, 2);
            }
            if (startsWith(start, 0xFE, 0xFF)) {
                return new TextEncoding(StandardCharsets.UTF_16BE, 2);
            }
            return new TextEncoding(isUtf8(start, bytes) ? StandardCharsets.UTF_8 : WINDOWS_1252, 0);
        }
    }

    /** The characters after the byte-order mark; bytes that mean nothing come as U+FFFD. */
    Reader open(SourceFile file) throws IOException {
        InputStream bytes = file.content().open();
        try {
            bytes.skipNBytes(markBytes);
            CharsetDecoder decoder = charset.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPLACE)
                    .onUnmappableCharacter(CodingErrorAction.REPLACE);
            return new BufferedReader(new InputStreamReader(bytes, decoder));
        } catch (IOException | RuntimeException failure) {
            bytes.close();
            throw failure;
        }
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

    private static boolean isUtf8(byte[] start, InputStream rest) throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer bytes = ByteBuffer.allocate(BUFFER_BYTES).put(start);
        CharBuffer characters = CharBuffer.allocate(BUFFER_BYTES);
        boolean atEnd = false;
        while (!atEnd) {
            int read = rest.read(bytes.array(), bytes.position(), bytes.remaining());
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
