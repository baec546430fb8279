package org.thresholdregister.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import org.thresholdregister.core.wording.MeaningChapter;
import org.thresholdregister.review.WhatItMeans;

/**
 * What the latest test means beyond the shift, closed until somebody asks. It is worked out when it is opened, since
 * few who come for a shift or a date need it.
 */
class MeaningSection extends Section {

    private final transient WhatItMeans meaning;
    private final Div content = new Div();

    MeaningSection(WhatItMeans meaning) {
        this.meaning = meaning;
        addClassName("tr-meaning");
        content.addClassName("tr-meaning-content");
        var details = new NativeDetails(new Span(meaning.testName()
                + ": handicap, grades, shapes, referral criteria, and people of the same age and noise"));
        details.setContent(content);
        details.addToggleListener(toggled -> fill());
        add(new H2("What the numbers mean"), details);
    }

    private void fill() {
        if (content.getComponentCount() > 0) {
            return;
        }
        meaning.leftOut().forEach(sentence -> content.add(new Paragraph(sentence)));
        meaning.chapters().forEach(chapter -> content.add(chapter(chapter)));
        content.add(new PopulationPart(meaning));
    }

    private static Component chapter(MeaningChapter chapter) {
        var list = new WorkingList(chapter.sentences());
        var part = new Div(new H3(chapter.heading()), list, isNot(chapter.isNot()));
        part.addClassName("tr-meaning-part");
        return part;
    }

    static Paragraph isNot(String words) {
        var line = new Paragraph(words);
        line.addClassName("tr-caution");
        return line;
    }
}
