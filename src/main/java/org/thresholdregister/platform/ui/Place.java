package org.thresholdregister.platform.ui;

import java.util.Optional;

/** Where people work, in words. */
public final class Place {

    private Place() {}

    /** A site or department as it stands in a list, where an empty name stands for none. */
    public static String name(String name) {
        return name.isEmpty() ? "none given" : name;
    }

    /** What a filter adds to a sentence: {@code  in Hot End at Fernhollow Works}, or nothing. */
    public static String phrase(Optional<String> site, Optional<String> department) {
        return department
                        .map(name -> name.isEmpty() ? " without a department" : " in " + name)
                        .orElse("")
                + site.map(name -> name.isEmpty() ? " without a site" : " at " + name)
                        .orElse("");
    }
}
