package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;
import java.util.Optional;

/**
 * What another feature adds to the page on which a test is entered: a bean that the page finds. It is asked once each time
 * the page is shown, and calls services, which check the role. What it stores is its own, under the draft's key while the
 * test is being typed; when the test is signed, {@code audiograms.TestSigned} names the draft that it was signed from.
 */
public interface TestPagePart {

    /** Its place among what is added, the smallest first. */
    int place();

    /**
     * The part of the page, headed by an {@code H2}; empty where there is nothing to add for this worker. It stands below
     * the thresholds and the facts of the test, and must never take the focus by itself.
     *
     * @param workerId the worker's number
     * @param draftKey the register's own key of the draft that is being typed
     */
    Optional<Component> of(String workerId, long draftKey);
}
