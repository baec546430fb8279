package org.thresholdregister.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;

/** Rows of a CSV file as bytes, put together of {@link CsvCells}. */
final class RowBytes {

    private byte[] bytes = new byte[1 << 16];
    private int size;

    void add(byte[] cell) {
        add(cell, cell.length);
    }

    void add(RowBytes others) {
        add(others.bytes, others.size);
    }

    private void add(byte[] source, int length) {
        if (bytes.length - size < length) {
            bytes = Arrays.copyOf(bytes, 2 * bytes.length + length);
        }
        System.arraycopy(source, 0, bytes, size, length);
        size += length;
    }

    /** A row of these texts. */
    static RowBytes of(String... texts) {
        RowBytes row = new RowBytes();
        for (String text : texts) {
            row.add(CsvCells.of(text));
        }
        row.endRow();
        return row;
    }

    void endRow() {
        // In place of the separator behind the last cell.
        bytes[size - 1] = '\n';
    }

    void clear() {
        size = 0;
    }

    void writeTo(OutputStream out) throws IOException {
        out.write(bytes, 0, size);
    }
}
