package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.HasValidation;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.datepicker.DatePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.IntegerField;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.component.timepicker.TimePicker;
import com.vaadin.flow.function.SerializableFunction;
import java.time.Duration;
import java.time.LocalTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.thresholdregister.core.scheduling.DayHours;
import org.thresholdregister.platform.ui.DayField;
import org.thresholdregister.platform.ui.Place;
import org.thresholdregister.testdays.DayProblem;
import org.thresholdregister.testdays.NewTestDays;
import org.thresholdregister.testdays.PlannedDays;
import org.thresholdregister.testdays.TestSite;

/** Plans a test day, or the days of a mobile unit's visit. */
class PlanDaysForm extends Div {

    private static final int USUAL_PER_HOUR = 4;

    private final Select<String> site = new Select<>();
    private final TextField place = new TextField("Room or stand");
    private final DatePicker firstDay = DayField.labelled("Day");
    private final DatePicker lastDay = DayField.labelled("Last day, for a visit");
    private final TimePicker from = time("From");
    private final TimePicker to = time("To");
    private final IntegerField perHour = new IntegerField("People in an hour");
    private final TimePicker breakFrom = time("Break from");
    private final TimePicker breakTo = time("Break to");
    private final TextField nurse = new TextField("Nurse, by sign-in name");
    private final Checkbox mobileUnit = new Checkbox("A mobile unit makes the tests");
    private final Map<DayProblem.Field, HasValidation> fields = new EnumMap<>(DayProblem.Field.class);

    /** @param plan stores the days, or says what stands against them */
    PlanDaysForm(
            List<String> sites,
            SerializableFunction<String, TestSite> settings,
            String signedIn,
            SerializableFunction<NewTestDays, PlannedDays> plan) {
        addClassNames("tr-card", "tr-screen-only");
        site.setLabel("Site");
        site.setItems(sites);
        site.setItemLabelGenerator(Place::name);
        site.addValueChangeListener(
                change -> mobileUnit.setValue(settings.apply(change.getValue()).mobileUnit()));
        Sites.usual(sites).ifPresent(site::setValue);
        place.setMaxLength(NewTestDays.LONGEST_PLACE);
        lastDay.setHelperText("Saturdays and Sundays between two days are left out");
        from.setValue(LocalTime.of(6, 0));
        to.setValue(LocalTime.of(14, 0));
        perHour.setValue(USUAL_PER_HOUR);
        perHour.setStepButtonsVisible(true);
        perHour.setMin(1);
        perHour.setMax(DayHours.MOST_PER_HOUR);
        nurse.setValue(signedIn);
        nurse.setHelperText("Whose calendar shows it; may stay empty");
        nurse.setMaxLength(40);
        fields.put(DayProblem.Field.SITE, site);
        fields.put(DayProblem.Field.PLACE, place);
        fields.put(DayProblem.Field.FIRST_DAY, firstDay);
        fields.put(DayProblem.Field.LAST_DAY, lastDay);
        fields.put(DayProblem.Field.FROM, from);
        fields.put(DayProblem.Field.TO, to);
        fields.put(DayProblem.Field.PER_HOUR, perHour);
        fields.put(DayProblem.Field.BREAKS, breakTo);
        fields.put(DayProblem.Field.NURSE, nurse);
        var form = new Div(site, place, firstDay, lastDay, from, to, perHour, breakFrom, breakTo, nurse, mobileUnit);
        form.addClassName("tr-form");
        var button = new Button("Plan it", click -> plan(plan));
        button.addThemeVariants(ButtonVariant.PRIMARY);
        add(form, button);
    }

    static TimePicker time(String label) {
        var field = new TimePicker(label);
        // 24 hours, as the sheets print them.
        field.setLocale(Locale.UK);
        field.setStep(Duration.ofMinutes(15));
        field.setClearButtonVisible(true);
        return field;
    }

    private void plan(SerializableFunction<NewTestDays, PlannedDays> plan) {
        fields.values().forEach(field -> field.setInvalid(false));
        if (breakFrom.isEmpty() != breakTo.isEmpty()
                || (!breakFrom.isEmpty() && !breakTo.getValue().isAfter(breakFrom.getValue()))) {
            say(new DayProblem(DayProblem.Field.BREAKS, "A break ends after it begins; leave both empty for none."));
            return;
        }
        if (plan.apply(planned()) instanceof PlannedDays.Refused refused) {
            refused.problems().forEach(this::say);
        }
    }

    private void say(DayProblem problem) {
        HasValidation field = fields.get(problem.field());
        if (field != null) {
            field.setErrorMessage(problem.words());
            field.setInvalid(true);
        }
    }

    private NewTestDays planned() {
        List<DayHours.Break> breaks =
                breakFrom.isEmpty() ? List.of() : List.of(new DayHours.Break(breakFrom.getValue(), breakTo.getValue()));
        return new NewTestDays(
                site.getOptionalValue().orElse(""),
                place.getValue(),
                Optional.ofNullable(firstDay.getValue()),
                Optional.ofNullable(lastDay.getValue()),
                Optional.ofNullable(from.getValue()),
                Optional.ofNullable(to.getValue()),
                Optional.ofNullable(perHour.getValue()),
                breaks,
                nurse.getValue(),
                mobileUnit.getValue());
    }
}
