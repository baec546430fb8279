package org.thresholdregister.review.ui;

import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.function.SerializableRunnable;
import com.vaadin.flow.router.RouteConfiguration;
import java.util.List;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.BoardService;

/** What can be done with the rows that are chosen, and how many they are. */
class BulkBar extends Div {

    private final Span number = new Span();
    private final List<Button> forChosen;
    private final Button all = new Button();

    /** What the buttons do. */
    record Actions(
            SerializableRunnable settle,
            SerializableRunnable book,
            SerializableRunnable postpone,
            SerializableRunnable write,
            SerializableRunnable chooseAll,
            SerializableRunnable chooseNone) {}

    BulkBar(Actions actions, Anchor download) {
        addClassNames("tr-bulk", "tr-screen-only");
        getElement().setAttribute("role", "group");
        getElement().setAttribute("aria-label", "What is done with the rows chosen");
        number.getElement().setAttribute("role", "status");
        number.addClassName("tr-bulk-number");
        var settle = new Button("Mark as done", click -> actions.settle().run());
        settle.addThemeVariants(ButtonVariant.PRIMARY);
        var book = new Button("Book retests", click -> actions.book().run());
        var postpone = new Button("Put off", click -> actions.postpone().run());
        var none = new Button("Choose none", click -> actions.chooseNone().run());
        none.addThemeVariants(ButtonVariant.TERTIARY);
        all.addClickListener(click -> actions.chooseAll().run());
        all.addThemeVariants(ButtonVariant.TERTIARY);
        var print = new Button("Print", click -> UI.getCurrent().getPage().executeJs("window.print()"));
        print.addThemeVariants(ButtonVariant.TERTIARY);
        var write = new Button("Write letters", click -> actions.write().run());
        write.setVisible(RouteConfiguration.forApplicationScope().isPathAvailable(Paths.LETTERS));
        forChosen = List.of(settle, book, postpone, write, none);
        add(number, settle, book, postpone, write, all, none, print, download);
        show(0, 0);
    }

    /** Says how many are chosen of how many. */
    void show(int chosen, int listed) {
        number.setText(chosen == 0 ? "No row is chosen." : Counted.of(chosen, "row is", "rows are") + " chosen.");
        forChosen.forEach(button -> button.setEnabled(chosen > 0));
        all.setText(
                listed <= BoardService.MOST_AT_ONCE
                        ? "Choose all " + listed
                        : "Choose the first " + BoardService.MOST_AT_ONCE);
        all.setVisible(listed > 0);
    }
}
