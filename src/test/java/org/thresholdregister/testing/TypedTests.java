package org.thresholdregister.testing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.audiometry.TestPurpose;

/** Tests as they are typed. */
public final class TypedTests {

    public static final TypedTest EMPTY = new TypedTest(
            TypedThresholds.NONE,
            TypedTest.USUAL_LIMIT,
            Optional.empty(),
            Optional.empty(),
            "",
            Optional.empty(),
            "",
            "",
            "",
            "",
            "",
            "");

    private TypedTests() {}

    /** The same text at every frequency of an ear, and no second reading. */
    static TypedThresholds thresholds(String right, String left) {
        List<String> texts = new ArrayList<>(Collections.nCopies(7, right));
        texts.add("");
        texts.addAll(Collections.nCopies(7, left));
        texts.add("");
        return new TypedThresholds(texts);
    }

    /** A test of this day, made by P. Marrowdale. */
    static TypedTest test(String day, TestPurpose purpose, String right, String left) {
        return new TypedTest(
                thresholds(right, left),
                TypedTest.USUAL_LIMIT,
                Optional.of(LocalDate.parse(day)),
                Optional.of(purpose),
                "14,5",
                Optional.of(false),
                "P. Marrowdale",
                "A-1",
                "supra-aural P-9",
                "Booth 2",
                "",
                "");
    }

    static TypedTest withReason(TypedTest test, String reason) {
        return new TypedTest(
                test.thresholds(),
                test.limit(),
                test.date(),
                test.purpose(),
                test.hours(),
                test.protectorsWorn(),
                test.tester(),
                test.instrument(),
                test.transducer(),
                test.room(),
                test.remark(),
                reason);
    }
}
