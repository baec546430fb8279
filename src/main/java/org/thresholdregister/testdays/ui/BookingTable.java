package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeTableCell;
import com.vaadin.flow.component.html.NativeTableRow;
import com.vaadin.flow.function.SerializableFunction;
import java.util.List;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.testdays.Booking;

/** A day's bookings, each with what can be done with it. */
class BookingTable extends ListTable<Booking> {

    BookingTable(
            List<ListColumn<Booking, ?>> columns,
            List<Booking> bookings,
            SerializableFunction<Booking, List<Button>> buttons) {
        super("In order of time", columns, bookings, row -> {});
        List<NativeTableRow> rows = getBody().getRows();
        getHead().getRows().getFirst().add(new NativeTableCell());
        for (int i = 0; i < bookings.size(); i++) {
            var actions = new Div(buttons.apply(bookings.get(i)).toArray(Component[]::new));
            actions.addClassName("tr-row-actions");
            var cell = new NativeTableCell(actions);
            cell.addClassName("tr-actions");
            rows.get(i).add(cell);
        }
    }
}
