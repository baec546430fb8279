package org.thresholdregister.intake;

import java.io.IOException;

/**
 * Takes rows straight from the bytes of a file, as long as they are beyond doubt: one line each, of ASCII but for
 * letters in texts, without quotation marks, and with nothing in it that would be a problem. All other rows are left to
 * the readers of records, which alone know what to say of them.
 */
@FunctionalInterface
interface PlainRows {

    /** Takes none. */
    PlainRows NONE = (bytes, from, to, line) -> 0;

    /**
     * Takes the row at the beginning of these bytes if it is plain and they hold all of its line.
     *
     * @param line the number of the row's line in the file
     * @return how many bytes the line takes up, its end included; 0 where the row is not taken
     */
    int take(byte[] bytes, int from, int to, int line) throws IOException;
}
