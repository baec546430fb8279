package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.review.WorkerRecord;

/**
 * What another feature adds to a worker's page: a bean that the page finds. It is asked each time the page is shown, and
 * calls services, which check the role.
 */
public interface WorkerSection {

    /** Its place among what is added, the smallest first. */
    int place();

    /** The part of the page, headed by an {@code H2}; empty where there is nothing for this user to see or do. */
    Optional<Component> of(WorkerRecord record);

    /** Links to what can be done for this worker, shown under the first sentence. */
    default List<Anchor> actions(WorkerRecord record) {
        return List.of();
    }
}
