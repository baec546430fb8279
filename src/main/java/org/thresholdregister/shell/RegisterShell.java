package org.thresholdregister.shell;

import com.vaadin.flow.component.dependency.StyleSheet;
import com.vaadin.flow.component.page.AppShellConfigurator;
import com.vaadin.flow.component.page.ColorScheme;
import com.vaadin.flow.component.page.Viewport;
import com.vaadin.flow.server.AppShellSettings;
import com.vaadin.flow.theme.lumo.Lumo;

/** The page around every page: styles, language, and a colour scheme that follows the system. */
@StyleSheet(Lumo.STYLESHEET)
@StyleSheet("styles.css")
@ColorScheme(ColorScheme.Value.SYSTEM)
@Viewport("width=device-width, initial-scale=1")
public class RegisterShell implements AppShellConfigurator {

    @Override
    public void configurePage(AppShellSettings settings) {
        settings.addFavIcon("icon", "icon.svg", "any");
        settings.addMetaTag("robots", "noindex, nofollow");
    }
}
