package org.thresholdregister.platform.security;

import java.io.Serializable;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The sites whose records a person may see. A record with no site is seen only by those who see all sites. Every query
 * for records of workers takes one.
 */
public sealed interface SiteScope extends Serializable {

    /** Every site, and the records that name none. */
    record AllSites() implements SiteScope {}

    /** The named sites only, spelled as in the roster; none at all when empty. */
    record OnlySites(Set<String> names) implements SiteScope {
        public OnlySites {
            names = Set.copyOf(names);
        }
    }

    static SiteScope all() {
        return new AllSites();
    }

    static SiteScope only(Set<String> names) {
        return new OnlySites(names);
    }

    /** Whether a record of this site, or of no site where null, may be seen. */
    default boolean includes(@Nullable String site) {
        return switch (this) {
            case AllSites() -> true;
            case OnlySites(var names) -> site != null && names.contains(site);
        };
    }
}
