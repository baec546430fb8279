package org.thresholdregister.core.programme;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.audiometry.TestPurpose;

/**
 * One person's tests as the analysis takes them: the tests of record, one after the other, without retests, which would
 * make the programme look steadier than it is.
 *
 * @param tests in order of time
 * @param shifted whether a shift of this person was ever found and not taken back
 */
public record Member(List<Audiogram> tests, boolean shifted) {

    private static final Set<TestPurpose> OF_RECORD =
            Set.of(TestPurpose.BASELINE, TestPurpose.ANNUAL, TestPurpose.EXIT);

    public Member {
        tests = List.copyOf(tests);
    }

    /** @param measured all tests of a person that were not set aside, in any order */
    public static Member of(List<Audiogram> measured, boolean shifted) {
        return new Member(
                measured.stream()
                        .filter(test -> OF_RECORD.contains(test.purpose()))
                        .sorted(Audiogram.CHRONOLOGICAL)
                        .toList(),
                shifted);
    }

    /** Each test with the one before it, in order of time. */
    public List<TestPair> pairs() {
        List<TestPair> pairs = new ArrayList<>();
        for (int i = 1; i < tests.size(); i++) {
            pairs.add(new TestPair(tests.get(i - 1), tests.get(i)));
        }
        return pairs;
    }
}
