package org.thresholdregister.employment.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.notification.Notification;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.employment.Inconsistency;
import org.thresholdregister.core.employment.WorkEvent;
import org.thresholdregister.core.wording.Sentence;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.core.wording.WorkingLifeWords;
import org.thresholdregister.employment.LifeEntry;
import org.thresholdregister.employment.WorkerLife;
import org.thresholdregister.employment.WorkingLifeService;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.ui.WorkerSection;

/** The working life on a worker's page: what holds, what follows from it, and every entry. */
@org.springframework.stereotype.Component
class WorkingLifeSection implements WorkerSection {

    private static final int PLACE = 40;

    private final WorkingLifeService lives;

    WorkingLifeSection(WorkingLifeService lives) {
        this.lives = lives;
    }

    @Override
    public int place() {
        return PLACE;
    }

    @Override
    public Optional<Component> of(WorkerRecord record) {
        String workerId = record.details().workerId();
        return lives.of(workerId).map(life -> section(workerId, life, record));
    }

    private Section section(String workerId, WorkerLife life, WorkerRecord record) {
        var section = new Section(new H2("Working life"), new Paragraph(WorkingLifeWords.state(life.state())));
        life.life().inconsistencies().forEach(found -> section.add(doubt(found, life)));
        List<Sentence> follows = WorkingLifeWords.consequences(
                life.life(), life.asOf(), record.ruleSet(), !record.tests().isEmpty());
        if (!follows.isEmpty()) {
            section.add(working(follows));
        }
        section.add(new ListTable<>(
                "Every entry, the newest first",
                columns(life),
                life.entries().reversed(),
                entry -> correct(workerId, life, entry)));
        var add = new Button(
                "Add to the working life",
                click -> new EventDialog(
                                Optional.empty(),
                                life.state().place(),
                                life.asOf(),
                                (event, remark, certain) -> lives.enter(workerId, event, remark, certain),
                                visible -> show(workerId, visible))
                        .open());
        var whole = new Paragraph(
                new Span("Everybody of a site goes to a new owner: "),
                new Anchor("sold-plant", "sold plants"),
                new Span("."));
        whole.addClassName("tr-screen-only");
        section.add(add, whole);
        return section;
    }

    private static Paragraph doubt(Inconsistency found, WorkerLife life) {
        var doubt = new Paragraph(Words.day(found.about().day()) + ", "
                + WorkingLifeWords.event(found.about(), life.life()) + ": "
                + WorkingLifeWords.inconsistency(found.kind()) + " Correct one of the entries.");
        doubt.addClassName("tr-message");
        return doubt;
    }

    private static UnorderedList working(List<Sentence> sentences) {
        var list = new UnorderedList();
        list.addClassName("tr-working");
        for (Sentence sentence : sentences) {
            var item = new ListItem(new Span(sentence.text()));
            sentence.basis().ifPresent(place -> item.add(cite(place.place())));
            list.add(item);
        }
        return list;
    }

    private static HtmlContainer cite(String place) {
        var cite = new HtmlContainer("cite");
        cite.setText(place);
        return cite;
    }

    private static List<ListColumn<LifeEntry, ?>> columns(WorkerLife life) {
        return List.of(
                ListColumn.unordered("Day", 7, entry -> ListCell.figures(Words.day(entry.day()))),
                ListColumn.unordered("What happened", 16, entry -> what(entry, life)),
                ListColumn.unordered(
                        "State",
                        8,
                        entry -> entry.inForce()
                                ? ListCell.state(StateBadge.Kind.DONE, "in force")
                                : ListCell.text(entry.event().isPresent() ? "corrected" : "")),
                ListColumn.unordered("Reason or remark", 12, entry -> ListCell.text(entry.reason())),
                ListColumn.unordered("Entered by", 7, entry -> ListCell.text(entry.enteredBy())),
                ListColumn.unordered(
                        "",
                        6,
                        entry -> entry.inForce()
                                ? ListCell.action("Correct", "Correct the entry of " + Words.day(entry.day()))
                                : ListCell.EMPTY));
    }

    private static ListCell what(LifeEntry entry, WorkerLife life) {
        String words = entry.event()
                .map(event -> Words.capitalised(WorkingLifeWords.event(event, life.life())))
                .orElse("An entry of this day was taken back");
        return ListCell.text(words)
                .withNote(entry.correction() && entry.event().isPresent() ? "in place of an earlier entry" : "");
    }

    /** Asks whether another entry takes its place or it goes; whoever went with a sold plant can only be taken back. */
    private void correct(String workerId, WorkerLife life, LifeEntry entry) {
        entry.event().ifPresent(wrong -> {
            var takeBack = new TakeBackDialog(
                    Words.day(wrong.day()) + ": " + WorkingLifeWords.event(wrong, life.life()),
                    reason -> lives.correct(workerId, wrong, Optional.empty(), reason, true),
                    visible -> show(workerId, visible));
            if (wrong.event() instanceof WorkEvent.TransferredToSuccessor) {
                takeBack.open();
                return;
            }
            var dialog = new EventDialog(
                    Optional.of(wrong),
                    life.state().place(),
                    life.asOf(),
                    (event, reason, certain) -> lives.correct(workerId, wrong, Optional.of(event), reason, certain),
                    visible -> show(workerId, visible));
            dialog.getFooter().add(new Button("Take it back instead", click -> {
                dialog.close();
                takeBack.open();
            }));
            dialog.open();
        });
    }

    private static void show(String workerId, boolean stillVisible) {
        Notification.show(
                stillVisible
                        ? "The entry is on record. The roster row and what is owed follow from it."
                        : "The entry is on record. The record belongs to another site now and is open to you no more.");
        UI.getCurrent().navigate(Paths.worker(workerId));
    }
}
