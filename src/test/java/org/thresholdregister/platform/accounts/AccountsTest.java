package org.thresholdregister.platform.accounts;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.access.AccessDeniedException;
import org.springframework.security.authentication.AuthenticationCredentialsNotFoundException;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.thresholdregister.platform.RegisterTest;
import org.thresholdregister.platform.accounts.AccountProblem.Field;
import org.thresholdregister.platform.security.Role;
import org.thresholdregister.platform.security.SiteScope;
import org.thresholdregister.platform.security.WithRegisterUser;

@RegisterTest
class AccountsTest {

    private static final String PASSWORD = "a kettle on every stove";

    @Autowired
    Accounts accounts;

    @Autowired
    PasswordEncoder passwordEncoder;

    @Autowired
    JdbcClient jdbc;

    private static NewAccount account(String username) {
        return new NewAccount(username, "Some One", PASSWORD, Role.NURSE, SiteScope.only(Set.of("North Works")));
    }

    private List<String> actionsOn(String username) {
        return jdbc.sql("select action from audit_event where subject_type = 'account' and subject_id = ? order by id")
                .param(username)
                .query(String.class)
                .list();
    }

    @Test
    @WithRegisterUser(role = Role.ADMINISTRATOR, username = "ada")
    void anAddedAccountIsListedWithItsSitesAndItsPasswordIsAnArgon2Hash() {
        assertThat(accounts.add(account("Listed"))).isEmpty();

        assertThat(accounts.list())
                .filteredOn(listed -> listed.username().equals("listed"))
                .singleElement()
                .satisfies(listed -> {
                    assertThat(listed.role()).isEqualTo(Role.NURSE);
                    assertThat(listed.scope()).isEqualTo(SiteScope.only(Set.of("North Works")));
                    assertThat(listed.active()).isTrue();
                });
        String hash = jdbc.sql("select password_hash from user_account where username = 'listed'")
                .query(String.class)
                .single();
        assertThat(hash).startsWith("{argon2}$argon2id$");
        assertThat(passwordEncoder.matches(PASSWORD, hash)).isTrue();
    }

    @Test
    void anAccentIsTheSameHoweverTheKeyboardComposesIt() {
        String hash = passwordEncoder.encode("mañana será otro día");

        assertThat(passwordEncoder.matches(Normalizer.normalize("mañana será otro día", Normalizer.Form.NFD), hash))
                .isTrue();
        assertThat(passwordEncoder.matches("manana sera otro dia", hash)).isFalse();
    }

    @Test
    @WithRegisterUser(role = Role.ADMINISTRATOR, username = "ada")
    void everyProblemOfAnAccountIsTold() {
        var problems = accounts.add(new NewAccount("-x", " ", "short", Role.NURSE, SiteScope.only(Set.of())));
        assertThat(problems)
                .extracting(AccountProblem::field)
                .containsExactlyInAnyOrder(Field.USERNAME, Field.DISPLAY_NAME, Field.PASSWORD, Field.SITES);
    }

    @Test
    @WithRegisterUser(role = Role.ADMINISTRATOR, username = "ada")
    void aUsernameIsTakenWhateverItsCase() {
        assertThat(accounts.add(account("taken"))).isEmpty();
        assertThat(accounts.add(account("TAKEN")))
                .extracting(AccountProblem::field)
                .containsExactly(Field.USERNAME);
    }

    @Test
    @WithRegisterUser(role = Role.ADMINISTRATOR, username = "ada")
    void everyChangeIsOnTheAuditTrail() {
        accounts.add(account("trailed"));
        accounts.setPassword("trailed", "another kettle on a stove");
        accounts.deactivate("trailed");
        accounts.reactivate("trailed");

        assertThat(actionsOn("trailed"))
                .containsExactly("ACCOUNT_ADDED", "PASSWORD_SET", "ACCOUNT_DEACTIVATED", "ACCOUNT_REACTIVATED");
    }

    @Test
    @WithRegisterUser(role = Role.ADMINISTRATOR, username = "ada")
    void aPasswordAgainstTheRuleIsNotStored() {
        accounts.add(account("kept"));
        assertThat(accounts.setPassword("kept", "passwordpassword")).isPresent();
        assertThat(actionsOn("kept")).containsExactly("ACCOUNT_ADDED");
    }

    @Test
    @WithRegisterUser(role = Role.ADMINISTRATOR, username = "ada")
    void anAdministratorDoesNotDeactivateTheOwnAccount() {
        accounts.add(new NewAccount("ada", "Ada Mint", PASSWORD, Role.ADMINISTRATOR, SiteScope.only(Set.of())));
        assertThatThrownBy(() -> accounts.deactivate("ada")).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @EnumSource(value = Role.class, names = "ADMINISTRATOR", mode = EnumSource.Mode.EXCLUDE)
    void onlyAdministratorsReachTheAccountsAndARefusalIsNoted(Role role) {
        String username = "tester-" + role.name().toLowerCase(Locale.ROOT);
        SecurityContextHolder.setContext(WithRegisterUser.Factory.context(username, role, SiteScope.all()));
        try {
            assertThatThrownBy(() -> accounts.list()).isInstanceOf(AccessDeniedException.class);
            assertThatThrownBy(() -> accounts.add(account("sneaked"))).isInstanceOf(AccessDeniedException.class);
            assertThatThrownBy(() -> accounts.setPassword("kept", PASSWORD)).isInstanceOf(AccessDeniedException.class);
            assertThatThrownBy(() -> accounts.deactivate("kept")).isInstanceOf(AccessDeniedException.class);
        } finally {
            SecurityContextHolder.clearContext();
        }
        assertThat(jdbc.sql(
                                "select subject_id from audit_event where actor = ? and action = 'ACCESS_REFUSED' order by id")
                        .param(username)
                        .query(String.class)
                        .list())
                .containsExactly("Accounts.list", "Accounts.add", "Accounts.setPassword", "Accounts.deactivate");
    }

    @Test
    void nobodySignedInReachesNothing() {
        assertThatThrownBy(() -> accounts.list()).isInstanceOf(AuthenticationCredentialsNotFoundException.class);
    }
}
