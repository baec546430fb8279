package org.thresholdregister.review.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.browserless.SpringBrowserlessTest;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.button.Button;
import com.vaadin.flow.component.html.NativeButton;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.thresholdregister.RegisterTest;
import org.thresholdregister.SignIn;
import org.thresholdregister.intake.TestImports;
import org.thresholdregister.platform.security.Role;

/** Today is 9 March 2026; M-2 showed a shift on the left on 1 June 2025 that nobody retested. */
@RegisterTest
class TodayViewTest extends SpringBrowserlessTest {

    @Autowired
    private TestImports files;

    @Test
    void theConfirmationOfAnEntryIsBroughtIntoSightAndTakesTheFocus() {
        SignIn.as(Role.NURSE);
        files.store(
                """
                worker_id,birth_date,sex,family_name,given_name,site,enrolled_from
                M-2,1990-01-01,F,Rusk,Dara,Mill,2020-01-01
                """,
                TestImports.AUDIOGRAM_COLUMNS
                        + TestImports.test("M-2", "2024-06-01", "baseline", 10, 10)
                        + TestImports.test("M-2", "2025-06-01", "annual", 40, 10),
                "");
        UI.getCurrent().navigate("today");
        test($(NativeButton.class).withText("Notice given").single()).click();
        UI.getCurrent().getInternals().dumpPendingJavaScriptInvocations();
        test($(Button.class).withText("Enter").single()).click();

        ResultMessage message = $(ResultMessage.class).single();
        assertThat(message.getText()).contains("is on record now");
        assertThat(message.getElement().getAttribute("tabindex")).isEqualTo("-1");
        assertThat(UI.getCurrent().getInternals().dumpPendingJavaScriptInvocations().stream()
                        .filter(invocation -> invocation
                                .getOwner()
                                .equals(message.getElement().getNode()))
                        .map(invocation -> invocation.getInvocation().getExpression()))
                .singleElement()
                .asString()
                .contains("scrollIntoView", "focus");
    }
}
