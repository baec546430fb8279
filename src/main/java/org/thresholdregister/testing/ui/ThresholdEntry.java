package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.dom.DomEvent;
import com.vaadin.flow.function.SerializableConsumer;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.List;
import org.thresholdregister.testing.TypedTest;
import org.thresholdregister.testing.TypedThresholds;

/** The fields for the thresholds; what is typed lives in the browser and arrives here with each change. */
@Tag("threshold-entry")
class ThresholdEntry extends Component {

    private static final String DETAIL = "event.detail";

    /**
     * What the browser hands over.
     *
     * @param revision the number by which its arrival is told; 0 where it is not waited for
     */
    record State(int revision, List<String> values, String limit) {

        TypedTest in(TypedTest typed) {
            return typed.withThresholds(new TypedThresholds(values), limit);
        }
    }

    /** What is known of a threshold from before; empty where nothing is. */
    record Before(String last, String baseline) {}

    /** @param before one for each field, in the order of {@link TypedThresholds} */
    ThresholdEntry(long draftKey, TypedTest typed, List<Before> before) {
        getElement().setProperty("draft", draftKey);
        getElement().setPropertyList("compared", before);
        getElement().setPropertyBean("start", new State(0, typed.thresholds().texts(), typed.limit()));
    }

    @Override
    protected void onAttach(AttachEvent attached) {
        attached.getUI().getPage().addJsModule("context://js/threshold-entry.js");
    }

    /** Puts something beneath the fields, where it is seen while typing. */
    void addBeneath(Component component) {
        getElement().appendChild(component.getElement());
    }

    /** Takes each state that arrives, and tells the browser so once it has been kept. */
    void onTyped(SerializableConsumer<State> keep) {
        listen("thresholds-typed", state -> {
            keep.accept(state);
            getElement().setProperty("arrived", state.revision());
        });
    }

    /** Is told when the keyboard asks to sign. */
    void onSign(SerializableConsumer<State> sign) {
        listen("test-sign", sign);
    }

    /** Is told when Enter was pressed in the last field. */
    void onDone(SerializableRunnable done) {
        getElement().addEventListener("thresholds-done", event -> done.run());
    }

    /** Leads to the first field that cannot stand as it is. */
    void focusFirstWrong() {
        getElement().callJsFunction("focusFirstWrong");
    }

    private void listen(String event, SerializableConsumer<State> listener) {
        getElement()
                .addEventListener(event, (DomEvent told) -> listener.accept(told.getEventDetail(State.class)))
                .addEventData(DETAIL);
    }
}
