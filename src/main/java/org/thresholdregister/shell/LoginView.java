package org.thresholdregister.shell;

import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Input;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.NativeButton;
import com.vaadin.flow.component.html.NativeLabel;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import org.thresholdregister.platform.accounts.FirstSetUp;
import org.thresholdregister.platform.security.CurrentUser;

/** Sign-in, as a plain form that password managers know. */
@Route(value = LoginView.PATH, autoLayout = false)
@PageTitle("Sign in · Threshold Register")
@AnonymousAllowed
class LoginView extends Main implements BeforeEnterObserver {

    static final String PATH = "login";

    @Tag("form")
    private static final class PostForm extends HtmlContainer {
        PostForm(String action) {
            getElement().setAttribute("method", "post").setAttribute("action", action);
        }
    }

    private final transient FirstSetUp setUp;
    private final transient CurrentUser currentUser;
    private final Paragraph message = new Paragraph();

    LoginView(FirstSetUp setUp, CurrentUser currentUser) {
        this.setUp = setUp;
        this.currentUser = currentUser;
        addClassName("tr-door");

        message.addClassName("tr-message");
        message.getElement().setAttribute("role", "alert");
        message.setVisible(false);

        var username = field("username", "text", "username");
        username.getElement().setAttribute("autofocus", true).setAttribute("autocapitalize", "none");
        var password = field("password", "password", "current-password");
        var submit = new NativeButton("Sign in");
        submit.addClassName("tr-button");
        submit.getElement().setAttribute("type", "submit");

        var form = new PostForm(PATH);
        form.add(labelled("Username", username), labelled("Password", password), submit);

        var card = new Div(new H1("Threshold Register"), message, form);
        card.addClassName("tr-card");
        var caution = new Paragraph(Caution.TEXT);
        caution.addClassName("tr-caution");
        add(card, caution);
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        if (currentUser.find().isPresent()) {
            event.forwardTo("");
            return;
        }
        if (setUp.isOpen()) {
            event.forwardTo("setup");
            return;
        }
        var parameters = event.getLocation().getQueryParameters().getParameters();
        if (parameters.containsKey("error")) {
            say("The username and password do not go together, or sign-in rests for some minutes after several wrong"
                    + " passwords. Check both, or try again later.");
        } else if (parameters.containsKey("ended")) {
            say("Your session has ended. Sign in to go on. What was not stored is to be entered again.");
        }
    }

    private void say(String words) {
        message.setText(words);
        message.setVisible(true);
    }

    private static Input field(String name, String type, String autocomplete) {
        var input = new Input();
        input.setId(name);
        input.setType(type);
        input.addClassName("tr-input");
        input.getElement()
                .setAttribute("name", name)
                .setAttribute("autocomplete", autocomplete)
                .setAttribute("required", true);
        return input;
    }

    private static Div labelled(String words, Input input) {
        var label = new NativeLabel(words);
        label.setFor(input);
        var pair = new Div(label, input);
        pair.addClassName("tr-field");
        return pair;
    }
}
