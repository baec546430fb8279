package org.thresholdregister.core.rules;

import java.util.List;
import org.thresholdregister.core.regulation.Answer;

/**
 * What a criterion found: the verdict and the numbers that it rests on.
 *
 * @param rows the rows of a table for age and sex that were read; all that remain possible where they are not known
 */
public record Reading(Verdict verdict, List<Quantity> quantities, List<SumTable.Row> rows) {

    public Reading {
        quantities = List.copyOf(quantities);
        rows = List.copyOf(rows);
    }

    Reading(Verdict verdict, List<Quantity> quantities) {
        this(verdict, quantities, List.of());
    }

    static Reading of(Answer answer, Quantity... quantities) {
        return new Reading(new Verdict.Answered(answer), List.of(quantities));
    }

    /** Yes as soon as one is; all numbers are kept. */
    static Reading anyOf(List<Reading> readings) {
        return new Reading(
                new Verdict.Answered(Answer.anyOf(readings.stream().map(Reading::answer))), quantitiesOf(readings));
    }

    static List<Quantity> quantitiesOf(List<Reading> readings) {
        return readings.stream().flatMap(reading -> reading.quantities.stream()).toList();
    }

    Answer answer() {
        return switch (verdict) {
            case Verdict.Answered answered -> answered.answer();
            case Verdict.Category category ->
                throw new IllegalStateException("a category is neither yes nor no: " + category);
        };
    }
}
