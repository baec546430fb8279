package org.thresholdregister.testdays;

import java.util.List;
import org.thresholdregister.core.scheduling.WorkShift;

/**
 * A shift of a site and who works it.
 *
 * @param departments whose people work it unless they have one of their own; an empty name stands for none given
 * @param workers how many have it as their own
 */
public record SiteShift(long key, String site, WorkShift shift, List<String> departments, int workers) {

    public SiteShift {
        departments = List.copyOf(departments);
    }
}
