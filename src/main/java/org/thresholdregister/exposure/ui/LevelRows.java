package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.textfield.TextField;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.thresholdregister.core.noise.NoiseDay;
import org.thresholdregister.core.noise.NoisePeriod;
import org.thresholdregister.core.noise.SoundLevel;

/** Rows of a level in dBA and the hours spent in it. */
class LevelRows extends Div {

    private static final int ROWS = 6;
    private static final int MOST_HOURS = 24;

    private record Row(TextField level, TextField hours) {}

    private final transient List<Row> rows = new ArrayList<>();

    LevelRows() {
        addClassName("tr-pairs");
        for (int i = 1; i <= ROWS; i++) {
            var row = new Row(Numbers.field("Level " + i + " (dBA)"), Numbers.field("Hours at level " + i));
            rows.add(row);
            add(row.level(), row.hours());
        }
    }

    /** The day that the rows make; empty where a field says what is wrong with it. */
    Optional<NoiseDay> read() {
        boolean fits = true;
        List<NoisePeriod> periods = new ArrayList<>();
        BigDecimal together = BigDecimal.ZERO;
        for (Row row : rows) {
            boolean first = row.equals(rows.getFirst());
            boolean level = Numbers.fits(
                    row.level(),
                    (int) SoundLevel.HIGHEST_DBA,
                    first || !row.hours().isEmpty());
            boolean hours =
                    Numbers.fits(row.hours(), MOST_HOURS, first || !row.level().isEmpty());
            if (level && hours && !row.hours().isEmpty()) {
                BigDecimal spent = Numbers.of(row.hours()).orElseThrow();
                together = together.add(spent);
                if (spent.signum() == 0) {
                    Numbers.complain(row.hours(), "More than 0 hours.");
                    fits = false;
                } else if (together.compareTo(NoisePeriod.HOURS_OF_A_DAY) > 0) {
                    Numbers.complain(row.hours(), "All hours together are more than a day of 24.");
                    fits = false;
                } else {
                    periods.add(new NoisePeriod(
                            SoundLevel.ofDba(
                                    Numbers.of(row.level()).orElseThrow().doubleValue()),
                            spent));
                }
            }
            fits &= level && hours;
        }
        return fits ? Optional.of(new NoiseDay(periods)) : Optional.empty();
    }

    /** What was typed, for the address of a page: {@code 92x4-85x4}. */
    String typed() {
        return rows.stream()
                .filter(row -> !row.level().isEmpty() || !row.hours().isEmpty())
                .map(row -> row.level().getValue() + "x" + row.hours().getValue())
                .collect(Collectors.joining("-"));
    }

    /** Fills the rows from what stands in an address; what is no row is left out. */
    void show(String typed) {
        String[] given = typed.split("-", -1);
        for (int i = 0; i < ROWS; i++) {
            String[] parts = i < given.length ? given[i].split("x", -1) : new String[0];
            rows.get(i).level().setValue(parts.length == 2 ? parts[0] : "");
            rows.get(i).hours().setValue(parts.length == 2 ? parts[1] : "");
        }
    }
}
