package org.thresholdregister.intake;

import com.opencsv.ICSVParser;
import com.opencsv.RFC4180ParserBuilder;
import java.io.Closeable;
import java.io.IOException;
import java.io.Reader;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.intake.LineSource.Line;

/**
 * Divides lines into records of cells by RFC 4180, with any one-character separator. A record may run over several
 * lines within quotation marks. Where the marks of a record are wrong, only its first line is given up: reading goes on
 * at the next, so that a stray mark cannot swallow the rows after it.
 */
final class RecordReader implements Closeable {

    /** In characters, ends of lines included. */
    static final int LONGEST_RECORD = 1_000_000;

    private static final int MOST_LINES = 100;
    private static final char QUOTE = '"';

    /** What stands at a line of the file. */
    sealed interface Outcome {
        int line();
    }

    /** @param lines how many lines of the file the record takes up */
    record Cells(int line, int lines, String[] values) implements Outcome {

        boolean areBlank() {
            for (String value : values) {
                if (!CellReader.trim(value).isEmpty()) {
                    return false;
                }
            }
            return true;
        }
    }

    /** A line that is given up. */
    record Fault(int line, ProblemKind kind, String text) implements Outcome {}

    private enum Quotes {
        BALANCED,
        OPEN,
        MISPLACED
    }

    private final LineSource lines;
    private final char separator;
    private final ICSVParser parser;
    /** Lines that were read ahead, to be read before those of {@link #lines}. */
    private final Deque<Line> ahead = new ArrayDeque<>();
    /** The first line of the latest record. */
    private Line latest = new Line(0, "", false);
    /** The other lines of the latest record. */
    private List<Line> continuation = List.of();

    RecordReader(Reader text, char separator) {
        this(new LineReader(text), separator);
    }

    RecordReader(LineSource lines, char separator) {
        this.lines = lines;
        this.separator = separator;
        this.parser = new RFC4180ParserBuilder().withSeparator(separator).build();
    }

    /** The next record, or null at the end. */
    @Nullable
    Outcome next() throws IOException {
        continuation = List.of();
        Line first = nextLine();
        if (first == null) {
            return null;
        }
        latest = first;
        if (first.tooLong()) {
            return new Fault(first.number(), ProblemKind.TOO_LONG, first.text());
        }
        return switch (quotes(first.text(), false)) {
            case BALANCED -> new Cells(first.number(), 1, parser.parseLine(first.text()));
            case MISPLACED -> new Fault(first.number(), ProblemKind.MISPLACED_QUOTE, first.text());
            case OPEN -> recordOverSeveralLines(first);
        };
    }

    /** Takes rows from here on as long as they are plain, and gives how many; the next record is not one of them. */
    int takePlain(PlainRows rows) throws IOException {
        return ahead.isEmpty() ? lines.takePlain(rows) : 0;
    }

    /** Skips one line, before the first record is read. */
    void skipLine() throws IOException {
        nextLine();
    }

    /**
     * Takes back the latest record, which runs over several lines: its first line is given up, and the others are read
     * as records of their own.
     */
    Fault giveUpFirstLine() {
        putBack(continuation);
        continuation = List.of();
        return new Fault(latest.number(), ProblemKind.MISPLACED_QUOTE, latest.text());
    }

    private Outcome recordOverSeveralLines(Line first) throws IOException {
        List<Line> more = new ArrayList<>();
        StringBuilder text = new StringBuilder(first.text());
        ProblemKind fault = ProblemKind.UNCLOSED_QUOTE;
        while (more.size() < MOST_LINES - 1) {
            Line line = nextLine();
            if (line == null) {
                break;
            }
            more.add(line);
            if (line.tooLong() || text.length() + 1 + line.text().length() > LONGEST_RECORD) {
                fault = ProblemKind.TOO_LONG;
                break;
            }
            text.append('\n').append(line.text());
            Quotes quotes = quotes(line.text(), true);
            if (quotes == Quotes.BALANCED) {
                continuation = more;
                return new Cells(first.number(), 1 + more.size(), parser.parseLine(text.toString()));
            }
            if (quotes == Quotes.MISPLACED) {
                fault = ProblemKind.MISPLACED_QUOTE;
                break;
            }
        }
        putBack(more);
        return new Fault(first.number(), fault, first.text());
    }

    private @Nullable Line nextLine() throws IOException {
        Line line = ahead.poll();
        return line == null ? lines.next() : line;
    }

    private void putBack(List<Line> read) {
        for (Line line : read.reversed()) {
            ahead.addFirst(line);
        }
    }

    /** How the quotation marks stand at the end of the line, which begins within quotation marks or does not. */
    private Quotes quotes(String line, boolean beginsWithin) {
        if (line.indexOf(QUOTE) < 0) {
            return beginsWithin ? Quotes.OPEN : Quotes.BALANCED;
        }
        boolean within = beginsWithin;
        boolean atStartOfCell = !beginsWithin;
        int i = 0;
        while (i < line.length()) {
            char c = line.charAt(i);
            if (within && c == QUOTE) {
                boolean doubled = i + 1 < line.length() && line.charAt(i + 1) == QUOTE;
                boolean closes = i + 1 == line.length() || line.charAt(i + 1) == separator;
                if (!doubled && !closes) {
                    return Quotes.MISPLACED;
                }
                within = doubled;
                i += doubled ? 2 : 1;
            } else {
                within |= atStartOfCell && c == QUOTE;
                atStartOfCell = !within && c == separator;
                i++;
            }
        }
        return within ? Quotes.OPEN : Quotes.BALANCED;
    }

    @Override
    public void close() throws IOException {
        lines.close();
    }
}
