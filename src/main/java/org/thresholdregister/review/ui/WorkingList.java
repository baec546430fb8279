package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.dom.Element;
import java.util.List;
import org.thresholdregister.core.wording.Sentence;

/** A working, sentence by sentence, each with what it rests on. */
class WorkingList extends OrderedList {

    WorkingList(List<Sentence> sentences) {
        addClassName("tr-working");
        sentences.forEach(sentence -> add(item(sentence)));
    }

    static ListItem item(Sentence sentence) {
        var item = new ListItem(sentence.text());
        sentence.basis().ifPresent(basis -> {
            item.add(new Span(" "));
            item.getElement().appendChild(new Element("cite").setText(basis.place()));
        });
        return item;
    }
}
