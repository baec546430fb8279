package org.thresholdregister.core.baseline;

import java.time.LocalDate;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.Ear;

/**
 * A move of one ear's baseline, proposed or decided.
 *
 * @param from the old baseline
 * @param to the new baseline
 * @param after the last test that cannot be judged on the new baseline yet: the one that completes the evidence, or the
 *     new baseline itself
 * @param decidedOn the day of decision; tests up to it stand as they were judged
 * @param evidence the days of the tests that it rests on
 */
public record BaselineChange(
        Ear ear,
        Kind kind,
        Audiogram from,
        Audiogram to,
        Audiogram after,
        LocalDate decidedOn,
        List<LocalDate> evidence) {

    /** Why the baseline moves. */
    public enum Kind {
        /** Hearing was better on two tests running. */
        PERSISTENT_IMPROVEMENT("better"),
        /** A standard threshold shift lasted. */
        PERSISTENT_SHIFT("worse"),
        /** A person chose another audiogram. */
        DECIDED("decided");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The word used in files. */
        public String word() {
            return word;
        }
    }

    /** Whether this test is compared with the new baseline. */
    public boolean appliesTo(Audiogram test) {
        return Audiogram.CHRONOLOGICAL.compare(after, test) < 0
                && (kind != Kind.DECIDED || test.date().isAfter(decidedOn));
    }

    /** Whether the other change is the same person's choice. */
    public boolean isSameDecision(BaselineChange other) {
        return kind == Kind.DECIDED
                && other.kind == Kind.DECIDED
                && to.equals(other.to)
                && decidedOn.equals(other.decidedOn);
    }

    /** Whether the new baseline shows better hearing than the old one: a lower sum of plain levels. */
    public boolean isForBetterHearing() {
        return switch (kind) {
            case PERSISTENT_IMPROVEMENT -> true;
            case PERSISTENT_SHIFT -> false;
            case DECIDED -> {
                var before = from.levelSum(ear).exact();
                var now = to.levelSum(ear).exact();
                yield before.isPresent() && now.isPresent() && now.getAsInt() < before.getAsInt();
            }
        };
    }
}
