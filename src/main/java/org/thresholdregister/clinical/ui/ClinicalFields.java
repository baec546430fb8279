package org.thresholdregister.clinical.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import com.vaadin.flow.data.value.ValueChangeMode;
import com.vaadin.flow.function.SerializableRunnable;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.thresholdregister.clinical.ClinicalResult;
import org.thresholdregister.core.audiometry.Ear;
import org.thresholdregister.core.audiometry.PerEar;
import org.thresholdregister.core.clinical.CanalFinding;
import org.thresholdregister.core.clinical.ClinicalFacts;
import org.thresholdregister.core.clinical.EarLook;
import org.thresholdregister.core.clinical.HealthHistory;
import org.thresholdregister.core.clinical.HealthQuestion;
import org.thresholdregister.core.clinical.Reply;
import org.thresholdregister.core.wording.ClinicalWords;
import org.thresholdregister.core.wording.Words;

/**
 * The questions, both ears, and what was said. What is ticked is a yes; one more tick for each group says that the others
 * were asked and are a no. What is neither was not asked. Nothing is required.
 */
class ClinicalFields extends Div {

    private final Map<HealthQuestion.Group, CheckboxGroup<HealthQuestion>> yes =
            new EnumMap<>(HealthQuestion.Group.class);
    private final Map<HealthQuestion.Group, Checkbox> restIsNo = new EnumMap<>(HealthQuestion.Group.class);
    private final Map<HealthQuestion, TextField> notes = new EnumMap<>(HealthQuestion.class);
    private final RadioButtonGroup<Ear> shoulder = new RadioButtonGroup<>("Long gun held at");
    private final PerEar<CheckboxGroup<CanalFinding>> findings = PerEar.from(ClinicalFields::findings);
    private final PerEar<TextField> earNotes =
            PerEar.from(ear -> new TextField(Words.capitalised(Words.ear(ear)) + ", note"));
    private final Checkbox postponed = new Checkbox("Test postponed because of this");
    private final TextArea said = new TextArea("What the worker said");
    private final SerializableRunnable changed;
    private boolean setting;

    /** @param changed told after each change that a person makes */
    ClinicalFields(SerializableRunnable changed) {
        this.changed = changed;
        addClassName("tr-clinical");
        for (HealthQuestion.Group group : HealthQuestion.Group.values()) {
            add(questions(group));
        }
        List.of(earNotes.left(), earNotes.right()).forEach(note -> listen(note, EarLook.LONGEST_NOTE));
        List.of(findings.left(), findings.right())
                .forEach(group -> group.addValueChangeListener(change -> tell(change.isFromClient())));
        postponed.addValueChangeListener(change -> tell(change.isFromClient()));
        said.setMaxLength(ClinicalFacts.LONGEST_SAID);
        said.setValueChangeMode(ValueChangeMode.ON_BLUR);
        said.setHelperText("In the worker's own words; may be left empty");
        said.addValueChangeListener(change -> tell(change.isFromClient()));
        said.setWidthFull();
        add(group(findings.right(), earNotes.right()), group(findings.left(), earNotes.left()), group(postponed), said);
        showDetails();
    }

    private static Div group(Component... fields) {
        var group = new Div(fields);
        group.addClassName("tr-clinical-group");
        return group;
    }

    private Div questions(HealthQuestion.Group group) {
        List<HealthQuestion> questions = Arrays.stream(HealthQuestion.values())
                .filter(question -> question.group() == group)
                .toList();
        var ticks = new CheckboxGroup<HealthQuestion>(ClinicalWords.group(group));
        ticks.setItems(questions);
        ticks.setItemLabelGenerator(ClinicalWords::question);
        ticks.addValueChangeListener(change -> {
            showDetails();
            tell(change.isFromClient());
        });
        var rest = new Checkbox("Asked: no to the rest");
        rest.setAriaLabel(
                "Asked: no to the rest of " + ClinicalWords.group(group).toLowerCase(Locale.ROOT));
        rest.addValueChangeListener(change -> tell(change.isFromClient()));
        yes.put(group, ticks);
        restIsNo.put(group, rest);
        var box = group(ticks, rest);
        if (group == HealthQuestion.Group.NOISE) {
            shoulder.setItems(Ear.RIGHT, Ear.LEFT);
            shoulder.setItemLabelGenerator(side -> "the " + side.word() + " shoulder");
            shoulder.addValueChangeListener(change -> tell(change.isFromClient()));
            box.add(shoulder);
        }
        for (HealthQuestion question : questions) {
            var note = new TextField(ClinicalWords.question(question) + ": what, how long");
            listen(note, Reply.LONGEST_NOTE);
            notes.put(question, note);
            box.add(note);
        }
        return box;
    }

    private static CheckboxGroup<CanalFinding> findings(Ear ear) {
        var group = new CheckboxGroup<CanalFinding>(Words.capitalised(Words.ear(ear)) + " looks");
        group.setItems(CanalFinding.values());
        group.setItemLabelGenerator(ClinicalWords::finding);
        return group;
    }

    private void listen(TextField field, int longest) {
        field.setMaxLength(longest);
        field.setValueChangeMode(ValueChangeMode.ON_BLUR);
        field.addValueChangeListener(change -> tell(change.isFromClient()));
    }

    private void tell(boolean byAPerson) {
        withoutComplaints();
        if (byAPerson && !setting) {
            changed.run();
        }
    }

    private Set<HealthQuestion> ticked() {
        Set<HealthQuestion> all = EnumSet.noneOf(HealthQuestion.class);
        yes.values().forEach(group -> all.addAll(group.getValue()));
        return all;
    }

    /** A note is asked for what is ticked, and the shoulder of those who shoot. */
    private void showDetails() {
        Set<HealthQuestion> ticked = ticked();
        notes.forEach((question, note) -> note.setVisible(ticked.contains(question)));
        shoulder.setVisible(ticked.contains(HealthQuestion.SHOOTING));
    }

    ClinicalFacts value() {
        Map<HealthQuestion, Reply> replies = new EnumMap<>(HealthQuestion.class);
        Set<HealthQuestion> ticked = ticked();
        Set<HealthQuestion.Group> asked = EnumSet.noneOf(HealthQuestion.Group.class);
        restIsNo.forEach((group, rest) -> {
            if (rest.getValue()) {
                asked.add(group);
            }
        });
        notes.forEach((question, note) -> {
            if (ticked.contains(question)) {
                replies.put(question, new Reply(true, note.getValue().strip()));
            } else if (asked.contains(question.group())) {
                replies.put(question, new Reply(false, ""));
            }
        });
        Optional<Ear> side = ticked.contains(HealthQuestion.SHOOTING) ? shoulder.getOptionalValue() : Optional.empty();
        return new ClinicalFacts(
                new HealthHistory(replies, side),
                PerEar.from(ear -> new EarLook(
                        findings.of(ear).getValue(), earNotes.of(ear).getValue().strip())),
                postponed.getValue(),
                said.getValue().strip());
    }

    void setValue(ClinicalFacts facts) {
        setting = true;
        HealthHistory history = facts.history();
        yes.forEach((group, ticks) -> ticks.setValue(answered(history, group, true)));
        restIsNo.forEach(
                (group, rest) -> rest.setValue(!answered(history, group, false).isEmpty()));
        notes.forEach((question, note) ->
                note.setValue(history.reply(question).map(Reply::note).orElse("")));
        history.shoulder().ifPresentOrElse(shoulder::setValue, shoulder::clear);
        for (Ear ear : Ear.values()) {
            findings.of(ear).setValue(facts.ears().of(ear).findings());
            earNotes.of(ear).setValue(facts.ears().of(ear).note());
        }
        postponed.setValue(facts.postponed());
        said.setValue(facts.said());
        showDetails();
        setting = false;
    }

    private static Set<HealthQuestion> answered(HealthHistory history, HealthQuestion.Group group, boolean yes) {
        Set<HealthQuestion> answered = EnumSet.noneOf(HealthQuestion.class);
        history.replies().forEach((question, reply) -> {
            if (question.group() == group && reply.yes() == yes) {
                answered.add(question);
            }
        });
        return answered;
    }

    /** Says beside the fields what stands against them; false where it is about none of them. */
    boolean complain(ClinicalResult.Reason why) {
        withoutComplaints();
        switch (why) {
            case CLEAR_AND_MORE -> eachEar(EarLook::contradictsItself, "Clear, or what else there is: not both.");
            case OTHER_WITHOUT_NOTE ->
                eachEar(
                        look -> look.findings().contains(CanalFinding.OTHER)
                                && look.note().isBlank(),
                        "Say in the note what else there is.");
            case UNKNOWN_WORKER, NOTHING_ENTERED, IN_THE_FUTURE, TEXT_TOO_LONG, REASON_MISSING, NO_SUCH_REFUSAL -> {
                return false;
            }
        }
        return true;
    }

    private void eachEar(Predicate<EarLook> wrong, String words) {
        ClinicalFacts facts = value();
        for (Ear ear : Ear.values()) {
            if (wrong.test(facts.ears().of(ear))) {
                findings.of(ear).setErrorMessage(words);
                findings.of(ear).setInvalid(true);
            }
        }
    }

    private void withoutComplaints() {
        List.of(findings.left(), findings.right()).forEach(group -> group.setInvalid(false));
    }
}
