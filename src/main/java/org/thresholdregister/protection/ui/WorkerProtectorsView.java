package org.thresholdregister.protection.ui;

import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.notification.Notification;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import jakarta.annotation.security.RolesAllowed;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.thresholdregister.core.caselife.CaseDuty;
import org.thresholdregister.core.caselife.CaseLife;
import org.thresholdregister.core.wording.ProtectionWords;
import org.thresholdregister.core.wording.Words;
import org.thresholdregister.exposure.WorkerExposure;
import org.thresholdregister.platform.documents.ui.DocumentLink;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.LeadSentence;
import org.thresholdregister.platform.ui.ListCell;
import org.thresholdregister.platform.ui.ListColumn;
import org.thresholdregister.platform.ui.ListTable;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.platform.ui.StateBadge;
import org.thresholdregister.protection.FitTest;
import org.thresholdregister.protection.Issue;
import org.thresholdregister.protection.Product;
import org.thresholdregister.protection.ProtectorInUse;
import org.thresholdregister.protection.WorkerProtection;
import org.thresholdregister.protection.WorkerProtectionService;

/** One worker's protectors: what was given out, what it leaves of the noise by every method, and fit tests. */
@Route(WorkerProtectorsView.ROUTE)
@PageTitle("A worker's protectors · Threshold Register")
@RolesAllowed({Roles.NURSE, Roles.SAFETY_OFFICER})
class WorkerProtectorsView extends Div implements HasUrlParameter<String>, HealthRecordPage {

    static final String ROUTE = "worker-protectors";

    private final transient WorkerProtectionService protection;
    private final boolean mayEdit;
    private String workerId = "";
    private String site = "";

    WorkerProtectorsView(WorkerProtectionService protection, CurrentUser currentUser) {
        this.protection = protection;
        this.mayEdit = currentUser.role() == Role.NURSE;
    }

    /** The page of the worker with this number. */
    static String path(String workerId) {
        return ROUTE + Paths.worker(workerId).substring(Paths.WORKER.length());
    }

    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String number) {
        workerId = number;
        protection.open(number).ifPresentOrElse(this::show, this::showNothing);
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

    private void refresh(String said) {
        protection.of(workerId).ifPresentOrElse(this::show, this::showNothing);
        Notification.show(said);
    }

    private void show(WorkerProtection worker) {
        site = worker.worker().site();
        removeAll();
        String name = (worker.worker().givenName() + " " + worker.worker().familyName()).strip();
        add(new H1("Protectors of " + (name.isEmpty() ? workerId : name)), lead(worker), actions(worker));
        add(new Paragraph(ProtectionWords.target(worker.target()).withBasis()));
        worker.mustWear()
                .reasons()
                .forEach(reason -> add(new Paragraph("Has to wear protectors: "
                        + ProtectionWords.reason(reason, worker.facts()).withBasis())));
        add(new H2("In use"));
        if (worker.inUse().isEmpty()) {
            add(new EmptyHint(
                    "No protector is on record as in use.",
                    mayEdit ? "Give one out above." : "A nurse takes down what is given out."));
        }
        worker.inUse().forEach(used -> add(inUse(used, worker)));
        add(new H2("Given out"));
        if (worker.issues().isEmpty()) {
            add(new Paragraph("Nothing was given out so far."));
        } else {
            add(new ListTable<>("The latest first", issueColumns(), worker.issues(), this::endOrWithdraw));
        }
        add(new H2("Fit tests"));
        if (worker.fitTests().isEmpty()) {
            add(new Paragraph("No fit test is on record."));
        } else {
            add(new ListTable<>("The latest first", fitTestColumns(), worker.fitTests(), this::withdraw));
            worker.fitTests()
                    .forEach(test -> test.document()
                            .ifPresent(report -> add(new Paragraph(DocumentLink.of(
                                    "Report of the fit test of "
                                            + Words.day(test.details().testedOn()),
                                    report,
                                    key -> protection
                                            .report(workerId, test.key())
                                            .orElse(new byte[0]))))));
        }
        var caution = new Paragraph(Words.CAUTION);
        caution.addClassName("tr-caution");
        add(caution);
    }

    private static LeadSentence lead(WorkerProtection worker) {
        String noise =
                ProtectionWords.noise(worker.noise().aWeighted(), worker.noise().cWeighted());
        String has = worker.inUse().isEmpty()
                ? "no protector on record."
                : Words.listed(worker.inUse().stream()
                                .map(used -> used.issue().product().details().name())
                                .toList())
                        + " in use.";
        return new LeadSentence("Noise " + noise
                + worker.noiseSource().map(WorkerProtectorsView::source).orElse("") + "; " + has);
    }

    private static String source(WorkerExposure.Source source) {
        return switch (source) {
            case WorkerExposure.Source.Measured measured ->
                ", measured on " + Words.day(measured.on()) + " for "
                        + measured.subject().name();
            case WorkerExposure.Source.Roster roster -> ", by the roster";
        };
    }

    private Div actions(WorkerProtection worker) {
        var actions = new Div();
        actions.addClassNames("tr-page-actions", "tr-screen-only");
        if (mayEdit) {
            List<Product> products = protection.choices(workerId);
            List<LocalDate> refits = worker.cases().cases().stream()
                    .filter(life -> life.owed().stream().anyMatch(owed -> owed.duty() == CaseDuty.REFIT))
                    .map(CaseLife::testDate)
                    .toList();
            var give = new Button(
                    "Give out a protector",
                    click -> new IssueDialog(
                                    products,
                                    refits,
                                    worker.today(),
                                    issue -> protection.issue(workerId, issue),
                                    () -> refresh("It is on record."))
                            .open());
            give.addThemeVariants(ButtonVariant.PRIMARY);
            var fit = new Button(
                    "Enter a fit test",
                    click -> new FitTestDialog(
                                    products,
                                    worker.today(),
                                    (test, report) -> protection.addFitTest(workerId, test, report),
                                    () -> refresh("The fit test is on record."))
                            .open());
            actions.add(give, fit);
        }
        actions.add(new Anchor(Paths.worker(workerId), "The worker's page"), EstimateTable.calculator());
        return actions;
    }

    private static Div inUse(ProtectorInUse used, WorkerProtection worker) {
        Issue issue = used.issue();
        var card = new Div(new H3(issue.product().details().name()
                + (issue.details().size().isEmpty()
                        ? ""
                        : ", size " + issue.details().size())));
        card.addClassName("tr-card");
        card.add(new Paragraph(used.chosen()
                .map(estimate ->
                        ProtectionWords.standing(issue.product().details().kind(), estimate, worker.target()))
                .orElse("No method is picked for this site, so no level is taken for this protector. All are shown.")));
        card.add(new EstimateTable(
                "Estimates for this worker's noise, by each method",
                used.estimates(),
                worker.target(),
                worker.method()));
        return card;
    }

    private List<ListColumn<Issue, ?>> issueColumns() {
        List<ListColumn<Issue, ?>> columns = new ArrayList<>(List.of(
                ListColumn.unordered(
                        "Protector",
                        12,
                        row -> ListCell.text(row.product().details().name())
                                .withNote(
                                        row.details().size().isEmpty()
                                                ? ""
                                                : "size " + row.details().size())),
                ListColumn.unordered(
                        "Given out",
                        8,
                        row -> ListCell.text(Words.day(row.details().issuedOn()))),
                ListColumn.unordered(
                        "Because of",
                        10,
                        row -> ListCell.text(row.details()
                                        .refitFor()
                                        .map(test -> "the shift of " + Words.day(test))
                                        .orElse(""))
                                .withNote(row.details().remark())),
                ListColumn.unordered("State", 10, WorkerProtectorsView::state)));
        if (mayEdit) {
            columns.add(ListColumn.unordered(
                    "",
                    8,
                    row -> row.isInUse()
                            ? ListCell.action(
                                    "Out of use",
                                    "Take down that " + row.product().details().name() + " is out of use")
                            : row.counts()
                                    ? ListCell.action(
                                            "Entered by mistake",
                                            "Say that "
                                                    + row.product().details().name() + " was entered by mistake")
                                    : ListCell.EMPTY));
        }
        return columns;
    }

    private static ListCell state(Issue row) {
        if (!row.counts()) {
            return ListCell.text("entered by mistake").withNote(row.withdrawn());
        }
        return row.end()
                .map(end -> ListCell.text(WearingWords.how(end.how()) + " " + Words.day(end.on())))
                .orElseGet(() -> ListCell.state(StateBadge.Kind.DONE, "in use"));
    }

    private void endOrWithdraw(Issue issue) {
        if (issue.isInUse()) {
            var dialog = new EndDialog(
                    issue,
                    protection
                            .of(workerId)
                            .map(WorkerProtection::today)
                            .orElse(issue.details().issuedOn()),
                    end -> protection.end(workerId, issue.key(), end),
                    () -> refresh("It is on record."));
            dialog.getFooter().add(new Button("It was entered by mistake", click -> {
                dialog.close();
                withdraw(issue);
            }));
            dialog.open();
        } else {
            withdraw(issue);
        }
    }

    private void withdraw(Issue issue) {
        new ReasonDialog(
                        "Entered by mistake",
                        issue.product().details().name() + ", given out "
                                + Words.day(issue.details().issuedOn())
                                + ". It stays readable and counts no more. What was entered in a case stays.",
                        "Withdraw",
                        reason -> protection.withdrawIssue(workerId, issue.key(), reason),
                        () -> refresh("It counts no more."))
                .open();
    }

    private List<ListColumn<FitTest, ?>> fitTestColumns() {
        List<ListColumn<FitTest, ?>> columns = new ArrayList<>(List.of(
                ListColumn.unordered(
                        "Tested",
                        8,
                        row -> ListCell.text(Words.day(row.details().testedOn()))
                                .withNote(row.details().tester())),
                ListColumn.unordered(
                        "Protector",
                        12,
                        row -> ListCell.text(row.product().details().name())
                                .withNote(
                                        row.details().size().isEmpty()
                                                ? ""
                                                : "size " + row.details().size())),
                ListColumn.unordered(
                        "Rating (dB)",
                        6,
                        row -> ListCell.figures(
                                ProtectionWords.decibels(row.details().par()))),
                ListColumn.unordered(
                        "Percentile",
                        6,
                        row -> ListCell.figures(Integer.toString(row.details().percentile()))),
                ListColumn.unordered(
                        "Method", 10, row -> ListCell.text(row.details().method())),
                ListColumn.unordered(
                        "State",
                        8,
                        row -> row.counts()
                                ? ListCell.text("on record")
                                : ListCell.text("entered by mistake").withNote(row.withdrawn()))));
        if (mayEdit) {
            columns.add(ListColumn.unordered(
                    "",
                    8,
                    row -> row.counts()
                            ? ListCell.action(
                                    "Entered by mistake",
                                    "Say that the fit test of "
                                            + Words.day(row.details().testedOn()) + " was entered by mistake")
                            : ListCell.EMPTY));
        }
        return columns;
    }

    private void withdraw(FitTest test) {
        new ReasonDialog(
                        "Entered by mistake",
                        "The fit test of " + Words.day(test.details().testedOn())
                                + " stays readable and counts no more.",
                        "Withdraw",
                        reason -> protection.withdrawFitTest(workerId, test.key(), reason),
                        () -> refresh("It counts no more."))
                .open();
    }
}
