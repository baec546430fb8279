package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.timepicker.TimePicker;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.SchedulingWords;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.roster.WorkerService;
import org.thresholdregister.testdays.SiteShift;
import org.thresholdregister.testdays.WorkShiftService;

/** Which shifts there are and who works them, so that people are called rested from noise. */
@Route(TestDayPaths.SHIFTS)
@PageTitle("Work shifts · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class WorkShiftsView extends Div {

    private final transient WorkShiftService shifts;
    private final transient WorkerService workers;
    private final boolean mayChange;
    private final Message message = new Message();
    private final Div content = new Div();

    WorkShiftsView(WorkShiftService shifts, WorkerService workers, CurrentUser currentUser) {
        this.shifts = shifts;
        this.workers = workers;
        this.mayChange = currentUser.role() == Role.NURSE;
        add(new H1("Work shifts"), content);
        refresh();
    }

    private void refresh() {
        List<SiteShift> all = shifts.shifts();
        content.removeAll();
        content.add(
                new LeadSentence(
                        all.isEmpty()
                                ? "No shift is known, so that quiet hours must be asked of everybody."
                                : Counted.of(all.size(), "shift is", "shifts are")
                                        + " known; whoever works none of them is asked about quiet hours."),
                message);
        content.add(
                all.isEmpty()
                        ? new EmptyHint(
                                "No shift is entered.",
                                "Enter the hours of a shift and the departments that work it; the plan of a test day then"
                                        + " calls people before their shift, or rested after it.")
                        : new ListTable<>("By site and time", columns(), all, this::remove));
        if (mayChange) {
            addForms(all);
        }
    }

    private List<ListColumn<SiteShift, ?>> columns() {
        List<ListColumn<SiteShift, ?>> columns = new ArrayList<>(List.of(
                ListColumn.unordered(
                        "Shift", 8, row -> ListCell.text(row.shift().name()).withNote(row.site())),
                ListColumn.unordered(
                        "Hours",
                        8,
                        row -> ListCell.figures(SchedulingWords.time(row.shift().starts()) + " to "
                                + SchedulingWords.time(row.shift().ends()))),
                ListColumn.unordered(
                        "Departments",
                        14,
                        row -> ListCell.text(
                                row.departments().stream().map(Place::name).collect(Collectors.joining(", ")))),
                ListColumn.unordered("Single workers", 8, row -> ListCell.figures(Integer.toString(row.workers())))));
        if (mayChange) {
            columns.add(ListColumn.unordered(
                    "",
                    6,
                    row -> ListCell.action(
                            "Remove", "Remove the shift " + row.shift().name())));
        }
        return columns;
    }

    private void remove(SiteShift shift) {
        shifts.remove(shift.key());
        say("The shift " + shift.shift().name() + " is removed; who worked it is without a shift now.");
    }

    private void say(String words) {
        refresh();
        message.say(words);
    }

    private void addForms(List<SiteShift> all) {
        content.add(new H2("Enter a shift"), shiftForm());
        if (!all.isEmpty()) {
            content.add(new H2("Say who works it"), departmentForm(all), workerForm(all));
        }
    }

    private Div shiftForm() {
        List<String> sites = workers.sites();
        var site = new Select<String>();
        site.setLabel("Site");
        site.setItems(sites);
        site.setItemLabelGenerator(Place::name);
        Sites.usual(sites).ifPresent(site::setValue);
        var name = new TextField("Name");
        name.setMaxLength(WorkShiftService.LONGEST_NAME);
        TimePicker starts = PlanDaysForm.time("Begins");
        TimePicker ends = PlanDaysForm.time("Ends");
        ends.setHelperText("Earlier than it begins where it goes past midnight");
        var save = new Button("Enter the shift", click -> {
            starts.setErrorMessage("Give the time, such as 06:00.");
            starts.setInvalid(starts.isEmpty());
            ends.setErrorMessage("Give the time, such as 14:00.");
            ends.setInvalid(ends.isEmpty());
            if (starts.isEmpty() || ends.isEmpty()) {
                return;
            }
            Optional<String> objection = shifts.save(
                    site.getOptionalValue().orElse(""), name.getValue(), starts.getValue(), ends.getValue());
            name.setErrorMessage(objection.orElse(""));
            name.setInvalid(objection.isPresent());
            if (objection.isEmpty()) {
                say("The shift " + name.getValue().strip() + " is stored.");
            }
        });
        save.addThemeVariants(ButtonVariant.PRIMARY);
        return card(save, site, name, starts, ends);
    }

    private Div departmentForm(List<SiteShift> all) {
        Select<SiteShift> shift = shiftChoice(all);
        var department = new Select<String>();
        department.setLabel("Department");
        department.setItems(workers.departments());
        department.setItemLabelGenerator(Place::name);
        var assign = new Button("Have the department work it", click -> {
            department.setErrorMessage("Choose the department.");
            department.setInvalid(department.isEmpty());
            if (!department.isEmpty()) {
                shifts.assignDepartment(shift.getValue().key(), department.getValue());
                say(Place.name(department.getValue()) + " works the shift "
                        + shift.getValue().shift().name() + " now.");
            }
        });
        return card(assign, shift, department);
    }

    private Div workerForm(List<SiteShift> all) {
        Select<SiteShift> shift = shiftChoice(all);
        shift.setEmptySelectionAllowed(true);
        shift.setEmptySelectionCaption("none of their own");
        var number = new TextField("Worker's number");
        var assign = new Button("Give the worker this shift", click -> {
            Optional<String> objection =
                    shifts.assignWorker(shift.getOptionalValue().map(SiteShift::key), number.getValue());
            number.setErrorMessage(objection.orElse(""));
            number.setInvalid(objection.isPresent());
            if (objection.isEmpty()) {
                say("Stored for the worker " + number.getValue().strip() + ".");
            }
        });
        return card(assign, shift, number);
    }

    private static Select<SiteShift> shiftChoice(List<SiteShift> all) {
        var shift = new Select<SiteShift>();
        shift.setLabel("Shift");
        shift.setItems(all);
        shift.setItemLabelGenerator(
                one -> one == null ? "none of their own" : one.shift().name() + ", " + Place.name(one.site()));
        shift.setValue(all.getFirst());
        return shift;
    }

    private static Div card(Button button, Component... fields) {
        var form = new Div(fields);
        form.addClassName("tr-form");
        var card = new Div(form, button);
        card.addClassNames("tr-card", "tr-screen-only");
        return card;
    }
}
