package org.thresholdregister.testing.ui;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Menu;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.router.WildcardParameter;
import jakarta.annotation.security.RolesAllowed;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.Roles;
import org.thresholdregister.platform.ui.EmptyHint;
import org.thresholdregister.platform.ui.HealthRecordPage;
import org.thresholdregister.platform.ui.Paths;
import org.thresholdregister.review.ui.TestPagePart;
import org.thresholdregister.review.ui.WorkerSection;
import org.thresholdregister.roster.WorkerService;
import org.thresholdregister.testing.SignResult;
import org.thresholdregister.testing.TestEntry;
import org.thresholdregister.testing.TestEntryService;

/** Enters a test: without a number in the address, for somebody to be looked up first. */
@Route(Paths.TEST)
@PageTitle("Test · Threshold Register")
@Menu(title = "Test", order = 15)
@RolesAllowed(Roles.NURSE)
class TestView extends Div implements HasUrlParameter<String>, HealthRecordPage {

    private final transient TestEntryService tests;
    private final transient WorkerService workers;
    private final transient CurrentUser currentUser;
    private final transient Clock clock;
    private final transient List<TestPagePart> parts;
    private final transient List<WorkerSection> sections;
    private String site = "";

    TestView(
            TestEntryService tests,
            WorkerService workers,
            CurrentUser currentUser,
            Clock clock,
            List<TestPagePart> parts,
            List<WorkerSection> sections) {
        this.tests = tests;
        this.workers = workers;
        this.currentUser = currentUser;
        this.clock = clock;
        this.parts = parts.stream()
                .sorted(Comparator.comparingInt(TestPagePart::place))
                .toList();
        this.sections = sections.stream()
                .filter(section -> !(section instanceof CorrectionSection))
                .sorted(Comparator.comparingInt(WorkerSection::place))
                .toList();
    }

    @Override
    public void setParameter(BeforeEvent event, @WildcardParameter String workerId) {
        removeAll();
        site = "";
        if (workerId.isEmpty()) {
            add(new StartPart(workers, tests, clock));
            return;
        }
        tests.open(workerId, TestAddress.inPlaceOf(event.getLocation())).ifPresentOrElse(this::show, this::showNothing);
    }

    @Override
    public String site() {
        return site;
    }

    private void show(TestEntry entry) {
        site = entry.record().details().site();
        add(new EntryPart(entry, tests, parts, currentUser.get().displayName(), this::showSigned));
    }

    private void showSigned(SignResult.Signed signed) {
        removeAll();
        List<Anchor> actions = sections.stream()
                .flatMap(section -> section.actions(signed.record()).stream())
                .toList();
        add(new SignedPart(signed, actions, clock));
    }

    private void showNothing() {
        add(
                new H1("No test to enter"),
                new EmptyHint(
                        "No worker of this number is among those whose records you may see, or the test that was to be"
                                + " corrected counts no more.",
                        "Check the number, or look the worker up.",
                        new Anchor(Paths.TEST, "Look somebody up")));
    }
}
