package org.thresholdregister.review.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import jakarta.annotation.security.RolesAllowed;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.thresholdregister.core.decision.Decision;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.AlterationService;
import org.thresholdregister.review.BoardService;
import org.thresholdregister.review.DecisionResult;
import org.thresholdregister.review.DecisionService;
import org.thresholdregister.review.DeterminationHistoryService;
import org.thresholdregister.review.Evidence;
import org.thresholdregister.review.EvidenceService;
import org.thresholdregister.review.OpeningSentence;
import org.thresholdregister.review.TestStory;
import org.thresholdregister.review.WhatChanged;
import org.thresholdregister.review.WhatItMeans;
import org.thresholdregister.review.WorkerRecord;
import org.thresholdregister.review.WorkerRecordService;
import org.thresholdregister.roster.WorkerDetails;

/** One worker on one page, read downwards as the story went. The page's title names nobody: browsers keep it. */
@Route(Paths.WORKER)
@PageTitle("A worker · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class WorkerView extends Div implements HasUrlParameter<String>, HealthRecordPage {

    private final transient WorkerRecordService records;
    private final transient DeterminationHistoryService formerly;
    private final transient AlterationService alterations;
    private final transient DecisionService decisions;
    private final transient EvidenceService evidence;
    private final transient BoardService board;
    private final transient CurrentUser currentUser;
    private final transient List<WorkerSection> added;
    private String site = "";

    WorkerView(
            WorkerRecordService records,
            DeterminationHistoryService formerly,
            AlterationService alterations,
            DecisionService decisions,
            EvidenceService evidence,
            BoardService board,
            CurrentUser currentUser,
            List<WorkerSection> added) {
        this.records = records;
        this.formerly = formerly;
        this.alterations = alterations;
        this.decisions = decisions;
        this.evidence = evidence;
        this.board = board;
        this.currentUser = currentUser;
        this.added = added.stream()
                .sorted(Comparator.comparingInt(WorkerSection::place))
                .toList();
        addClassName("tr-worker");
    }

    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String workerId) {
        records.open(workerId).ifPresentOrElse(this::show, this::showNothing);
    }

    @Override
    public String site() {
        return site;
    }

    private void showNothing() {
        site = "";
        removeAll();
        add(
                new H1("No record to show"),
                new EmptyHint(
                        "No worker of this number is among those whose records you may see.",
                        "Check the number, or look the worker up in the list.",
                        new Anchor("workers", "Go to the list of workers")));
    }

    private void show(WorkerRecord record) {
        WorkerDetails worker = record.details();
        site = worker.site();
        removeAll();
        String name = People.name(worker.givenName(), worker.familyName(), worker.workerId());
        add(new H1(name), lead(record));
        addActions(record);
        record.openProposals().forEach(proposal -> add(new ProposalNote(worker.workerId(), proposal)));
        add(new WorkerFactList(record));
        if (!alterations.ofWorker(worker.workerId()).isEmpty()) {
            add(new AlterationSection(worker.workerId(), alterations));
        }
        List<TestStory> stories = record.stories();
        if (stories.isEmpty()) {
            add(
                    new EmptyHint(
                            "No hearing test of this worker is on record.",
                            "The audiogram and what follows from it appear here once a test is entered or imported."),
                    new FollowUpSection(record, board.ofWorker(worker.workerId())));
            if (!record.decisions().isEmpty()) {
                add(decisions(record));
            }
            addSections(record);
            return;
        }
        var choice = new TestChoice(stories);
        var enter = new Button(
                "Enter a decision",
                click -> askForDecision(
                        record,
                        new DecisionDialog.Draft(
                                Optional.empty(), choice.chosen().audiogram().date())));
        var audiogram = new AudiogramSection(choice);
        add(
                audiogram,
                new HistorySection(choice, records.superseded(worker.workerId()), () -> audiogram.scrollIntoView()),
                new ValiditySection(choice),
                new DeterminationSection(stories, formerly.of(worker.workerId())),
                new CaseSection(
                        record.cases(),
                        decisions.kindsToEnter(),
                        record.asOf(),
                        draft -> askForDecision(record, draft)),
                new FollowUpSection(record, board.ofWorker(worker.workerId())),
                decisions(record, enter));
        addSections(record);
        WhatItMeans.of(record).map(MeaningSection::new).ifPresent(this::add);
        add(new UnderRulesSection(record));
    }

    private DecisionSection decisions(WorkerRecord record, Button... enter) {
        String number = record.details().workerId();
        return new DecisionSection(
                record.decisions(),
                evidence.ofWorker(number),
                decision -> evidence.file(number, decision).orElseThrow(NotFoundException::new),
                enter);
    }

    private void addActions(WorkerRecord record) {
        List<Anchor> links =
                added.stream().flatMap(part -> part.actions(record).stream()).toList();
        if (!links.isEmpty()) {
            var actions = new Div();
            actions.addClassName("tr-page-actions");
            links.forEach(actions::add);
            add(actions);
        }
    }

    private void addSections(WorkerRecord record) {
        added.forEach(part -> part.of(record).ifPresent(this::add));
    }

    private static LeadSentence lead(WorkerRecord record) {
        var sentence = OpeningSentence.of(record);
        String page = Paths.worker(record.details().workerId());
        var lead = new LeadSentence();
        if (record.tests().isEmpty()) {
            lead.text(sentence.found());
        } else {
            lead.link(sentence.found(), page + "#" + DeterminationSection.ID);
        }
        return lead.text("; ")
                .link(sentence.owed(), page + "#" + FollowUpSection.ID)
                .text(".");
    }

    private void askForDecision(WorkerRecord record, DecisionDialog.Draft draft) {
        new DecisionDialog(
                        decisions.kindsToEnter(),
                        record.stories(),
                        draft,
                        record.cases(),
                        record.asOf(),
                        currentUser.find().map(user -> user.displayName()).orElse(""),
                        (decision, shown) -> enter(record, decision, shown))
                .open();
    }

    private DecisionResult enter(WorkerRecord before, Decision decision, Optional<Evidence> shown) {
        String number = before.details().workerId();
        DecisionResult result = shown.map(some -> decisions.enter(number, decision, some))
                .orElseGet(() -> decisions.enter(number, decision));
        if (result instanceof DecisionResult.Recorded) {
            Optional<WorkerRecord> after = records.open(before.details().workerId());
            after.ifPresentOrElse(
                    record -> {
                        show(record);
                        Div message = changed(decision, WhatChanged.between(before, record));
                        addComponentAtIndex(1, message);
                        Attention.to(message);
                    },
                    this::showNothing);
        }
        return result;
    }

    private static Div changed(Decision decision, List<String> changes) {
        var said =
                new Paragraph("On record now: " + Words.decision(decision.kind()) + ", " + Words.ears(decision.ears())
                        + ", test of " + Words.day(decision.testDate()) + "."
                        + (changes.isEmpty() ? " Nothing else changes." : ""));
        var message = new Div(said);
        message.addClassName("tr-card");
        message.getElement().setAttribute("role", "status");
        if (!changes.isEmpty()) {
            message.add(new UnorderedList(changes.stream().map(ListItem::new).toArray(ListItem[]::new)));
        }
        return message;
    }
}
