package org.thresholdregister.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Watches the pages of a browser context: requests to any host but this one are stopped, and they count as problems as
 * errors in a page do.
 */
final class PageWatch {

    private static final Set<String> THIS_HOST = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Set<String> WITHOUT_HOST = Set.of("data", "blob", "about", "chrome-error");

    private final List<String> problems = new ArrayList<>();
    private final List<String> expected = new ArrayList<>();

    PageWatch(BrowserContext context) {
        // Routes do not see where a redirect leads, so that requests are noted by themselves.
        context.route("**/*", route -> {
            if (staysHere(route.request().url())) {
                route.resume();
            } else {
                route.abort();
            }
        });
        context.onRequest(request -> noteRequest(request.url()));
        context.routeWebSocket(url -> !staysHere(url), socket -> {
            noteRequest(socket.url());
            socket.close();
        });
        context.onPage(this::watch);
    }

    /** Problems whose text contains this are expected from here on; one has to occur. */
    void expect(String part) {
        expected.add(part);
    }

    boolean noticedSomething() {
        return !problems.isEmpty();
    }

    /** Fails where a page asked another host for anything, or had an error that was not expected. */
    void assertNothingHappened() {
        assertThat(problems.stream().filter(problem -> expected.stream().noneMatch(problem::contains)))
                .as("requests to elsewhere and errors in the page")
                .isEmpty();
        assertThat(expected)
                .as("expected problems")
                .allSatisfy(part -> assertThat(problems)
                        .anySatisfy(problem -> assertThat(problem).contains(part)));
    }

    private void watch(Page page) {
        page.onPageError(error -> problems.add("error in the page: " + error));
        page.onConsoleMessage(this::noteMessage);
    }

    private void noteMessage(ConsoleMessage message) {
        if (message.type().equals("error")) {
            problems.add("error on the console: " + message.text() + " (" + message.location() + ")");
        }
    }

    private void noteRequest(String url) {
        if (!staysHere(url)) {
            problems.add("request to elsewhere: " + url);
        }
    }

    private static boolean staysHere(String url) {
        String scheme = url.substring(0, url.indexOf(':'));
        return WITHOUT_HOST.contains(scheme)
                || THIS_HOST.contains(URI.create(url).getHost());
    }
}
