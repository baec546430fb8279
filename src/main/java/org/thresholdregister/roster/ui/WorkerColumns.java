package org.thresholdregister.roster.ui;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.thresholdregister.platform.query.Order;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.roster.WorkerColumn;
import org.thresholdregister.roster.WorkerRow;

/** The columns of the list of workers. */
final class WorkerColumns {

    private WorkerColumns() {}

    static List<ListColumn<WorkerRow, WorkerColumn>> asOf(LocalDate today) {
        return List.of(
                ListColumn.of("Name", WorkerColumn.NAME, 10, WorkerColumns::name),
                ListColumn.of("Number", WorkerColumn.WORKER_ID, 6, row -> ListCell.figures(row.workerId())),
                ListColumn.of("Department", WorkerColumn.DEPARTMENT, 8, row -> ListCell.text(row.department())),
                ListColumn.of("Site", WorkerColumn.SITE, 8, row -> ListCell.text(row.site())),
                ListColumn.of("Job", WorkerColumn.JOB_TITLE, 8, row -> ListCell.text(row.jobTitle())),
                ListColumn.of("Status", WorkerColumn.END_DATE, 8, row -> status(row, today)));
    }

    static Map<String, Order<WorkerColumn>> orders() {
        Map<String, Order<WorkerColumn>> orders = new LinkedHashMap<>();
        orders.put("name", Order.ascending(WorkerColumn.NAME));
        orders.put("number", Order.ascending(WorkerColumn.WORKER_ID));
        orders.put("department", Order.ascending(WorkerColumn.DEPARTMENT));
        orders.put("site", Order.ascending(WorkerColumn.SITE));
        orders.put("job", Order.ascending(WorkerColumn.JOB_TITLE));
        orders.put("hired last", Order.descending(WorkerColumn.HIRE_DATE));
        orders.put("left first", Order.ascending(WorkerColumn.END_DATE));
        return orders;
    }

    private static ListCell name(WorkerRow row) {
        String name = row.familyName() + (row.givenName().isEmpty() ? "" : ", " + row.givenName());
        return ListCell.link(name.isBlank() ? row.workerId() : name, Paths.worker(row.workerId()));
    }

    private static ListCell status(WorkerRow row, LocalDate today) {
        if (row.hasLeftBy(today)) {
            return ListCell.text("left " + row.endDate().map(Dates::onScreen).orElse(""));
        }
        return ListCell.text(row.endDate()
                .map(last -> "employed until " + Dates.onScreen(last))
                .orElse("employed"));
    }
}
