package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import java.util.List;
import org.thresholdregister.core.wording.Sentence;

/** A working, step by step, each with its paragraph. */
class Steps extends OrderedList {

    Steps(List<Sentence> sentences) {
        sentences.forEach(sentence -> add(new ListItem(sentence.withBasis())));
    }
}
