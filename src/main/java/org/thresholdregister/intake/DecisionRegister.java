package org.thresholdregister.intake;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.core.decision.Decision;

/** The decisions of a file set by worker. Rows that are the same count once; all others count. */
final class DecisionRegister {

    /** An order that does not depend on the order of the rows. */
    private static final Comparator<Decision> ORDER = Comparator.comparing(Decision::decidedOn)
            .thenComparing(Decision::testDate)
            .thenComparing(Decision::kind)
            .thenComparing(Decision::ears)
            .thenComparing(Decision::by, CodePointOrder.COMPARATOR)
            .thenComparing(Decision::reason, CodePointOrder.COMPARATOR);

    private record Content(int worker, Decision decision, long contentHash) {}

    private record RepeatedRow(int line, String workerId, int firstLine) {}

    private final Map<Content, Integer> firstLines = new HashMap<>();
    private final List<RepeatedRow> repeated = new ArrayList<>();

    void add(int worker, DecisionRow row) {
        Content content = new Content(worker, row.decision(), row.contentHash());
        @Nullable Integer first = firstLines.putIfAbsent(content, row.line());
        if (first != null) {
            repeated.add(new RepeatedRow(row.line(), row.workerId(), first));
        }
    }

    /**
     * Reports the rows that count for nothing, once all of the file has arrived, in its order.
     *
     * @return the lines of the rows that count
     */
    BitSet settle(String file, ProblemSink problems) {
        for (RepeatedRow row : repeated) {
            problems.report(new RowProblem(
                    Table.DECISIONS,
                    file,
                    row.line(),
                    DecisionColumn.WORKER_ID.columnName(),
                    row.workerId(),
                    ProblemKind.SAME_ROW_AGAIN,
                    Integer.toString(row.firstLine()),
                    Effect.NOTE));
        }
        BitSet kept = new BitSet();
        firstLines.values().forEach(kept::set);
        return kept;
    }

    /** The decisions by the workers' numbers. */
    Map<Integer, List<Decision>> byWorker() {
        Map<Integer, List<Decision>> decisions = new HashMap<>();
        for (Content content : firstLines.keySet()) {
            decisions
                    .computeIfAbsent(content.worker(), worker -> new ArrayList<>())
                    .add(content.decision());
        }
        decisions.values().forEach(list -> list.sort(ORDER));
        return decisions;
    }
}
