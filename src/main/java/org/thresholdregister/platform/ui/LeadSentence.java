package org.thresholdregister.platform.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;

/**
 * The sentence a page opens with, in which the numbers are links:
 * {@code new LeadSentence().link("3 retests", "today?due=retest").text(" are due this week.")}.
 */
public class LeadSentence extends Paragraph {

    public LeadSentence() {
        addClassName("tr-lead");
    }

    public LeadSentence(String sentence) {
        this();
        text(sentence);
    }

    /** Adds words, spaces included. */
    public LeadSentence text(String words) {
        add(new Span(words));
        return this;
    }

    /** Adds words that lead to the list they count; {@code path} is relative to the application. */
    public LeadSentence link(String words, String path) {
        add(new Anchor(path, words));
        return this;
    }
}
