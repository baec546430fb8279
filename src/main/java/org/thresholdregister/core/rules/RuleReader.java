package org.thresholdregister.core.rules;

import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.Ears;

/** Reads rules from a test. */
public final class RuleReader {

    private RuleReader() {}

    /** What the rules say of the test, rule by rule, the left ear before the right. */
    public static List<Finding> read(List<Rule> rules, TestSeen seen) {
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : rules) {
            switch (rule.criterion()) {
                case Criterion.OfEar ofEar -> {
                    for (Ear ear : Ear.values()) {
                        ofEar.read(seen, ear)
                                .ifPresent(
                                        reading -> findings.add(new Finding(seen.test(), Ears.of(ear), rule, reading)));
                    }
                }
                case Criterion.OfPerson ofPerson ->
                    ofPerson.read(seen)
                            .ifPresent(reading -> findings.add(new Finding(seen.test(), Ears.BOTH, rule, reading)));
            }
        }
        return findings;
    }
}
