package org.thresholdregister.intake;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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

    private final Path file;
    private final DataOutputStream out;
    private final Map<Effect, Long> counts = new EnumMap<>(Effect.class);
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

    /** @param directory where the temporary file is made; it is removed when the spool is closed */
    public ProblemSpool(Path directory) throws IOException {
        file = Files.createTempFile(directory, "problems", ".tmp");
        out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(file)));
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
        counts.merge(problem.effect(), 1L, Long::sum);
    }

    /** How many problems have this effect. */
    public long count(Effect effect) {
        return counts.getOrDefault(effect, 0L);
    }

    /** Hands on all problems, file by file and line by line. */
    public void forEachInFileOrder(Consumer<RowProblem> action) throws IOException {
        out.flush();
        PriorityQueue<Cursor> cursors = new PriorityQueue<>();
        try {
            for (int i = 0; i < runs.size(); i++) {
                cursors.add(new Cursor(runs.get(i), i));
            }
            Cursor cursor;
            while ((cursor = cursors.poll()) != null) {
                action.accept(cursor.current);
                if (cursor.advance()) {
                    cursors.add(cursor);
                } else {
                    cursor.close();
                }
            }
        } finally {
            for (Cursor cursor : cursors) {
                cursor.close();
            }
        }
    }

    private void write(RowProblem problem) throws IOException {
        int before = out.size();
        out.writeByte(problem.table().ordinal());
        out.writeUTF(problem.file());
        out.writeInt(problem.line());
        out.writeUTF(problem.column());
        out.writeUTF(problem.value());
        out.writeByte(problem.kind().ordinal());
        out.writeUTF(problem.detail());
        out.writeByte(problem.effect().ordinal());
        bytesWritten += out.size() - before;
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
        try {
            out.close();
        } finally {
            Files.deleteIfExists(file);
        }
    }

    /** A place in a run; of equal problems the one that arrived first comes first. */
    private final class Cursor implements Comparable<Cursor>, Closeable {
        private static final Comparator<Cursor> ORDER = Comparator.comparing(
                        (Cursor cursor) -> cursor.current, RowProblem.FILE_ORDER)
                .thenComparingInt(cursor -> cursor.run);

        private final int run;
        private final DataInputStream in;
        private long left;
        private RowProblem current;

        Cursor(Run stretch, int run) throws IOException {
            this.run = run;
            InputStream bytes = Files.newInputStream(file);
            try {
                bytes.skipNBytes(stretch.offset);
                in = new DataInputStream(new BufferedInputStream(bytes));
                current = read(in);
            } catch (IOException | RuntimeException failure) {
                bytes.close();
                throw failure;
            }
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

        @Override
        public void close() throws IOException {
            in.close();
        }
    }
}
