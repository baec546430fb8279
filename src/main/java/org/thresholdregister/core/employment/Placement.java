package org.thresholdregister.core.employment;

import java.util.List;
import java.util.stream.Collectors;

/** Where someone works and as what. Texts that are not given are empty. */
public record Placement(String site, String department, String jobTitle) {

    public static final Placement NOT_GIVEN = new Placement("", "", "");

    /** {@code grinder, Cold End, Fernhollow Works}: what is given of it, the job first; may be empty. */
    public String inWords() {
        return List.of(jobTitle, department, site).stream()
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
    }
}
