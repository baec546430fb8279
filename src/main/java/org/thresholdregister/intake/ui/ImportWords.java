package org.thresholdregister.intake.ui;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.thresholdregister.intake.ImportCounts;
import org.thresholdregister.intake.ImportProgress.Phase;
import org.thresholdregister.intake.Table;
import org.thresholdregister.review.DeterminationChange;

/** The sentences of the import page. */
final class ImportWords {

    private ImportWords() {}

    /** The kind of file, by the name that files of this kind usually have. */
    static String fileName(Table table) {
        return switch (table) {
            case ROSTER -> "roster.csv";
            case AUDIOGRAMS -> "audiograms.csv";
            case DECISIONS -> "decisions.csv";
        };
    }

    static String title(Table table) {
        return switch (table) {
            case ROSTER -> "Roster";
            case AUDIOGRAMS -> "Audiograms";
            case DECISIONS -> "Decisions";
        };
    }

    /** What a file of this kind is. */
    static String explanation(Table table) {
        return switch (table) {
            case ROSTER -> "One row for each worker: number, birth date and sex, and where the worker belongs.";
            case AUDIOGRAMS -> "One row for each hearing test: worker, date, purpose and the levels of both ears.";
            case DECISIONS ->
                "Not needed each time: what was decided before or elsewhere, such as notices given and cases"
                        + " recorded.";
        };
    }

    /** What storing the files would do. */
    static String outlook(ImportCounts counts) {
        return counts.changeNothing()
                ? nothing(counts) + "; " + leftOut(counts, "is", "are") + "."
                : things(counts) + " can be stored; " + leftOut(counts, "is", "are") + ".";
    }

    /** What has been stored. */
    static String stored(ImportCounts counts) {
        return counts.changeNothing()
                ? "Nothing new was stored; " + leftOut(counts, "was", "were") + "."
                : things(counts) + (isOne(counts) ? " is" : " are") + " stored; " + leftOut(counts, "was", "were")
                        + ".";
    }

    private static String nothing(ImportCounts counts) {
        if (counts.unchangedWorkers() + counts.unchangedTests() + counts.unchangedDecisions() > 0) {
            return "Nothing new: all that could be stored is in the register already";
        }
        return counts.rowsLeftOut() > 0 ? "Nothing can be stored" : "Nothing new: the files hold no rows";
    }

    private static String things(ImportCounts counts) {
        List<String> things = new ArrayList<>();
        if (counts.newWorkers() > 0 && counts.changedWorkers() > 0) {
            things.add(digits(counts.newWorkers()) + " new and " + some(counts.changedWorkers(), "changed worker"));
        } else if (counts.newWorkers() > 0) {
            things.add(some(counts.newWorkers(), "worker"));
        } else if (counts.changedWorkers() > 0) {
            things.add(some(counts.changedWorkers(), "changed worker"));
        }
        if (counts.newTests() > 0) {
            things.add(some(counts.newTests(), "test"));
        }
        if (counts.newDecisions() > 0) {
            things.add(some(counts.newDecisions(), "decision"));
        }
        String last = things.removeLast();
        return things.isEmpty() ? last : String.join(", ", things) + " and " + last;
    }

    private static boolean isOne(ImportCounts counts) {
        return counts.newWorkers() + counts.changedWorkers() + counts.newTests() + counts.newDecisions() == 1;
    }

    private static String leftOut(ImportCounts counts, String one, String several) {
        return switch (counts.rowsLeftOut()) {
            case 0 -> "no row " + one + " left out";
            case 1 -> "1 row " + one + " left out";
            default -> digits(counts.rowsLeftOut()) + " rows " + several + " left out";
        };
    }

    /** {@code The new tests bear on earlier findings: 3 determinations about 2 workers would come out otherwise.} */
    static String lateChanges(List<DeterminationChange> changes) {
        long workers =
                changes.stream().map(DeterminationChange::workerId).distinct().count();
        long sent =
                changes.stream().filter(change -> change.sent().isAnything()).count();
        return "The new tests bear on earlier findings: " + some(changes.size(), "determination") + " about "
                + some(workers, "worker") + " would come out otherwise. "
                + (sent == 0
                        ? "No notice was given and no case recorded on any of these."
                        : "On " + digits(sent)
                                + " of these a notice was given or a case recorded: that stands as it is,"
                                + " and the change waits for a person once the files are stored.")
                + " What was determined before is kept.";
    }

    /** What an import is doing. */
    static String phase(Phase phase) {
        return switch (phase) {
            case READING -> "Reading the files once more";
            case STORING_WORKERS -> "Storing the workers";
            case STORING_TESTS -> "Storing the tests";
            case STORING_DECISIONS -> "Storing the decisions";
            case JUDGING -> "Working out what each worker's tests show";
        };
    }

    /** {@code 500 of 2,911}, or nothing where the whole is not known. */
    static String howFar(int done, int total) {
        return total == 0 ? "" : digits(done) + " of " + digits(total);
    }

    /** {@code 1 minute 5 seconds}. */
    static String howLong(Duration duration) {
        long minutes = duration.toMinutes();
        String seconds = some(duration.toSecondsPart(), "second");
        return minutes == 0 ? seconds : some(minutes, "minute") + " " + seconds;
    }

    static String some(long number, String thing) {
        return digits(number) + " " + thing + (number == 1 ? "" : "s");
    }

    static String digits(long number) {
        return String.format(Locale.ENGLISH, "%,d", number);
    }
}
