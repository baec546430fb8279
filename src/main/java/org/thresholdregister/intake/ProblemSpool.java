package org.thresholdregister.intake;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Keeps any number of problems in a temporary file that only its owner can read, and gives them back in order. Problems
 * arrive nearly sorted: each stretch that is in order is a run, and the few runs are merged as they are read.
 */
public final class ProblemSpool implements ProblemSink, Closeable {

    private static final Table[] TABLES = Table.values();
    private static final ProblemKind[] KINDS = ProblemKind.values();
    private static final Effect[] EFFECTS = Effect.values();

    private final FileChannel file;
    private final OutputStream out;
    private final ByteArrayOutputStream encoded = new ByteArrayOutputStream();
    private final DataOutputStream encoder = new DataOutputStream(encoded);
    private final List<Run> runs = new ArrayList<>();
    private @Nullable RowProblem latest;
    private long bytesWritten;

    /** A stretch of the file whose problems are in order. */
    private static final class Run {
        private final long offset;
        private long problems;

        Run(long offset) {
            this.offset = offset;
        }
    }

    /** @param directory where the temporary file is made; it is gone when the spool is closed */
    public ProblemSpool(Path directory) throws IOException {
        file = FileChannel.open(
                Files.createTempFile(directory, "problems", ".tmp"),
                StandardOpenOption.READ,
                StandardOpenOption.WRITE,
                StandardOpenOption.DELETE_ON_CLOSE);
        out = new BufferedOutputStream(Channels.newOutputStream(file));
    }

    /** @throws UncheckedIOException when the temporary file cannot be written */
    @Override
    public void report(RowProblem problem) {
        if (latest == null || RowProblem.FILE_ORDER.compare(latest, problem) > 0) {
            runs.add(new Run(bytesWritten));
        }
        try {
            write(problem);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
        runs.getLast().problems++;
        latest = problem;
    }

    /** Hands on all problems, file by file and line by line. */
    public void forEachInFileOrder(Consumer<RowProblem> action) throws IOException {
        out.flush();
        PriorityQueue<Cursor> cursors = new PriorityQueue<>();
        for (int i = 0; i < runs.size(); i++) {
            cursors.add(new Cursor(runs.get(i), i));
        }
        RowProblem.RowByRow rows = new RowProblem.RowByRow(action);
        Cursor cursor;
        while ((cursor = cursors.poll()) != null) {
            rows.accept(cursor.current);
            if (cursor.advance()) {
                cursors.add(cursor);
            }
        }
        rows.finish();
    }

    private void write(RowProblem problem) throws IOException {
        encoded.reset();
        encoder.writeByte(problem.table().ordinal());
        encoder.writeUTF(problem.file());
        encoder.writeInt(problem.line());
        encoder.writeUTF(problem.column());
        encoder.writeUTF(problem.value());
        encoder.writeByte(problem.kind().ordinal());
        encoder.writeUTF(problem.detail());
        encoder.writeByte(problem.effect().ordinal());
        encoded.writeTo(out);
        bytesWritten += encoded.size();
    }

    private static RowProblem read(DataInputStream in) throws IOException {
        return new RowProblem(
                TABLES[in.readByte()],
                in.readUTF(),
                in.readInt(),
                in.readUTF(),
                in.readUTF(),
                KINDS[in.readByte()],
                in.readUTF(),
                EFFECTS[in.readByte()]);
    }

    /** Removes the temporary file. */
    @Override
    public void close() throws IOException {
        file.close();
    }

    /** A place in a run; of equal problems the one that arrived first comes first. */
    private final class Cursor implements Comparable<Cursor> {
        private static final Comparator<Cursor> ORDER = Comparator.comparing(
                        (Cursor cursor) -> cursor.current, RowProblem.FILE_ORDER)
                .thenComparingInt(cursor -> cursor.run);

        private final int run;
        private final DataInputStream in;
        private long left;
        private RowProblem current;

        Cursor(Run stretch, int run) throws IOException {
            this.run = run;
            in = new DataInputStream(new BufferedInputStream(new ChannelInput(file, stretch.offset)));
            current = read(in);
            left = stretch.problems - 1;
        }

        /** Goes to the run's next problem, where there is one. */
        boolean advance() throws IOException {
            if (left == 0) {
                return false;
            }
            left--;
            current = read(in);
            return true;
        }

        @Override
        public int compareTo(Cursor other) {
            return ORDER.compare(this, other);
        }
    }

    /** Reads a channel from a place of its own, so that several can read at once. */
    private static final class ChannelInput extends InputStream {
        private final FileChannel channel;
        private long position;

        ChannelInput(FileChannel channel, long position) {
            this.channel = channel;
            this.position = position;
        }

        @Override
        public int read() throws IOException {
            byte[] one = new byte[1];
            return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
        }

        @Override
        public int read(byte[] bytes, int offset, int length) throws IOException {
            int read = channel.read(ByteBuffer.wrap(bytes, offset, length), position);
            position += Math.max(read, 0);
            return read;
        }
    }
}
