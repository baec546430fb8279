package org.thresholdregister.core.rules;

import org.thresholdregister.core.shift.Limit;
import org.thresholdregister.core.shift.ShiftCriterion;

/** Which shifts that stand have to be recorded or reported, and by when. */
public sealed interface RecordingRule {

    /**
     * By when a case is recorded or reported, counted from the test that settled it.
     *
     * @param byRetest whether that was a retest
     * @throws IllegalStateException where nothing is recorded
     */
    Deadline deadline(boolean byRetest);

    /** The rule set keeps no log of cases. */
    record None() implements RecordingRule {
        @Override
        public Deadline deadline(boolean byRetest) {
            throw new IllegalStateException("nothing is recorded");
        }
    }

    /**
     * A shift from the recording reference, age allowance included, together with a mean level at 2000, 3000 and 4000
     * Hz in the same ear, never age-corrected. A case becomes the reference of the next one.
     *
     * @param afterRetest counted from the retest that settled it
     * @param withoutRetest counted from the test, where there was no retest
     */
    record ShiftAndLevel(Limit level, Deadline afterRetest, Deadline withoutRetest) implements RecordingRule {
        @Override
        public Deadline deadline(boolean byRetest) {
            return byRetest ? afterRetest : withoutRetest;
        }
    }

    /**
     * A large shift from the first baseline, or from one revised for better hearing, age allowance included. The
     * reference stays where it is; a loss that was reported is not reported again.
     */
    record LargeShift(ShiftCriterion.Mean criterion, Deadline deadline) implements RecordingRule {
        @Override
        public Deadline deadline(boolean byRetest) {
            return deadline;
        }
    }
}
