package org.thresholdregister.core.validity;

import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;

/** A test and what there is to doubt about it; often nothing. */
public record TestFlags(Audiogram test, List<ValidityFlag> flags) {
    public TestFlags {
        flags = List.copyOf(flags);
    }
}
