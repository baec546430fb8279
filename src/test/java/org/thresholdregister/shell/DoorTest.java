package org.thresholdregister.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.core.env.Environment;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.test.annotation.DirtiesContext;
import org.thresholdregister.platform.RegisterTest;
import org.thresholdregister.platform.accounts.Accounts;
import org.thresholdregister.platform.accounts.NewAccount;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.platform.security.WithRegisterUser;

/** The door as the network sees it, with one account of each role. */
@RegisterTest
@DirtiesContext
class DoorTest {

    private static final String PASSWORD = "a kettle on every stove";

    @LocalServerPort
    int port;

    @Autowired
    Accounts accounts;

    @Autowired
    JdbcClient jdbc;

    private Visitor visitor;

    @BeforeEach
    void oneAccountOfEachRole() {
        visitor = new Visitor(port);
        asAdministrator(() -> {
            var known = accounts.list().stream().map(Accounts.Account::username).toList();
            for (Role role : Role.values()) {
                if (!known.contains(usernameOf(role))) {
                    assertThat(accounts.add(new NewAccount(
                                    usernameOf(role), role.label(), PASSWORD, role, SiteScope.only(Set.of("North")))))
                            .isEmpty();
                }
            }
        });
    }

    private static void asAdministrator(Runnable action) {
        SecurityContextHolder.setContext(
                WithRegisterUser.Factory.context("tester", Role.ADMINISTRATOR, SiteScope.only(Set.of())));
        try {
            action.run();
        } finally {
            SecurityContextHolder.clearContext();
        }
    }

    private static String usernameOf(Role role) {
        return "a-" + role.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private List<String> auditOf(String action) {
        return jdbc.sql("select subject_id from audit_event where action = ? order by id")
                .param(action)
                .query(String.class)
                .list();
    }

    private boolean signsIn(String username, String password) {
        String leadsTo = visitor.leadsTo(visitor.signIn(username, password));
        assertThat(leadsTo).isIn("/", "/?continue", "/login?error");
        return !leadsTo.equals("/login?error");
    }

    private static String header(HttpResponse<String> response, String name) {
        return response.headers().firstValue(name).orElse("");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/", "/users", "/workers/W-1", "/actuator", "/actuator/health", "/h2-console", "/error"})
    void aStrangerIsSentToTheSignIn(String path) {
        var response = visitor.get(path);
        assertThat(response.statusCode()).isEqualTo(302);
        assertThat(visitor.leadsTo(response)).isEqualTo("/login");
    }

    @ParameterizedTest
    @ValueSource(strings = {"/login", "/styles.css", "/lumo/lumo.css", "/icon.svg"})
    void theSignInAndItsStylesAreOpen(String path) {
        assertThat(visitor.get(path).statusCode()).isEqualTo(200);
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void everyRoleSignsInAndIsNoted(Role role) {
        var response = visitor.signIn(usernameOf(role), PASSWORD);

        assertThat(response.statusCode()).isEqualTo(302);
        assertThat(visitor.leadsTo(response)).isEqualTo("/");
        assertThat(visitor.get("/").statusCode()).isEqualTo(200);
        assertThat(auditOf("SIGNED_IN")).contains(usernameOf(role));
    }

    @Test
    void theUsernameIsReadInAnyCase() {
        assertThat(signsIn(" A-Nurse ", PASSWORD)).isTrue();
    }

    @Test
    void aWrongPasswordLeadsBackAndIsNoted() {
        var response = visitor.signIn(usernameOf(Role.NURSE), "a kettle on no stove");

        assertThat(visitor.leadsTo(response)).isEqualTo("/login?error");
        assertThat(visitor.leadsTo(visitor.get("/"))).isEqualTo("/login");
        assertThat(auditOf("SIGN_IN_FAILED")).contains(usernameOf(Role.NURSE));
    }

    @Test
    void whatIsTypedForAnUnknownUsernameIsNotWrittenDown() {
        visitor.signIn("my secret password", PASSWORD);

        assertThat(auditOf("SIGN_IN_FAILED")).contains("(unknown)");
        assertThat(jdbc.sql("select count(*) from audit_event where subject_id || detail || actor like '%my secret%'")
                        .query(Long.class)
                        .single())
                .isZero();
    }

    @Test
    void fiveWrongPasswordsMakeTheRightOneWait() {
        String username = usernameOf(Role.PLANT_MANAGER);
        IntStream.range(0, 5).forEach(attempt -> visitor.signIn(username, "wrong " + attempt));

        assertThat(visitor.leadsTo(visitor.signIn(username, PASSWORD))).isEqualTo("/login?error");

        jdbc.sql("update user_account set locked_until = dateadd('second', -1, current_timestamp) where username = ?")
                .param(username)
                .update();
        assertThat(signsIn(username, PASSWORD)).isTrue();
        assertThat(jdbc.sql("select failed_attempts from user_account where username = ?")
                        .param(username)
                        .query(Integer.class)
                        .single())
                .isZero();
    }

    @Test
    void signingInChangesTheSession() {
        String before = header(visitor.get("/login"), "Set-Cookie");
        String after = header(visitor.signIn(usernameOf(Role.NURSE), PASSWORD), "Set-Cookie");

        assertThat(before).contains("JSESSIONID=").contains("HttpOnly").contains("SameSite=Lax");
        assertThat(after).contains("JSESSIONID=").contains("HttpOnly").contains("SameSite=Lax");
        assertThat(after).isNotEqualTo(before);
    }

    @Test
    void aDeactivatedAccountLosesItsOpenSessionAndSignsInNoMore() {
        String username = usernameOf(Role.SAFETY_OFFICER);
        visitor.signIn(username, PASSWORD);
        assertThat(visitor.get("/").statusCode()).isEqualTo(200);

        asAdministrator(() -> accounts.deactivate(username));

        assertThat(visitor.leadsTo(visitor.get("/"))).isEqualTo("/login");
        assertThat(visitor.leadsTo(visitor.signIn(username, PASSWORD))).isEqualTo("/login?error");

        asAdministrator(() -> accounts.reactivate(username));
        assertThat(signsIn(username, PASSWORD)).isTrue();
    }

    @Test
    void aNewPasswordEndsTheOldSession() {
        String username = usernameOf(Role.PROFESSIONAL_SUPERVISOR);
        visitor.signIn(username, PASSWORD);

        asAdministrator(() -> assertThat(accounts.setPassword(username, "three kettles on a stove"))
                .isEmpty());

        assertThat(visitor.leadsTo(visitor.get("/"))).isEqualTo("/login");
        assertThat(visitor.leadsTo(visitor.signIn(username, PASSWORD))).isEqualTo("/login?error");
        assertThat(signsIn(username, "three kettles on a stove")).isTrue();
        asAdministrator(
                () -> assertThat(accounts.setPassword(username, PASSWORD)).isEmpty());
    }

    @Test
    void setUpIsGoneOnceAnAccountExists() {
        var response = visitor.get("/setup");
        assertThat(response.statusCode()).isEqualTo(404);
        assertThat(response.body()).contains("No such page");
    }

    @Test
    void anUnknownAddressIsNotFoundForTheSignedIn() {
        visitor.signIn(usernameOf(Role.NURSE), PASSWORD);
        for (String path : List.of("/no-such-page", "/actuator", "/actuator/env", "/h2-console")) {
            var response = visitor.get(path);
            assertThat(response.statusCode()).as(path).isEqualTo(404);
            assertThat(response.body()).as(path).contains("No such page").doesNotContain("Whitelabel");
        }
    }

    @Test
    void pagesAreNotKeptAndLoadNothingFromElsewhere() {
        visitor.signIn(usernameOf(Role.NURSE), PASSWORD);
        var page = visitor.get("/");

        assertThat(header(page, "Cache-Control")).isEqualTo("no-store");
        assertThat(header(page, "X-Content-Type-Options")).isEqualTo("nosniff");
        assertThat(header(page, "X-Frame-Options")).isEqualTo("DENY");
        assertThat(header(page, "Referrer-Policy")).isEqualTo("same-origin");
        assertThat(page.headers().map()).doesNotContainKeys("server", "x-powered-by");
        String policy = header(page, "Content-Security-Policy");
        assertThat(policy)
                .contains("default-src 'none'")
                .contains("frame-ancestors 'none'")
                .contains("script-src 'self' 'nonce-")
                .doesNotContain("script-src 'self' 'unsafe-inline'")
                .doesNotContain("http");
        assertThat(page.body()).doesNotContainPattern("(src|href)=\"(https?:)?//");
    }

    @Test
    void everyInlineScriptCarriesTheNonceOfItsResponseAlone() {
        var first = visitor.get("/login");
        var second = visitor.get("/login");
        String nonce = nonceOf(first);

        assertThat(nonce).hasSizeGreaterThanOrEqualTo(22).isNotEqualTo(nonceOf(second));
        long scripts = first.body().split("<script", -1).length - 1L;
        long withNonce = first.body().split("nonce=\"" + Pattern.quote(nonce) + "\"", -1).length - 1L;
        assertThat(scripts).isPositive();
        assertThat(withNonce).isEqualTo(scripts);
    }

    private static String nonceOf(HttpResponse<String> page) {
        var matcher = Pattern.compile("'nonce-([^']+)'").matcher(header(page, "Content-Security-Policy"));
        assertThat(matcher.find()).isTrue();
        return matcher.group(1);
    }

    @Test
    void theSessionEndsAfterFifteenMinutesWithoutUse(@Autowired Environment environment) {
        assertThat(Map.of(
                        "timeout", environment.getRequiredProperty("server.servlet.session.timeout"),
                        "idle", environment.getRequiredProperty("vaadin.closeIdleSessions")))
                .isEqualTo(Map.of("timeout", "15m", "idle", "true"));
    }
}
