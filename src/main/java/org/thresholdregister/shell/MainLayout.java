package org.thresholdregister.shell;

import com.vaadin.flow.component.HasElement;
import com.vaadin.flow.component.applayout.AppLayout;
import com.vaadin.flow.component.applayout.DrawerToggle;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.button.ButtonVariant;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Footer;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.sidenav.SideNav;
import com.vaadin.flow.component.sidenav.SideNavItem;
import com.vaadin.flow.router.Layout;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import com.vaadin.flow.server.menu.MenuConfiguration;
import com.vaadin.flow.spring.security.AuthenticationContext;
import java.time.Clock;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.thresholdregister.platform.security.CurrentUser;
import org.thresholdregister.platform.security.SignedInUser;
import org.thresholdregister.platform.ui.Dates;
import org.thresholdregister.platform.ui.HealthRecordPage;

/** What surrounds every page of the signed-in: name, menu of the role's pages, who is signed in, caution. */
@Layout
@AnonymousAllowed
class MainLayout extends AppLayout {

    private final transient CurrentUser currentUser;
    private final transient Clock clock;
    private final Main main = new Main();
    private final Span printedBy = new Span();

    MainLayout(CurrentUser currentUser, AuthenticationContext authentication, Clock clock) {
        this.currentUser = currentUser;
        this.clock = clock;

        // A link would not do: the page has a base address, from which it would lead to another page.
        var skip =
                new NativeButton("Skip to the page", click -> main.getElement().callJsFunction("focus"));
        skip.addClassName("tr-skip");
        var toggle = new DrawerToggle();
        toggle.setAriaLabel("Menu");
        var name = new Anchor("", "Threshold Register");
        name.addClassName("tr-name");
        String who = currentUser.find().map(MainLayout::inWords).orElse("");
        var signedIn = new Span(who);
        signedIn.addClassName("tr-who");
        var signOut = new Button("Sign out", click -> authentication.logout());
        signOut.addThemeVariants(ButtonVariant.TERTIARY);
        var bar = new Header(skip, toggle, name);
        bar.addClassName("tr-bar");
        if (currentUser.find().isPresent()) {
            bar.add(signedIn, signOut);
        }
        addToNavbar(bar);

        var signedInNarrow = new Paragraph(who);
        signedInNarrow.addClassName("tr-who-narrow");
        addToDrawer(menu(), signedInNarrow);

        main.getElement().setAttribute("tabindex", "-1");
        var caution = new Paragraph(Caution.TEXT);
        caution.addClassName("tr-caution");
        printedBy.addClassName("tr-printed-by");
        var page = new Div(main, new Footer(caution, printedBy));
        page.addClassName("tr-page");
        setContent(page);
    }

    @Override
    public void showRouterLayoutContent(@Nullable HasElement content) {
        main.removeAll();
        if (content != null) {
            main.getElement().appendChild(content.getElement());
            printedBy.setText(printedFoot(content));
        }
    }

    @Override
    public void removeRouterLayoutContent(@Nullable HasElement oldContent) {
        main.removeAll();
    }

    /** The pages of the role by part of the work; a part without a page of the role is left out. */
    private static Div menu() {
        var menu = new Div();
        menu.addClassName("tr-menu");
        Map<MenuPart, SideNav> parts = new EnumMap<>(MenuPart.class);
        MenuConfiguration.getMenuEntries()
                .forEach(entry -> parts.computeIfAbsent(MenuPart.of(entry.order()), MainLayout::part)
                        .addItem(new SideNavItem(entry.title(), entry.path())));
        parts.values().forEach(menu::add);
        return menu;
    }

    private static SideNav part(MenuPart part) {
        return new SideNav(part.label());
    }

    private String printedFoot(HasElement content) {
        String printed = "Threshold Register. Printed "
                + Dates.onScreen(LocalDate.now(clock))
                + currentUser.find().map(user -> " by " + user.displayName()).orElse("") + ".";
        if (!(content instanceof HealthRecordPage record)) {
            return printed;
        }
        return "Health record. " + (record.site().isEmpty() ? "" : record.site() + ". ") + printed;
    }

    private static String inWords(SignedInUser user) {
        return user.displayName() + ", " + user.role().label().toLowerCase(Locale.ROOT);
    }
}
