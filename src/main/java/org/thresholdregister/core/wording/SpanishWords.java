package org.thresholdregister.core.wording;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.OptionalInt;
import org.thresholdregister.core.audiometry.DecibelRange;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;
import org.thresholdregister.core.audiometry.MeanOfThree;
import org.thresholdregister.core.audiometry.TestPurpose;
import org.thresholdregister.core.audiometry.Threshold;
import org.thresholdregister.core.rules.Deadline;

/**
 * The Spanish words for the engine's values, for letters and what is drawn in them. Terms as the trade uses them in the
 * Spanish of the United States and Mexico (umbral auditivo, audiograma de referencia, cambio estándar del umbral); from
 * memory, a native reader's check is wanted.
 */
public final class SpanishWords {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d 'de' MMMM 'de' uuuu", Locale.of("es"));
    private static final DateTimeFormatter SHORT_DAY = DateTimeFormatter.ofPattern("d MMM uuuu", Locale.of("es"));

    private SpanishWords() {}

    /** {@code 9 de marzo de 2026}. */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /** {@code 9 mar 2026}. */
    public static String shortDay(LocalDate date) {
        return SHORT_DAY.format(date);
    }

    public static String ear(Ear ear) {
        return switch (ear) {
            case LEFT -> "oído izquierdo";
            case RIGHT -> "oído derecho";
        };
    }

    public static String ears(Ears ears) {
        return switch (ears) {
            case LEFT -> "oído izquierdo";
            case RIGHT -> "oído derecho";
            case BOTH -> "ambos oídos";
        };
    }

    public static String purpose(TestPurpose purpose) {
        return switch (purpose) {
            case BASELINE -> "prueba de referencia";
            case ANNUAL -> "prueba anual";
            case EXIT -> "prueba de salida";
            case RETEST -> "prueba de repetición";
            case OTHER -> "otra prueba";
        };
    }

    /** What a rule set calls a shift, from its name in English; a name that is not known here gives the general word. */
    public static String shift(String name) {
        return switch (name) {
            case "standard threshold shift" -> "cambio estándar del umbral auditivo";
            case "significant threshold shift" -> "cambio significativo del umbral auditivo";
            case "rapid hearing loss" -> "pérdida auditiva rápida";
            case "abnormal shift" -> "cambio anormal del umbral auditivo";
            default -> "cambio del umbral auditivo";
        };
    }

    public static String threshold(Threshold threshold) {
        return switch (threshold) {
            case Threshold.Measured measured -> measured.level().decibels() + " dB HL";
            case Threshold.NoResponse noResponse ->
                noResponse
                        .limit()
                        .map(limit -> "sin respuesta a " + limit.decibels() + " dB HL")
                        .orElse("sin respuesta, nivel no indicado");
            case Threshold.NotTested notTested ->
                switch (notTested.reason()) {
                    case NOT_GIVEN, DID_NOT_TEST -> "sin medir";
                    case COULD_NOT_TEST -> "no se pudo medir";
                };
        };
    }

    /** For a table cell, as {@link Words#thresholdCell}. */
    public static String thresholdCell(Threshold threshold) {
        return threshold instanceof Threshold.NotTested ? threshold(threshold) : Words.thresholdCell(threshold);
    }

    /** {@code 11.67 dB}, with a decimal point as in Mexico and the United States. */
    static String mean(DecibelRange sum) {
        OptionalInt exact = sum.exact();
        if (exact.isPresent()) {
            return MeanOfThree.ofSum(exact.getAsInt()) + " dB";
        }
        if (sum.lowest().isPresent()) {
            return MeanOfThree.ofSum(sum.lowest().getAsInt()) + " dB o más";
        }
        return sum.highest().isPresent() ? MeanOfThree.ofSum(sum.highest().getAsInt()) + " dB o menos" : "no se conoce";
    }

    /** {@code 21 días}, {@code 10 días hábiles}. */
    static String deadline(Deadline deadline) {
        return switch (deadline) {
            case Deadline.CalendarDays calendar -> Counted.of(calendar.days(), "día", "días");
            case Deadline.WorkingDays working -> Counted.of(working.days(), "día hábil", "días hábiles");
            case Deadline.Months months -> Counted.of(months.months(), "mes", "meses");
        };
    }
}
