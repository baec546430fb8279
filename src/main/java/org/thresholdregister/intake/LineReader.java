package org.thresholdregister.intake;

import java.io.IOException;
import java.io.Reader;
import org.jspecify.annotations.Nullable;

/** Divides characters into lines. Holds no more than the longest record of any line. */
final class LineReader implements LineSource {

    private final Reader reader;
    private final char[] buffer = new char[1 << 15];
    private final StringBuilder beginning = new StringBuilder();
    private int position;
    private int end;
    private int number;
    private boolean afterCarriageReturn;

    LineReader(Reader reader) {
        this.reader = reader;
    }

    @Override
    public @Nullable Line next() throws IOException {
        beginning.setLength(0);
        boolean tooLong = false;
        boolean any = false;
        while (position < end || fill()) {
            if (afterCarriageReturn) {
                afterCarriageReturn = false;
                if (buffer[position] == '\n') {
                    position++;
                    continue;
                }
            }
            any = true;
            int start = position;
            while (position < end && buffer[position] != '\n' && buffer[position] != '\r') {
                position++;
            }
            boolean complete = position < end;
            int length = Math.min(position - start, RecordReader.LONGEST_RECORD - beginning.length());
            tooLong |= length < position - start;
            if (complete) {
                afterCarriageReturn = buffer[position] == '\r';
                position++;
                return line(start, length, tooLong);
            }
            beginning.append(buffer, start, length);
        }
        return any ? line(0, 0, tooLong) : null;
    }

    private Line line(int start, int length, boolean tooLong) {
        number++;
        if (beginning.isEmpty()) {
            return new Line(number, new String(buffer, start, length), tooLong);
        }
        return new Line(number, beginning.append(buffer, start, length).toString(), tooLong);
    }

    private boolean fill() throws IOException {
        position = 0;
        end = Math.max(reader.read(buffer, 0, buffer.length), 0);
        return end > 0;
    }

    @Override
    public void close() throws IOException {
        reader.close();
    }
}
