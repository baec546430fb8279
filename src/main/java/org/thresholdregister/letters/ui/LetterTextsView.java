package org.thresholdregister.letters.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.select.Select;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.RolesAllowed;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import org.thresholdregister.core.wording.Language;
import org.thresholdregister.letters.LetterTextService;
import org.thresholdregister.letters.Placeholder;
import org.thresholdregister.letters.TextInForce;
import org.thresholdregister.letters.TextPart;
import org.thresholdregister.letters.TextVersion;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.Downloads;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Place;

/** The texts of a site's letters, to be changed, looked at as a letter, and brought back. */
@Route("letter-texts")
@PageTitle("Letter texts · Threshold Register")
@Menu(title = "Letter texts", order = 96)
@RolesAllowed({Roles.NURSE, Roles.ADMINISTRATOR})
class LetterTextsView extends Div {

    private final transient LetterTextService texts;
    private final Select<String> site = new Select<>();
    private final Select<Language> language = new Select<>();
    private final Select<TextPart> part = new Select<>();
    private final TextArea content = new TextArea("Text");
    private final LeadSentence lead = new LeadSentence();
    private final Div result = new Div();
    private final Div placeholders = new Div();
    private final Div versions = new Div();

    LetterTextsView(LetterTextService texts) {
        this.texts = texts;
        result.getElement().setAttribute("role", "status");
        List<String> sites = texts.sites();
        site.setLabel("Site");
        site.setItems(sites);
        site.setItemLabelGenerator(Place::name);
        language.setLabel("Language");
        language.setItems(Language.values());
        language.setItemLabelGenerator(LetterLabels::language);
        language.setValue(Language.ENGLISH);
        part.setLabel("Text of");
        part.setItems(TextPart.values());
        part.setItemLabelGenerator(TextPart::label);
        part.setValue(TextPart.LETTERHEAD);
        content.setWidthFull();
        content.setMinRows(8);
        content.setHelperText("An empty line between paragraphs; # before a heading; placeholders in braces");
        add(new H1("Letter texts"), lead);
        if (sites.isEmpty()) {
            lead.text("No site has a worker yet, so that there is no letter to write texts for.");
            return;
        }
        lead.text("Each site may write its letterhead and its letters in its own words.");
        site.setValue(sites.stream().filter(each -> !each.isEmpty()).findFirst().orElse(sites.getFirst()));
        List.of(site, language, part).forEach(field -> field.addValueChangeListener(event -> show()));
        var save = new Button("Save", click -> save());
        save.addThemeVariants(ButtonVariant.PRIMARY);
        var choice = new Div(site, language, part);
        choice.addClassName("tr-filters");
        var buttons = new Div(
                save,
                new Button("Preview", click -> preview()),
                new Button("Back to the standard text", click -> backToStandard()));
        buttons.addClassName("tr-page-actions");
        add(choice, content, buttons, result, new H2("Placeholders"), placeholders, new H2("Versions"), versions);
        show();
    }

    private void show() {
        TextInForce text = texts.text(site.getValue(), language.getValue(), part.getValue());
        content.setValue(text.content());
        content.setInvalid(false);
        result.removeAll();
        placeholders.removeAll();
        placeholders.add(new UnorderedList(Arrays.stream(Placeholder.values())
                .filter(placeholder -> placeholder.isAllowedIn(part.getValue()))
                .map(placeholder -> new ListItem(placeholder.written() + ": " + placeholder.meaning()
                        + (placeholder.isBlock() ? ", in a paragraph of its own" : "")
                        + (placeholder.isRequiredIn(part.getValue()) ? "; has to be there" : "")))
                .toArray(ListItem[]::new)));
        versions.removeAll();
        if (text.versions().isEmpty()) {
            versions.add(new Paragraph("The standard text holds; this site never changed it."));
        } else {
            versions.add(new UnorderedList(
                    text.versions().stream().map(LetterTextsView::version).toArray(ListItem[]::new)));
        }
    }

    private static ListItem version(TextVersion version) {
        return new ListItem(
                Dates.onScreen(version.savedAt().atZone(ZoneId.systemDefault()).toLocalDate()) + ", by "
                        + version.savedBy() + ": "
                        + (version.content().isEmpty() ? "back to the standard text" : version.content()));
    }

    private void save() {
        List<String> problems = texts.save(site.getValue(), language.getValue(), part.getValue(), content.getValue());
        if (!refused(problems)) {
            show();
            result.add(new Paragraph("Saved. The next letters have this text."));
        }
    }

    private boolean refused(List<String> problems) {
        content.setErrorMessage(String.join(" ", problems));
        content.setInvalid(!problems.isEmpty());
        return !problems.isEmpty();
    }

    private void backToStandard() {
        texts.backToStandard(site.getValue(), language.getValue(), part.getValue());
        show();
        result.add(new Paragraph("The standard text holds again."));
    }

    private void preview() {
        if (refused(texts.problems(part.getValue(), content.getValue()))) {
            return;
        }
        byte[] pdf = texts.preview(site.getValue(), language.getValue(), part.getValue(), content.getValue());
        result.removeAll();
        result.add(Downloads.link(
                "Open the letter to an invented person", "preview.pdf", "application/pdf", out -> out.write(pdf)));
    }
}
