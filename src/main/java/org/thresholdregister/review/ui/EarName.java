package org.thresholdregister.review.ui;

import com.vaadin.flow.component.html.Span;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.wording.Words;

/** An ear's name with the symbol and colour that it has in the drawing. */
public class EarName extends Span {

    public EarName(Ear ear) {
        super(Words.capitalised(Words.ear(ear)));
        addClassNames("tr-ear", "tr-ear--" + ear.word());
    }
}
