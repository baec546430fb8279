package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.OrderedList;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.attenuation.AttenuationMethod;
import org.thresholdregister.core.attenuation.Estimate;
import org.thresholdregister.core.attenuation.ProtectionTarget;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.StateBadge.Kind;

/** What every method says of a protector in a noise: a level and whether it reaches the target, and the workings. */
class EstimateTable extends Div {

    /** @param chosen the method that the site's employer picked, which is marked */
    EstimateTable(
            String caption, List<Estimate> estimates, ProtectionTarget target, Optional<AttenuationMethod> chosen) {
        addClassName("tr-estimates");
        List<Estimate> levels =
                estimates.stream().filter(Estimate.Estimated.class::isInstance).toList();
        List<Estimate.Unavailable> none = estimates.stream()
                .filter(Estimate.Unavailable.class::isInstance)
                .map(Estimate.Unavailable.class::cast)
                .toList();
        if (!levels.isEmpty()) {
            add(new ListTable<>(caption, columns(target, chosen), levels, row -> {}));
            add(details("How each is worked out", workings(levels)));
        }
        if (!none.isEmpty()) {
            add(details(
                    levels.isEmpty() ? "No method gives a level: why not" : "Methods that give no level here, and why",
                    reasons(none)));
        }
    }

    private static List<ListColumn<Estimate, ?>> columns(ProtectionTarget target, Optional<AttenuationMethod> chosen) {
        return List.of(
                ListColumn.unordered(
                        "Method",
                        16,
                        row -> ListCell.text(ProtectionWords.method(row.method()))
                                .withNote(
                                        chosen.filter(row.method()::equals).isPresent()
                                                ? "picked by the employer"
                                                : ProtectionWords.mark(row.method()))),
                ListColumn.unordered(
                        "Under the protector (dBA)",
                        8,
                        row -> row instanceof Estimate.Estimated level
                                ? ListCell.figures(ProtectionWords.decibels(level.levelUnder()))
                                : ListCell.EMPTY),
                ListColumn.unordered("Target", 8, row -> reached(row, target)),
                ListColumn.unordered(
                        "Source", 14, row -> ListCell.text(row.method().basis().place())));
    }

    private static ListCell reached(Estimate row, ProtectionTarget target) {
        if (target instanceof ProtectionTarget.NotNamed) {
            return ListCell.text("none named");
        }
        Kind kind = switch (target.isReachedBy(row)) {
            case YES -> Kind.DONE;
            case NO -> Kind.OVERDUE;
            case UNDECIDED -> Kind.UNDECIDED;
        };
        return ListCell.state(kind, ProtectionWords.reached(row, target));
    }

    private static NativeDetails details(String summary, OrderedList list) {
        list.addClassName("tr-working");
        return new NativeDetails(summary, list);
    }

    private static OrderedList workings(List<Estimate> levels) {
        var list = new OrderedList();
        for (Estimate estimate : levels) {
            if (estimate instanceof Estimate.Estimated level) {
                var item = new ListItem(new Span(ProtectionWords.method(level.method()) + ": "
                        + ProtectionWords.working(level).withBasis()));
                level.notes().forEach(note -> item.add(new Span(" " + ProtectionWords.note(note, level))));
                list.add(item);
            }
        }
        return list;
    }

    private static OrderedList reasons(List<Estimate.Unavailable> none) {
        var list = new OrderedList();
        none.forEach(estimate -> list.add(
                new ListItem(ProtectionWords.method(estimate.method()) + ": " + ProtectionWords.missing(estimate))));
        return list;
    }

    static Anchor calculator() {
        return new Anchor(CalculatorView.ROUTE, "Calculate for another protector or noise");
    }
}
