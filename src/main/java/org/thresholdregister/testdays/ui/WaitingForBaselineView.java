package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.dialog.Dialog;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.scheduling.MobileUnitRule;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.DayField;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.testdays.AwaitsBaseline;
import org.thresholdregister.testdays.AwaitsBaselineService;

/** Who wears protectors until a mobile unit makes the baseline. */
@Route(TestDayPaths.WAITING)
@PageTitle("Protectors until the baseline · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class WaitingForBaselineView extends Div implements HealthRecordPage {

    private final transient AwaitsBaselineService waiting;
    private final boolean mayChange;
    private final LocalDate today;
    private final Message message = new Message();
    private final Div content = new Div();

    WaitingForBaselineView(AwaitsBaselineService waiting, CurrentUser currentUser, Clock clock) {
        this.waiting = waiting;
        this.mayChange = currentUser.role() == Role.NURSE;
        this.today = LocalDate.now(clock);
        add(new H1("Protectors until the baseline"), content);
        refresh();
    }

    private void refresh() {
        List<AwaitsBaseline> all = waiting.find();
        long open = all.stream().filter(row -> row.wornFrom().isEmpty()).count();
        content.removeAll();
        content.add(
                new LeadSentence(Counted.of(Math.toIntExact(open), "person has", "people have")
                        + " no protectors noted and no baseline, and the six months end within "
                        + AwaitsBaselineService.DAYS_AHEAD + " days or have ended."),
                new Paragraph("Where a mobile unit makes the tests, a baseline may come up to a year after the first"
                        + " exposure. From the end of the sixth month until then, protectors are worn. ["
                        + MobileUnitRule.PROTECTORS + "]"),
                message);
        content.add(
                all.isEmpty()
                        ? new EmptyHint(
                                "Nobody waits for a mobile unit that long.",
                                "People show here whose site is tested by a mobile unit, which a nurse sets on the"
                                        + " calendar page.")
                        : new ListTable<>("The earliest first", columns(), all, this::ask));
    }

    private List<ListColumn<AwaitsBaseline, ?>> columns() {
        List<ListColumn<AwaitsBaseline, ?>> columns = new ArrayList<>(List.of(
                ListColumn.unordered(
                        "Worker",
                        10,
                        row -> ListCell.link(row.name(), Paths.worker(row.workerId()))
                                .withNote(row.workerId())),
                ListColumn.unordered(
                        "Department", 8, row -> ListCell.text(row.department()).withNote(row.site())),
                ListColumn.unordered("Protectors from", 8, row -> ListCell.figures(Words.day(row.protectorsFrom()))),
                ListColumn.unordered("Baseline by", 8, row -> ListCell.figures(Words.day(row.baselineBy()))),
                ListColumn.unordered("State", 10, this::state)));
        if (mayChange) {
            columns.add(ListColumn.unordered(
                    "", 7, row -> ListCell.action("Worn since", "Note since when protectors are worn, " + row.name())));
        }
        return columns;
    }

    private ListCell state(AwaitsBaseline row) {
        return row.wornFrom()
                .map(day -> ListCell.state(StateBadge.Kind.DONE, "worn since " + Words.day(day)))
                .orElseGet(() -> ListCell.state(
                        row.protectorsFrom().isBefore(today) ? StateBadge.Kind.OVERDUE : StateBadge.Kind.OPEN,
                        "not noted"));
    }

    private void ask(AwaitsBaseline row) {
        var dialog = new Dialog("Protectors of " + row.name());
        dialog.setWidth("min(30rem, 100%)");
        DatePicker day = DayField.labelled("Worn since");
        day.setMax(today);
        day.setValue(today);
        var save = new Button("Note it", click -> {
            Optional<String> objection =
                    day.isEmpty() ? Optional.of("Choose the day.") : waiting.wornFrom(row.workerId(), day.getValue());
            day.setErrorMessage(objection.orElse(""));
            day.setInvalid(objection.isPresent());
            if (objection.isEmpty()) {
                dialog.close();
                refresh();
                message.say("It is noted that " + row.name() + " wears protectors.");
            }
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        dialog.add(day);
        dialog.getFooter().add(new Button("Cancel", click -> dialog.close()), save);
        dialog.open();
    }
}
