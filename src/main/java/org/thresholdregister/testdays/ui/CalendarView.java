package org.thresholdregister.testdays.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.combobox.ComboBox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.VaadinRequest;
import com.vaadin.flow.server.VaadinServletRequest;
import jakarta.annotation.security.RolesAllowed;
import java.time.ZoneId;
import java.util.List;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.roster.WorkerService;
import org.thresholdregister.testdays.CalendarLinkService;
import org.thresholdregister.testdays.TestSite;
import org.thresholdregister.testdays.TestSiteService;

/** The user's calendar address, and what each site's calendar tells. */
@Route(TestDayPaths.CALENDAR)
@PageTitle("Calendar · Threshold Register")
@Menu(title = "Calendar", order = 92)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER, Roles.ADMINISTRATOR})
class CalendarView extends Div {

    private final transient CalendarLinkService links;
    private final transient TestSiteService sites;
    private final Message message = new Message();
    private final Div link = new Div();

    CalendarView(CalendarLinkService links, TestSiteService sites, WorkerService workers, CurrentUser currentUser) {
        this.links = links;
        this.sites = sites;
        add(new H1("Calendar"));
        Role role = currentUser.role();
        if (role != Role.ADMINISTRATOR) {
            add(link, message);
            showLink();
        } else {
            add(new LeadSentence("A calendar names nobody unless a site wants it."), message);
        }
        if (role != Role.SAFETY_OFFICER) {
            add(new H2("How a site is tested"), siteForm(role == Role.NURSE ? workers.sites() : List.of()));
        }
    }

    private void showLink() {
        boolean exists = links.exists();
        link.removeAll();
        link.add(
                new LeadSentence(
                        exists
                                ? "Your calendar has an address; it is not shown again."
                                : "Your calendar has no address yet."),
                new Paragraph("A calendar program reads your test days and how much falls due on each day from it. It"
                        + " names nobody unless the site wants it. Whoever has the address can read it: keep it to"
                        + " yourself, and end it where it got about."));
        var make = new Button(exists ? "Make a new address, and end the old one" : "Make an address", click -> {
            String path = links.make();
            showLink();
            showAddress(path);
        });
        make.addThemeVariants(ButtonVariant.PRIMARY);
        var actions = new Div(make);
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        if (exists) {
            actions.add(new Button("End the address", click -> {
                links.revoke();
                showLink();
                message.say("The address is ended: whoever has it gets nothing any more.");
            }));
        }
        link.add(actions);
    }

    private void showAddress(String path) {
        var address = new TextField("Address, shown this once");
        address.setReadOnly(true);
        address.setWidthFull();
        address.setValue(root() + path);
        link.add(address);
        message.say("Copy the address into your calendar program now.");
    }

    /** As the browser reached the register. */
    private static String root() {
        return VaadinRequest.getCurrent() instanceof VaadinServletRequest request
                ? request.getHttpServletRequest().getRequestURL().toString().replaceFirst("(https?://[^/]+).*", "$1")
                        + request.getContextPath() + "/"
                : "/";
    }

    private Div siteForm(List<String> names) {
        var site = new ComboBox<String>("Site");
        site.setItems(names);
        site.setAllowCustomValue(true);
        site.addCustomValueSetListener(typed -> site.setValue(typed.getDetail().strip()));
        site.setHelperText("As spelled in the roster");
        var mobileUnit = new Checkbox("A mobile unit makes the tests: a baseline may take a year");
        var named = new Checkbox("Calendars name the people of a test day, with their times");
        var zone = new ComboBox<String>("Time zone");
        zone.setItems(ZoneId.getAvailableZoneIds().stream().sorted().toList());
        site.addValueChangeListener(change -> {
            if (change.getValue() != null) {
                TestSite settings = sites.of(change.getValue());
                mobileUnit.setValue(settings.mobileUnit());
                named.setValue(settings.namesInCalendar());
                zone.setValue(settings.timeZone().getId());
            }
        });
        Sites.usual(names).ifPresent(site::setValue);
        var save = new Button("Store", click -> {
            site.setErrorMessage("Give the site.");
            site.setInvalid(site.isEmpty());
            zone.setErrorMessage("Choose the time zone.");
            zone.setInvalid(zone.isEmpty());
            if (site.isEmpty() || zone.isEmpty()) {
                return;
            }
            boolean stored = sites.set(
                    new TestSite(site.getValue(), mobileUnit.getValue(), named.getValue(), ZoneId.of(zone.getValue())));
            site.setErrorMessage("Choose a site whose records you may see.");
            site.setInvalid(!stored);
            if (stored) {
                message.say("Stored for " + site.getValue() + ".");
            }
        });
        var fields = new Div(site, zone, mobileUnit, named);
        fields.addClassName("tr-form");
        var card = new Div(fields, save);
        card.addClassNames("tr-card", "tr-screen-only");
        return card;
    }
}
