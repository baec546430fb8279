package org.thresholdregister.testing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * A test as it is typed, right or wrong. Texts that are not given are empty.
 *
 * @param limit the loudest tone of the instrument in dB HL, as typed: what the key for no response writes
 * @param hours away from workplace noise before the test, as typed
 * @param protectorsWorn whether hearing protectors stood in for the quiet time
 * @param reason why a test on record is superseded; empty for a new test
 */
public record TypedTest(
        TypedThresholds thresholds,
        String limit,
        Optional<LocalDate> date,
        Optional<TestPurpose> purpose,
        String hours,
        Optional<Boolean> protectorsWorn,
        String tester,
        String instrument,
        String transducer,
        String room,
        String remark,
        String reason) {

    /** The loudest tone of most screening audiometers at the test frequencies in dB HL (common practice). */
    public static final String USUAL_LIMIT = "95";

    /** The most characters of the texts that say who made the test, and with what. */
    public static final int LONGEST_NAME = 200;

    /** The most characters of the remark and of the reason. */
    public static final int LONGEST_TEXT = 2000;

    /** The most characters of the limit. */
    public static final int LONGEST_LIMIT = 8;

    /** The most characters of the hours. */
    public static final int LONGEST_HOURS = 40;

    /** @throws IllegalArgumentException for a text longer than its field lets in */
    public TypedTest {
        if (limit.length() > LONGEST_LIMIT
                || hours.length() > LONGEST_HOURS
                || List.of(tester, instrument, transducer, room).stream().anyMatch(text -> text.length() > LONGEST_NAME)
                || remark.length() > LONGEST_TEXT
                || reason.length() > LONGEST_TEXT) {
            throw new IllegalArgumentException("a text of a typed test is longer than its field");
        }
    }

    public TypedTest withThresholds(TypedThresholds changed, String changedLimit) {
        return new TypedTest(
                changed,
                changedLimit,
                date,
                purpose,
                hours,
                protectorsWorn,
                tester,
                instrument,
                transducer,
                room,
                remark,
                reason);
    }
}
