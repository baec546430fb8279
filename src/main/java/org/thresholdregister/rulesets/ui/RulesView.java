package org.thresholdregister.rulesets.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.thresholdregister.core.aging.AgeCorrection;
import org.thresholdregister.core.rules.RuleSet;
import org.thresholdregister.core.rules.RuleSets;
import org.thresholdregister.core.wording.RuleSetWording;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.rulesets.Holiday;
import org.thresholdregister.rulesets.SiteRules;
import org.thresholdregister.rulesets.SiteRulesService;

/** Every rule set with what it asks, and which one each site answers to. The administrator chooses. */
@Route("rules")
@PageTitle("Rules · Threshold Register")
@Menu(title = "Rules", order = 95)
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER, Roles.ADMINISTRATOR})
class RulesView extends Div {

    private final transient SiteRulesService rules;
    private final boolean mayChoose;
    private final LocalDate today;
    private final Div chosen = new Div();
    private final Div holidays = new Div();

    RulesView(SiteRulesService rules, CurrentUser currentUser, Clock clock) {
        this.rules = rules;
        this.mayChoose = currentUser.role() == Role.ADMINISTRATOR;
        this.today = LocalDate.now(clock);
        var caution = new Paragraph(Words.CAUTION);
        caution.addClassName("tr-caution");
        add(new H1("Rules"), chosen);
        if (mayChoose) {
            add(new SiteRulesForm(today, this::choose));
        }
        add(new H2("The rule sets"), caution);
        RuleSets.ALL.forEach(ruleSet -> add(new RuleSetCard(ruleSet)));
        add(new H2("Holidays"), holidays);
        if (mayChoose) {
            add(new HolidayForm(this::addHoliday));
        }
        refresh();
    }

    private boolean choose(SiteRules.Choice choice, SiteRulesForm form) {
        var objection = rules.choose(choice);
        form.show(objection);
        if (objection.isEmpty()) {
            Notification.show("The choice is stored. Every record is judged again before it is next shown.");
            refresh();
        }
        return objection.isEmpty();
    }

    private void addHoliday(Holiday holiday) {
        rules.addHoliday(holiday);
        Notification.show(Words.day(holiday.day()) + " is a holiday now.");
        refresh();
    }

    private void removeHoliday(Holiday holiday) {
        rules.removeHoliday(holiday.day());
        Notification.show(Words.day(holiday.day()) + " is no holiday any more.");
        refresh();
    }

    private void refresh() {
        List<SiteRules> choices = rules.chosen();
        chosen.removeAll();
        chosen.add(new LeadSentence(lead(choices)));
        if (!choices.isEmpty()) {
            chosen.add(new ListTable<>("What sites answer to, by site and first day", columns(), choices, row -> {}));
        }
        List<Holiday> days = rules.holidays();
        holidays.removeAll();
        if (days.isEmpty()) {
            holidays.add(
                    new Paragraph("No holiday is listed: deadlines in working days skip Saturdays and Sundays only."));
        } else {
            holidays.add(new ListTable<>(
                    "Deadlines in working days skip these besides weekends",
                    holidayColumns(),
                    days,
                    this::removeHoliday));
        }
    }

    private static String lead(List<SiteRules> choices) {
        if (choices.isEmpty()) {
            return "Every site answers to " + RuleSets.OSHA.name() + ", with the allowance for age.";
        }
        return "Sites answer to what was chosen for them; before their first day, and where nothing was chosen, to "
                + RuleSets.OSHA.name() + ", with the allowance for age.";
    }

    private List<ListColumn<SiteRules, ?>> columns() {
        return List.of(
                ListColumn.unordered(
                        "Site",
                        10,
                        row -> ListCell.text(
                                row.site().isEmpty() ? "Every site without a choice of its own" : row.site())),
                ListColumn.unordered("From", 7, row -> ListCell.text(Words.day(row.from()))),
                ListColumn.unordered(
                        "Rule set",
                        14,
                        row -> ListCell.text(row.ruleSet().name()).withNote(settings(row.ruleSet()))),
                ListColumn.unordered("Allowance for age", 8, row -> ListCell.text(age(row))),
                ListColumn.unordered("Reason", 14, row -> ListCell.text(row.reason())),
                ListColumn.unordered("Chosen by", 8, row -> ListCell.text(row.chosenBy())));
    }

    private static String settings(RuleSet ruleSet) {
        return ruleSet.settings().stream().map(RuleSetWording::settingInShort).collect(Collectors.joining("; "));
    }

    private static String age(SiteRules row) {
        if (!row.ruleSet().allowsForAge()) {
            return "none in this rule set";
        }
        return row.ageCorrection() == AgeCorrection.ON ? "made" : "not made";
    }

    private List<ListColumn<Holiday, ?>> holidayColumns() {
        ListColumn<Holiday, ?> day = ListColumn.unordered("Day", 8, row -> ListCell.text(Words.day(row.day())));
        ListColumn<Holiday, ?> name = ListColumn.unordered("Holiday", 14, row -> ListCell.text(row.name()));
        ListColumn<Holiday, ?> remove = ListColumn.unordered(
                "", 8, row -> ListCell.action("Remove", "Remove the holiday of " + Words.day(row.day())));
        return mayChoose ? List.of(day, name, remove) : List.of(day, name);
    }
}
