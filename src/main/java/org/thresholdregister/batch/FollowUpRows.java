package org.thresholdregister.batch;

import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.columnar.JudgedPopulation;
import org.thresholdregister.core.followup.FollowUpKind;

/** The rows of {@code followups.csv} from columns. */
final class FollowUpRows {

    private static final byte[][] KINDS = CsvCells.ofWords(FollowUpKind.values(), FollowUpKind::word);
    private static final byte[][] EARS = CsvCells.ofWords(Ears.values(), Ears::word);
    private static final byte[] OVERDUE = CsvCells.of("overdue");
    private static final byte[] OPEN = CsvCells.of("open");

    private final JudgedPopulation judged;

    FollowUpRows(JudgedPopulation judged) {
        this.judged = judged;
    }

    void add(int worker, byte[] workerId, RowBytes bytes) {
        for (int i = judged.firstFollowUp(worker); i < judged.endOfFollowUps(worker); i++) {
            bytes.add(workerId);
            bytes.add(KINDS[judged.followUpKind(i).ordinal()]);
            bytes.add(CsvCells.ofDay(judged.followUpDueDay(i)));
            bytes.add(CsvCells.ofDay(judged.followUpTestDay(i)));
            bytes.add(EARS[judged.followUpEars(i).ordinal()]);
            bytes.add(judged.isFollowUpOverdue(i) ? OVERDUE : OPEN);
            bytes.endRow();
        }
    }
}
