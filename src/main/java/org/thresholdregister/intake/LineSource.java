package org.thresholdregister.intake;

import java.io.Closeable;
import java.io.IOException;
import org.jspecify.annotations.Nullable;

/** Lines of a text as an editor shows them: ended by LF, CR LF or CR, numbered from 1. */
interface LineSource extends Closeable {

    /**
     * A line without its end.
     *
     * @param number from 1
     * @param text at most {@link RecordReader#LONGEST_RECORD} characters
     * @param tooLong whether the text was cut off
     */
    record Line(int number, String text, boolean tooLong) {}

    /** The next line, or null at the end of the text; an end of line at the very end begins no further line. */
    @Nullable
    Line next() throws IOException;

    /** Takes rows from here on as long as they are plain, and gives how many; the next line is not one of them. */
    default int takePlain(PlainRows rows) throws IOException {
        return 0;
    }
}
