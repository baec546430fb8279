package org.thresholdregister.intake;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * Finds lines among the bytes of a file, whose encoding must write ASCII as ASCII. Plain rows are taken as bytes; only
 * the other lines become characters.
 */
final class ByteLines implements LineSource {

    private static final int WINDOW_BYTES = 1 << 18;

    /** A UTF-16 unit takes up three bytes at most, so that a line of more bytes is too long. */
    private static final int LONGEST_LINE_BYTES = 3 * (RecordReader.LONGEST_RECORD + 1);

    private final InputStream source;
    private final TextEncoding encoding;
    private @Nullable CharsetDecoder decoder;

    /** A stretch of the file; what lies from {@link #position} to {@link #end} has not been given out yet. */
    private byte[] window = new byte[WINDOW_BYTES];

    private int position;
    private int end;
    private int linesRead;

    ByteLines(InputStream source, TextEncoding encoding) {
        this.source = source;
        this.encoding = encoding;
    }

    @Override
    public int takePlain(PlainRows rows) throws IOException {
        int taken = 0;
        do {
            int bytes = rows.take(window, position, end, linesRead + 1);
            while (bytes > 0) {
                taken++;
                linesRead++;
                position += bytes;
                bytes = rows.take(window, position, end, linesRead + 1);
            }
        } while (!holdsLine() && readMore());
        return taken;
    }

    @Override
    public @Nullable Line next() throws IOException {
        int length = lengthOfLine(0);
        while (position + length == end && readMore()) {
            length = lengthOfLine(length);
        }
        if (position == end) {
            return null;
        }
        boolean ends = position + length < end;
        String text = text(window, position, ends ? length + 1 : length);
        // What was decoded ends with the first byte of the end of line.
        String line = ends ? text.substring(0, text.length() - 1) : text;
        position += length;
        skipRestOfLine();
        linesRead++;
        return line.length() > RecordReader.LONGEST_RECORD
                ? new Line(linesRead, line.substring(0, RecordReader.LONGEST_RECORD), true)
                : new Line(linesRead, line, false);
    }

    /** Goes on behind the next end of line; unless the line was longer than a window can be, that stands right here. */
    private void skipRestOfLine() throws IOException {
        position += lengthOfLine(0);
        while (position == end && readMore()) {
            position += lengthOfLine(0);
        }
        if (position == end) {
            return;
        }
        boolean mayBeTwoBytes = window[position++] == '\r';
        if (mayBeTwoBytes && (position < end || readMore()) && window[position] == '\n') {
            position++;
        }
    }

    /** Whether a whole line with its end lies in the window. */
    private boolean holdsLine() {
        int lineEnd = position + lengthOfLine(0);
        return lineEnd < end && (window[lineEnd] == '\n' || lineEnd + 1 < end);
    }

    /** How many bytes stand before the end of the line, or of the window; at least so many as are known. */
    private int lengthOfLine(int known) {
        int at = position + known;
        while (at < end && window[at] != '\n' && window[at] != '\r') {
            at++;
        }
        return at - position;
    }

    /** Reads on, keeping what has not been given out; false at the end of the file, and where the line is too long. */
    private boolean readMore() throws IOException {
        System.arraycopy(window, position, window, 0, end - position);
        end -= position;
        position = 0;
        if (end >= LONGEST_LINE_BYTES) {
            return false;
        }
        if (end == window.length) {
            window = Arrays.copyOf(window, Math.min(2 * window.length, LONGEST_LINE_BYTES));
        }
        int read = source.read(window, end, window.length - end);
        end += Math.max(read, 0);
        return read > 0;
    }

    private String text(byte[] bytes, int from, int length) throws IOException {
        if (isAscii(bytes, from, length)) {
            return new String(bytes, from, length, StandardCharsets.ISO_8859_1);
        }
        if (decoder == null) {
            decoder = encoding.newDecoder();
        }
        return decoder.decode(ByteBuffer.wrap(bytes, from, length)).toString();
    }

    private static boolean isAscii(byte[] bytes, int from, int length) {
        for (int i = from; i < from + length; i++) {
            if (bytes[i] < 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public void close() throws IOException {
        source.close();
    }
}
