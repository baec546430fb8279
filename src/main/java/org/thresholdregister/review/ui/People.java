package org.thresholdregister.review.ui;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.Paths;

/** How a list names a worker. */
public final class People {

    private People() {}

    /** {@code Rowan Hale}, or the number where no name is on file. */
    public static String name(String givenName, String familyName, String workerId) {
        String name = (givenName + " " + familyName).strip();
        return name.isEmpty() ? workerId : name;
    }

    /** Name over number, leading to the worker's page. */
    public static ListCell cell(String givenName, String familyName, String workerId) {
        return ListCell.link(name(givenName, familyName, workerId), Paths.worker(workerId))
                .withNote(workerId);
    }

    /** Name over number and place, where the list has no column for the place. */
    public static ListCell cell(String givenName, String familyName, String workerId, String site, String department) {
        String numberAndPlace = Stream.of(workerId, department, site)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining(", "));
        return cell(givenName, familyName, workerId).withNote(numberAndPlace);
    }
}
