package org.thresholdregister.batch;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import org.thresholdregister.core.aging.AgeAllowance;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Frequency;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.baseline.BaselineRevision;
import org.thresholdregister.core.judging.Determination;
import org.thresholdregister.core.judging.Determination.Judged;
import org.thresholdregister.core.judging.JudgingOptions;
import org.thresholdregister.core.recording.Recording;
import org.thresholdregister.core.shift.ThresholdShift;

/** {@code determinations.csv}: one row for each judged or baseline test and ear. */
final class DeterminationsFile implements Closeable {

    private static final String[] COLUMNS = {
        "worker_id",
        "test_date",
        "purpose",
        "ear",
        "rule_set",
        "baseline_date",
        "age_baseline",
        "age_test",
        "shift_2000",
        "shift_3000",
        "shift_4000",
        "allowance_2000",
        "allowance_3000",
        "allowance_4000",
        "average_shift",
        "sts",
        "average_level",
        "outcome",
        "recordable",
        "retest_by",
        "notify_by",
        "record_by"
    };
    private static final String[] REFERENCE_COLUMNS = {"reference_date", "reference_shift"};

    private final CsvFile file;
    private final JudgingOptions options;
    private final boolean withReference;

    DeterminationsFile(Path path, JudgingOptions options) throws IOException {
        this.options = options;
        withReference = withReference(options);
        file = new CsvFile(path, columns(options));
    }

    static String[] columns(JudgingOptions options) {
        List<String> columns = new ArrayList<>(Arrays.asList(COLUMNS));
        if (withReference(options)) {
            columns.addAll(Arrays.asList(REFERENCE_COLUMNS));
        }
        return columns.toArray(String[]::new);
    }

    /** Whether the file says what the shift is measured from for the log. */
    static boolean withReference(JudgingOptions options) {
        return options.baselineRevision() == BaselineRevision.APPLY;
    }

    void write(String workerId, Determination determination) {
        List<String> cells = new ArrayList<>(COLUMNS.length + REFERENCE_COLUMNS.length);
        cells.add(workerId);
        cells.add(determination.test().date().toString());
        cells.add(determination.test().purpose().word());
        cells.add(determination.ear().word());
        cells.add(options.ruleSet().word());
        addShift(cells, determination.shift());
        cells.add(mean(determination.levelSum()));
        cells.add(determination.outcome().word());
        addAnswer(cells, determination);
        file.write(cells.toArray(String[]::new));
    }

    private static void addShift(List<String> cells, Optional<ThresholdShift> compared) {
        if (compared.isEmpty()) {
            for (int i = 0; i < 11; i++) {
                cells.add("");
            }
            return;
        }
        ThresholdShift shift = compared.get();
        AgeAllowance allowance = shift.allowance();
        cells.add(shift.earlier().date().toString());
        cells.add(number(allowance.ageAtBaseline()));
        cells.add(number(allowance.ageAtTest()));
        for (Frequency frequency : Frequency.AVERAGED) {
            cells.add(number(shift.at(frequency).uncorrected().exact()));
        }
        for (Frequency frequency : Frequency.AVERAGED) {
            cells.add(number(shift.at(frequency).allowance().exact()));
        }
        cells.add(mean(shift.sum()));
        cells.add(shift.isShift().name().toLowerCase(Locale.ROOT));
    }

    private void addAnswer(List<String> cells, Determination determination) {
        Optional<Judged> judged =
                determination instanceof Judged itself ? Optional.of(itself) : Optional.<Judged>empty();
        cells.add(judged.map(row -> row.recording().answer().word()).orElse(""));
        cells.add(date(judged.flatMap(row -> row.dueDates().retestBy())));
        cells.add(date(judged.flatMap(row -> row.dueDates().notifyBy())));
        cells.add(date(judged.flatMap(row -> row.dueDates().recordBy())));
        if (withReference) {
            Optional<Recording.Comparison> comparison =
                    judged.flatMap(row -> row.recording().comparison());
            cells.add(date(comparison.map(of -> of.reference().audiogram().date())));
            cells.add(comparison.map(of -> mean(of.shift().sum())).orElse(""));
        }
    }

    private static String number(OptionalInt number) {
        return number.isPresent() ? Integer.toString(number.getAsInt()) : "";
    }

    private static String mean(DecibelRange sum) {
        OptionalInt exact = sum.exact();
        return exact.isPresent() ? MeanOfThree.ofSum(exact.getAsInt()) : "";
    }

    private static String date(Optional<LocalDate> date) {
        return date.map(LocalDate::toString).orElse("");
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
