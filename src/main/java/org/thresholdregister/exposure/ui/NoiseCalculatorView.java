package org.thresholdregister.exposure.ui;

import com.vaadin.flow.component.Key;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.util.Optional;
import org.thresholdregister.core.noise.NoiseDay;
import org.thresholdregister.core.wording.NoiseWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.FilterParameters;
import org.thresholdregister.platform.ui.LeadSentence;

/** Works out the noise of a day that is nobody's, step by step; what is typed stands in the address. */
@Route(NoiseCalculatorView.ROUTE)
@PageTitle("Noise calculator · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class NoiseCalculatorView extends Div implements BeforeEnterObserver {

    static final String ROUTE = "noise-calculator";

    private static final String DAY = "day";

    private final LevelRows rows = new LevelRows();
    private final Div result = new Div();

    NoiseCalculatorView() {
        var calculate = new Button(
                "Calculate",
                click -> UI.getCurrent()
                        .navigate(
                                ROUTE,
                                FilterParameters.NONE
                                        .with(DAY, Optional.of(rows.typed()))
                                        .toQueryParameters()));
        calculate.addThemeVariants(ButtonVariant.PRIMARY);
        calculate.addClickShortcut(Key.ENTER);
        var card = new Div(rows, calculate);
        card.addClassNames("tr-card", "tr-screen-only");
        var caution = new Paragraph(Words.CAUTION);
        caution.addClassName("tr-caution");
        add(
                new H1("Noise calculator"),
                new LeadSentence("How much noise a day of different levels holds: the dose, the eight-hour average, the"
                        + " action level and the limit, with the working. Nothing typed here is kept; it stands in the"
                        + " address."),
                card,
                result,
                caution,
                new Anchor(NoiseView.ROUTE, "Back to noise"));
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        Optional<String> typed = FilterParameters.of(event.getLocation()).text(DAY);
        rows.show(typed.orElse(""));
        result.removeAll();
        if (typed.isEmpty()) {
            result.add(new EmptyHint(
                    "Nothing is calculated yet.", "Give each level of the day with the hours spent in it."));
        } else {
            rows.read().ifPresent(this::show);
        }
    }

    private void show(NoiseDay day) {
        result.add(
                new H2("Action level"),
                new Steps(NoiseWording.actionLevel(day)),
                new H2("Limit"),
                new Steps(NoiseWording.limit(day)),
                new H2("A shift of " + NoiseWording.hours(day.hours()) + " hours"),
                new Steps(NoiseWording.shift(day.hours())),
                new H2("3 dB for each halving of time"),
                new Steps(NoiseWording.equalEnergy(day)),
                new H2("In a mine"),
                new Steps(NoiseWording.mine(day)));
    }
}
