package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.AttachEvent;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Section;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.dom.Element;
import com.vaadin.flow.function.SerializableConsumer;
import java.util.List;
import org.thresholdregister.core.audiometry.Audiogram;
import org.thresholdregister.core.validity.FlagCount;
import org.thresholdregister.core.wording.Counted;
import org.thresholdregister.core.wording.ValidityWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.drawing.AudiogramSvg;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.OpeningSentence;
import org.thresholdregister.review.WhatChanged;
import org.thresholdregister.review.ui.Attention;
import org.thresholdregister.review.ui.People;
import org.thresholdregister.review.ui.TestPagePart;
import org.thresholdregister.roster.WorkerDetails;
import org.thresholdregister.testing.EntryProblem;
import org.thresholdregister.testing.Outlook;
import org.thresholdregister.testing.SignResult;
import org.thresholdregister.testing.TestEntry;
import org.thresholdregister.testing.TestEntryService;
import org.thresholdregister.testing.TypedTest;
import org.thresholdregister.testing.TypedThresholds;

/** One test, from the first key to the signature. */
class EntryPart extends Div {

    private static final int THRESHOLDS = TypedThresholds.COUNT - TypedThresholds.EARS.size();

    private final transient TestEntry entry;
    private final transient TestEntryService tests;
    private final String signer;
    private final SerializableConsumer<SignResult.Signed> signed;
    private final ThresholdEntry thresholds;
    private final FactFields facts;
    private final Element drawing = new Element("audiogram-reader");
    private final FoundPart found = new FoundPart("As it stands, not signed");
    private final Paragraph certificate = new Paragraph();
    private final Paragraph doubts = new Paragraph();
    private final Div refusals = new Div();
    private transient TypedTest typed;

    /**
     * @param signer the name of the person who is signed in
     * @param signed is told when the test is on record
     */
    EntryPart(
            TestEntry entry,
            TestEntryService tests,
            List<TestPagePart> parts,
            String signer,
            SerializableConsumer<SignResult.Signed> signed) {
        this.entry = entry;
        this.tests = tests;
        this.signer = signer;
        this.signed = signed;
        typed = entry.draft().typed();
        thresholds = new ThresholdEntry(entry.draft().key(), typed, Comparison.of(entry.record(), entry.former()));
        thresholds.onTyped(state -> type(state.in(typed)));
        thresholds.onSign(state -> sign(state.in(typed)));
        thresholds.onDone(() -> Attention.to(certificate));
        facts = new FactFields(
                typed,
                entry.suggestions(),
                entry.former().isPresent(),
                entry.record().asOf(),
                () -> type(withFacts()));
        addClassName("tr-test");
        addHead();
        thresholds.addBeneath(found.findings());
        var picture = new Div();
        picture.addClassName("tr-test-drawing");
        picture.getElement().appendChild(drawing);
        Comparison.last(entry.record(), entry.former()).ifPresent(last -> picture.add(lastTest(last)));
        var typing = new Section(new H2("Thresholds"), thresholds, picture);
        typing.addClassName("tr-test-typing");
        add(typing, facts);
        parts.forEach(
                part -> part.of(entry.draft().workerId(), entry.draft().key()).ifPresent(this::add));
        addSigning();
        // Last, since it grows and shrinks with what is typed, and no field or button may move under the fingers.
        add(found);
        tests.look(entry.draft().key()).ifPresent(outlook -> show(outlook, false));
    }

    @Override
    protected void onAttach(AttachEvent attached) {
        attached.getUI().getPage().addJsModule("context://js/audiogram-reader.js");
    }

    /** The last test as it was drawn, folded away until it is asked for. */
    private NativeDetails lastTest(Audiogram last) {
        var drawn = new Div();
        entry.record().stories().stream()
                .filter(story -> story.audiogram().equals(last))
                .findFirst()
                .ifPresent(story ->
                        drawn.getElement().setProperty("innerHTML", AudiogramSvg.forScreen(story.comparison())));
        drawn.addClassName("tr-test-last");
        var details = new NativeDetails("The last test, of " + Words.day(last.date()), drawn);
        details.addClassName("tr-on-screen");
        return details;
    }

    private void addHead() {
        WorkerDetails worker = entry.record().details();
        String name = People.name(worker.givenName(), worker.familyName(), worker.workerId());
        add(
                new H1((entry.former().isPresent() ? "Correct a test of " : "Test of ") + name),
                new LeadSentence()
                        .link(worker.workerId(), Paths.worker(worker.workerId()))
                        .text(": " + OpeningSentence.of(entry.record()).text()));
        entry.former().ifPresent(former -> {
            var message = new Paragraph("This test takes the place of the " + EntryWords.name(former)
                    + ", which stays readable and counts no more once you sign. The reason is asked for below.");
            message.addClassName("tr-message");
            add(message);
        });
    }

    private void addSigning() {
        certificate.addClassName("tr-test-certificate");
        refusals.getElement().setAttribute("role", "alert");
        var sign = new Button("Sign this test", click -> sign(withFacts()));
        sign.addThemeVariants(ButtonVariant.PRIMARY);
        var discard = new Button(
                "Throw this draft away",
                click -> new DiscardDialog(() -> {
                            tests.discard(entry.draft().key());
                            getUI().ifPresent(ui -> ui.navigate(Paths.TEST));
                        })
                        .open());
        discard.addThemeVariants(ButtonVariant.TERTIARY);
        var buttons = new Div(sign, discard);
        buttons.addClassName("tr-buttons");
        doubts.addClassName("tr-test-doubts");
        add(new Section(new H2("Sign"), refusals, certificate, doubts, buttons));
    }

    private TypedTest withFacts() {
        return facts.typed(typed.thresholds(), typed.limit());
    }

    private void type(TypedTest now) {
        typed = now;
        tests.type(entry.draft().key(), now).ifPresentOrElse(outlook -> show(outlook, false), this::showGone);
    }

    private void sign(TypedTest now) {
        typed = now;
        switch (tests.sign(entry.draft().key(), now)) {
            case SignResult.Signed done -> signed.accept(done);
            case SignResult.Refused(List<EntryProblem> problems) -> refuse(problems);
            case SignResult.Gone() -> showGone();
        }
    }

    private void refuse(List<EntryProblem> problems) {
        tests.look(entry.draft().key()).ifPresent(outlook -> show(outlook, true));
        refusals.removeAll();
        var words = new Paragraph("Nothing was signed. What you typed is kept.");
        var list = new UnorderedList(
                problems.stream().map(EntryWords::problem).map(ListItem::new).toArray(ListItem[]::new));
        refusals.addClassName("tr-message");
        refusals.add(words, list);
        if (problems.stream().anyMatch(problem -> problem.threshold().isPresent())) {
            thresholds.focusFirstWrong();
        } else {
            Attention.to(refusals);
        }
    }

    private void show(Outlook outlook, boolean whenSigning) {
        refusals.removeAll();
        refusals.removeClassName("tr-message");
        facts.show(outlook.problems(), whenSigning);
        int count = typed.thresholds().count();
        outlook.story()
                .ifPresentOrElse(
                        story -> {
                            drawing.setProperty("innerHTML", AudiogramSvg.forScreen(story.comparison()));
                            if (count == 0) {
                                found.showNothing("No threshold is typed yet.");
                            } else {
                                found.show(outlook.record().orElseThrow(), story, count == THRESHOLDS);
                                found.showChanges(WhatChanged.inTests(
                                        entry.record(), outlook.record().orElseThrow()));
                            }
                        },
                        () -> found.showNothing("Nothing can be said yet: see the day and the purpose."));
        certificate.setText(certificate(count));
        doubts.setText(outlook.story()
                .filter(story -> count == THRESHOLDS)
                .map(story -> FlagCount.of(story.flags()))
                .filter(flags -> !flags.isNone())
                .map(flags -> "Look at the test again: " + ValidityWords.count(flags) + ", told below.")
                .orElse(""));
    }

    /** What the signature stands under. */
    private String certificate(int count) {
        WorkerDetails worker = entry.record().details();
        String purpose = typed.purpose().map(Words::purpose).orElse("test");
        return "I, " + signer + ", sign the " + purpose + " of "
                + People.name(worker.givenName(), worker.familyName(), worker.workerId()) + ", number "
                + worker.workerId()
                + typed.date().map(day -> ", made on " + Words.day(day)).orElse("")
                + (typed.tester().isBlank() ? "" : " by " + typed.tester().strip()) + ", with "
                + Counted.of(count, "threshold", "thresholds") + " of " + THRESHOLDS
                + " as they stand above. A signed test is never edited: a mistake is put right by another test, with a"
                + " reason.";
    }

    private void showGone() {
        String workerId = entry.draft().workerId();
        removeAll();
        var message = new Paragraph(
                new Span("This test is no draft any more: it was signed or thrown away in another window. "),
                new Anchor(Paths.worker(workerId), "See the worker's page"));
        message.addClassName("tr-message");
        add(new H1("Nothing to type here"), message);
        Attention.to(message);
    }
}
