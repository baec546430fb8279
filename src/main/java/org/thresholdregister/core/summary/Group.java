package org.thresholdregister.core.summary;

import java.util.Optional;

/**
 * The workers that a count is about, by the words used in files: a site and a department, {@value #NONE} where the
 * roster names none, {@value #ALL} for a total.
 */
public record Group(String site, String department) {

    public static final String ALL = "(all)";
    public static final String NONE = "(none)";

    /** Everybody. */
    public static final Group EVERYBODY = new Group(ALL, ALL);

    /** The smallest group that a worker of this site and department belongs to. */
    public static Group of(Optional<String> site, Optional<String> department) {
        return new Group(site.orElse(NONE), department.orElse(NONE));
    }

    /** The whole site of this group. */
    public Group wholeSite() {
        return new Group(site, ALL);
    }

    public boolean isTotal() {
        return department.equals(ALL);
    }

    /** A whole site, and not everybody. */
    public boolean isWholeSite() {
        return isTotal() && !equals(EVERYBODY);
    }
}
